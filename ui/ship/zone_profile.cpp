#include "ui/ship/zone_profile.h"

#include <algorithm>
#include <cmath>

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QPushButton>

#include "ui/look/button_drawing.h"
#include "ui/look/touch_style.h"
#include "ui/ship/zone_profile_access.h"
#include "ui/words/door_words.h"

namespace latchround::ui {
namespace {

constexpr double names_mm = 8;       ///< above the ship, for the zone names
constexpr double least_mm = 15;      ///< high: below it nothing can be read
constexpr double bow_mm = 5;         ///< what the bow reaches beyond the last door
constexpr double words_share = 0.42; ///< of the height, at most, for the sentences

} // namespace

ZoneProfile::ZoneProfile(QWidget* parent)
    : Part(parent)
    , m_in(zoomKey(QStringLiteral("+"), "profile-in", tr("zoom in")))
    , m_out(zoomKey(QStringLiteral("−"), "profile-out", tr("zoom out")))
    , m_whole(zoomKey(tr("All"), "profile-whole", tr("whole ship"))) {
    setLayoutDirection(Qt::LeftToRight); // the ship lies as she lies, whichever side words begin on
    readyProfileAccess();
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    setAttribute(Qt::WA_AcceptTouchEvents);
    connect(m_in, &QPushButton::clicked, this, [this] { zoomByKey(2); });
    connect(m_out, &QPushButton::clicked, this, [this] { zoomByKey(0.5); });
    connect(m_whole, &QPushButton::clicked, this, [this] { zoomByKey(0); });
    plan();
}

QPushButton* ZoneProfile::zoomKey(const QString& words, const char* name, const QString& spoken) {
    QPushButton* key = keyOf(words, name);
    key->setParent(this);
    key->setAccessibleName(spoken);
    return key;
}

void ZoneProfile::setArrangement(Arrangement arrangement) {
    m_arrangement = std::move(arrangement);
    m_view = {};
    plan();
}

void ZoneProfile::setVerdicts(DoorVerdicts verdicts) {
    m_verdicts = std::move(verdicts);
    plan();
}

void ZoneProfile::setBulkheads(BulkheadsShown shown) {
    m_bulkheads = std::move(shown);
    plan();
}

void ZoneProfile::setCurrentDoor(const QString& number) {
    m_current = number;
    bringInView();
    updateSpokenText();
    update();
}

void ZoneProfile::choose(const QString& door) {
    setCurrentDoor(door);
    emit doorChosen(door);
}

std::optional<QRectF> ZoneProfile::placeOf(const QString& door) const {
    const ProfileDoor* drawn = m_plan.drawn(door);
    return drawn ? std::optional(drawn->place) : std::nullopt;
}

QSize ZoneProfile::sizeHint() const {
    return {int(mm(240)), int(mm(40))}; // as much more as there is
}

QSize ZoneProfile::minimumSizeHint() const {
    return {int(mm(60)), int(mm(30))};
}

void ZoneProfile::plan() {
    layKeys();
    laySentences();
    const double right = mm(bow_mm) + m_keys_room.width();
    double words = mm(2);
    for (const Sentence& sentence : m_sentences)
        words += sentence.height;
    m_plan = planOf(m_arrangement, m_verdicts, QSizeF(size()),
                    {sizes().px_per_mm, mm(names_mm), words + mm(1), right, m_view});
    m_view.middle = m_plan.middle;
    m_in->setEnabled(m_view.zoom < most_zoom);
    m_out->setEnabled(m_view.zoom > 1);
    m_whole->setEnabled(m_view.zoom > 1);
    updateSpokenText();
    update();
    if (ProfileMarks marks = marksOf(m_plan, m_verdicts, m_bulkheads); marks != m_marks) {
        m_marks = std::move(marks);
        emit marksChanged();
    }
}

/// One above the other at the right, beside the ship and not its sentences; where that is too low,
/// fewer of them: twice further away says the same as the whole.
void ZoneProfile::layKeys() {
    const int side = sizes().target;
    const int step = side + sizes().gap;
    const bool shown = focusPolicy() != Qt::NoFocus && !m_arrangement.doors.empty();
    const int most = std::max(1, int(height() * (1 - words_share) + sizes().gap) / step);
    std::vector<QPushButton*> keys{m_in, m_out};
    if (most > 2)
        keys.push_back(m_whole);
    m_whole->setVisible(shown && most > 2);
    const int rows = std::min(most, int(keys.size()));
    const int columns = (int(keys.size()) + rows - 1) / rows;
    m_keys_room = shown ? QSizeF(columns * step, rows * step) : QSizeF(0, 0);
    for (int i = 0; i < int(keys.size()); ++i) {
        QPushButton* key = keys[std::size_t(i)];
        key->setFixedSize(side, side);
        key->move(width() - (columns - i / rows) * step + sizes().gap, (i % rows) * step);
        if (key != m_whole)
            key->setVisible(shown);
    }
}

/// Below the keys they may take the whole width, beside them less.
void ZoneProfile::laySentences() {
    const double most = height() * words_share;
    const double left = mm(9) + mm(2);
    m_words_width = width() - left - mm(1);
    m_sentences = sentencesWithin(m_words_width, most);
    double words = mm(3);
    for (const Sentence& sentence : m_sentences)
        words += sentence.height;
    if (height() - words >= m_keys_room.height())
        return;
    m_words_width -= m_keys_room.width();
    m_sentences = sentencesWithin(m_words_width, most);
}

std::vector<ZoneProfile::Sentence> ZoneProfile::sentencesWithin(double width, double height) const {
    const QFontMetricsF metrics(font(TextSize::Body));
    std::vector<Sentence> all;
    const auto add = [&](const QStringList& words, bool bad) {
        for (const QString& each : words)
            all.push_back({each, bad,
                           metrics.boundingRect(QRectF(0, 0, std::max(width, 1.0), 1e4),
                                                Qt::TextWordWrap, each)
                                   .height() +
                               mm(0.6)});
    };
    add(m_bulkheads.sentences, true);
    add(m_bulkheads.remarks, false);
    double sum = 0;
    std::size_t fit = 0;
    while (fit < all.size() && sum + all[fit].height <= height)
        sum += all[fit++].height;
    if (fit == all.size())
        return all;
    const double line = metrics.height() + mm(0.6);
    while (fit > 1 && sum + line > height)
        sum -= all[--fit].height;
    if (fit == 1 && sum + line > height) {
        all.resize(1); // the worst of them in full says more than a count
        return all;
    }
    if (fit == 0) // better the beginning of it than none
        return {
            {metrics.elidedText(all.front().words, Qt::ElideRight, width), all.front().bad, line}};
    const Sentence more{tr("and %1 more").arg(all.size() - fit), all[fit].bad, line};
    all.resize(fit);
    all.push_back(more);
    return all;
}

void ZoneProfile::updateSpokenText() {
    QString name = tr("Zone profile");
    if (!m_current.isEmpty() && m_plan.drawn(m_current))
        name += QStringLiteral(", ") + doorLine(m_current);
    setAccessibleName(name);
    const QStringList said = m_bulkheads.sentences + m_bulkheads.remarks;
    setAccessibleDescription(said.isEmpty() ? doorCountWords(int(m_arrangement.doors.size()))
                                            : said.join(QStringLiteral("\n")));
}

void ZoneProfile::lookChanged() {
    Part::lookChanged();
    plan();
}

void ZoneProfile::resizeEvent(QResizeEvent* event) {
    Part::resizeEvent(event);
    plan();
}

void ZoneProfile::focusInEvent(QFocusEvent* event) {
    Part::focusInEvent(event);
    if (m_current.isEmpty() && event->reason() != Qt::MouseFocusReason)
        step(0, 0);
}

/// Moves to the nearest drawn door in a direction; straight ahead counts more than near.
void ZoneProfile::step(int along, int down) {
    const ProfileDoor* from = m_current.isEmpty() ? nullptr : m_plan.drawn(m_current);
    const ProfileDoor* best = nullptr;
    double best_cost = 0;
    for (const ProfileDoor& door : m_plan.doors) {
        double cost = 0;
        if (from == nullptr) {
            cost = (door.in_zone_bulkhead ? 0 : 1e6) + door.place.center().x() +
                   door.place.center().y();
        } else {
            const QPointF away = door.place.center() - from->place.center();
            const double ahead =
                along != 0 ? away.x() * along : (door.deck_row - from->deck_row) * down;
            if (&door == from || ahead <= 0.5 || (along != 0 && door.deck_row != from->deck_row))
                continue;
            cost = along != 0 ? ahead : ahead * 1e4 + std::abs(away.x());
        }
        if (best == nullptr || cost < best_cost) {
            best = &door;
            best_cost = cost;
        }
    }
    if (best != nullptr)
        setCurrentDoor(QString(best->number));
}

void ZoneProfile::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_Left:
        return step(-1, 0);
    case Qt::Key_Right:
        return step(1, 0);
    case Qt::Key_Up:
        return step(0, -1);
    case Qt::Key_Down:
        return step(0, 1);
    case Qt::Key_Plus:
    case Qt::Key_Equal: // the same key without shift
        return zoomByKey(2);
    case Qt::Key_Minus:
        return zoomByKey(0.5);
    case Qt::Key_0:
        return zoomByKey(0);
    case Qt::Key_Return:
    case Qt::Key_Enter:
    case Qt::Key_Space:
        if (const ProfileDoor* door = m_plan.drawn(m_current);
            door && !m_current.isEmpty() && !event->isAutoRepeat()) {
            if (door->together() > 1)
                offer({door});
            else
                choose(QString(m_current));
        }
        return;
    default:
        Part::keyPressEvent(event);
    }
}

