#include "ui/frames/top_bar.h"

#include <algorithm>

#include <QHBoxLayout>
#include <QPainter>
#include <QPushButton>
#include <QResizeEvent>

#include "ui/look/label.h"
#include "ui/look/practice_colours.h"
#include "ui/look/touch_style.h"

namespace latchround::ui {

namespace {

/// The filled line beside the count of doors.
class ProgressLine : public Part {
public:
    explicit ProgressLine(QWidget* parent)
        : Part(parent) {}
    double filled = 0;

    QSize sizeHint() const override { return {int(mm(30)), int(mm(1.6))}; }

protected:
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        painter.setRenderHint(QPainter::Antialiasing);
        painter.setPen(Qt::NoPen);
        const double radius = height() / 2.0;
        painter.setBrush(colours().bar_track);
        painter.drawRoundedRect(rect(), radius, radius);
        painter.setBrush(colours().bar_filled);
        painter.drawRoundedRect(QRectF(0, 0, width() * filled, height()), radius, radius);
    }
};

/// Of words on two lines, parted where both are shortest.
int widthOnTwoLines(const QString& words, const QFontMetrics& metrics) {
    int least = metrics.horizontalAdvance(words);
    for (qsizetype at = words.indexOf(QLatin1Char(' ')); at >= 0;
         at = words.indexOf(QLatin1Char(' '), at + 1))
        least = std::min(least, std::max(metrics.horizontalAdvance(words.left(at)),
                                         metrics.horizontalAdvance(words.mid(at + 1))));
    return least;
}

} // namespace

void narrowKey(QPushButton& key) {
    const Sizes& sizes = lookOf(&key).sizes;
    key.ensurePolished();
    const int beside = 2 * (sizes.border + int(2 * sizes.px_per_mm));
    key.setFixedWidth(
        std::max(sizes.target, widthOnTwoLines(key.text(), key.fontMetrics()) + beside));
}

void widenKey(QPushButton& key) {
    key.setMinimumWidth(0);
    key.setMaximumWidth(QWIDGETSIZE_MAX);
}

TopBar::TopBar(QWidget* parent)
    : Part(parent)
    , m_row(new QHBoxLayout(this))
    , m_back(new QPushButton(QStringLiteral("‹"), this))
    , m_light(new QPushButton(this))
    , m_undo(new QPushButton(tr("Undo"), this))
    , m_word(new Label({}, TextSize::Small, Ink::Bar, true, this))
    , m_title(new Label({}, TextSize::Heading, Ink::Bar, true, this))
    , m_subtitle(new Label({}, TextSize::Body, Ink::BarMuted, false, this))
    , m_count(new Label({}, TextSize::Body, Ink::Bar, false, this))
    , m_line(new ProgressLine(this))
    , m_saved(new Label({}, TextSize::Small, Ink::BarMuted, false, this))
    , m_time(new Label({}, TextSize::Body, Ink::Bar, false, this)) {
    m_back->setObjectName(QStringLiteral("back"));
    m_back->setAccessibleName(tr("Back"));
    m_light->setObjectName(QStringLiteral("light"));
    m_undo->setObjectName(QStringLiteral("undo"));
    m_saved->setObjectName(QStringLiteral("saved"));
    setRole(*m_back, "bar");
    setRole(*m_undo, "bar");
    setRole(*m_light, "bar");
    connect(m_back, &QPushButton::clicked, this, &TopBar::back);
    connect(m_light, &QPushButton::clicked, this, &TopBar::lightAsked);
    connect(m_undo, &QPushButton::clicked, this, &TopBar::undoAsked);
    auto* titles = new QVBoxLayout;
    titles->setSpacing(0);
    titles->addStretch(1);
    titles->addWidget(m_word);
    titles->addWidget(m_title);
    titles->addStretch(1);
    m_word->setObjectName(QStringLiteral("practice-word"));
    m_word->hide();
    m_row->addWidget(m_back);
    m_row->addLayout(titles);
    m_row->addWidget(m_subtitle);
    m_row->addStretch(1);
    m_row->addWidget(m_count);
    m_row->addWidget(m_line, 0, Qt::AlignVCenter);
    m_row->addWidget(m_saved);
    m_row->addWidget(m_undo);
    m_row->addWidget(m_time);
    m_row->addWidget(m_light);
    for (Label* words : {m_word, m_title, m_subtitle, m_count, m_saved, m_time})
        words->setWordWrap(false);
    setTap(false, {});
    setUndo(false);
    lookChanged();
    setProgress(0, 0);
    setBack(false);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
}

void TopBar::setTitle(const QString& title, const QString& subtitle) {
    m_title->setText(title);
    m_subtitle->setText(subtitle);
    layOut();
}

void TopBar::setBack(bool shown) {
    m_back->setVisible(shown);
}

void TopBar::setProgress(int done, int all) {
    m_count->setText(all > 0 ? tr("%1 of %2 doors").arg(done).arg(all) : QString());
    static_cast<ProgressLine*>(m_line)->filled = all > 0 ? double(done) / all : 0;
    layOut();
    m_line->update();
}

void TopBar::setTime(const QString& time) {
    m_time->setText(time);
    layOut();
}

void TopBar::setUndo(bool shown) {
    m_undo->setVisible(shown);
    layOut();
}

void TopBar::setTap(bool can_undo, const QString& saved) {
    m_undo->setEnabled(can_undo);
    m_undo->setAccessibleName(can_undo ? tr("Undo: see what can be taken back")
                                       : tr("Undo: nothing to take back"));
    m_saved->setText(saved);
    layOut();
}

void TopBar::layOut() {
    const bool progress = !m_count->text().isEmpty();
    m_count->setVisible(progress);
    // On a narrow window one thing after the other gives way to what must be read and pressed.
    const int space = m_row->spacing();
    int room = width() - 2 * sizes().gap;
    std::vector<const QWidget*> kept{m_back, m_undo, m_light};
    kept.insert(kept.end(), m_practice_keys.begin(), m_practice_keys.end());
    for (const QWidget* key : kept)
        if (!key->isHidden())
            room -= std::clamp(key->sizeHint().width(), key->minimumWidth(), key->maximumWidth()) +
                    space;
    room -= std::max(m_title->sizeHint().width(), isPractice() ? m_word->sizeHint().width() : 0);
    const auto offer = [&](QWidget* part, bool wanted) {
        const int needed = part->sizeHint().width() + space;
        part->setVisible(wanted && needed <= room);
        if (wanted && needed <= room)
            room -= needed;
    };
    offer(m_count, progress);
    offer(m_time, true);
    offer(m_subtitle, !m_subtitle->text().isEmpty());
    offer(m_saved, !m_saved->text().isEmpty());
    offer(m_line, progress && !isPractice()); // its colours are those of the ordinary bar
}

void TopBar::setPractice(const QString& word, const QString& spoken,
                         const std::vector<QPushButton*>& keys) {
    m_practice_keys = keys;
    m_word->setText(word);
    m_word->setAccessibleName(spoken);
    int at = m_row->indexOf(m_undo);
    for (QPushButton* key : keys)
        m_row->insertWidget(at++, key);
    lookChanged();
}

void TopBar::endPractice() {
    for (QPushButton* key : m_practice_keys) {
        m_row->removeWidget(key);
        widenKey(*key);
    }
    m_practice_keys.clear();
    lookChanged();
}

void TopBar::lookChanged() {
    Part::lookChanged();
    const Sizes& size = sizes();
    setFixedHeight(size.target + 2);
    m_row->setContentsMargins(size.gap, 1, size.gap, 1);
    m_row->setSpacing(isPractice() ? size.gap : size.gap + size.gap / 2);
    m_word->setVisible(isPractice());
    for (Label* words : {m_subtitle, m_saved})
        words->setInk(isPractice() ? Ink::Bar : Ink::BarMuted);
    m_back->setFixedSize(size.target, size.target);
    switch (look().light) {
    case Light::Day:
        m_light->setText(tr("Day"));
        break;
    case Light::Dusk:
        m_light->setText(tr("Dusk"));
        break;
    case Light::Night:
        m_light->setText(tr("Night"));
        break;
    }
    m_light->setAccessibleName(tr("Light: %1. Press for the next").arg(m_light->text()));
    for (QPushButton* key : m_practice_keys)
        narrowKey(*key); // so that the title keeps its room beside them
    layOut();
}

void TopBar::resizeEvent(QResizeEvent* event) {
    Part::resizeEvent(event);
    layOut();
}

void TopBar::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.fillRect(rect(), isPractice() ? practiceColoursOf(look().light).area : colours().bar);
}

} // namespace latchround::ui

#include "moc_top_bar.cpp"