void ZoneProfile::paintEvent(QPaintEvent*) {
    if (height() < mm(least_mm))
        return;
    QPainter painter(this);
    painter.setLayoutDirection(layoutDirection()); // else the whole program's
    drawProfile(painter, m_plan, m_bulkheads, m_current, look());
    paintSentences(painter);
    if (m_arrangement.doors.empty()) {
        painter.setPen(colours().ink);
        painter.setFont(font(TextSize::Lead));
        painter.drawText(m_plan.viewport, Qt::AlignCenter | Qt::TextWordWrap,
                         tr("This register has no doors yet."));
    }
    if (hasFocus())
        drawFocusRing(painter, QRectF(rect()).adjusted(0, 0, -m_keys_room.width(), 0), look());
}

void ZoneProfile::paintSentences(QPainter& painter) const {
    painter.setFont(font(TextSize::Body));
    double top = m_plan.viewport.bottom() + mm(1.6);
    for (const Sentence& sentence : m_sentences) {
        painter.setPen(sentence.bad ? colours().bad : colours().muted);
        painter.drawText(
            QRectF(m_plan.viewport.left() + mm(2), top, m_words_width, sentence.height),
            Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, sentence.words);
        top += sentence.height;
    }
}

} // namespace latchround::ui

#include "moc_zone_profile.cpp"
