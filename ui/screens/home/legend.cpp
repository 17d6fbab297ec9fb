#include "ui/screens/home/legend.h"

#include <algorithm>
#include <array>
#include <cmath>

#include <QEvent>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QPainter>

#include "ui/ink/verdict_colour.h"
#include "ui/look/label.h"
#include "ui/ship/door_glyph.h"
#include "ui/words/verdict_words.h"

namespace latchround::ui {

/// Dots as the profile draws them: one in the colour of its verdict, or all in plain ink.
class LegendDots : public Part {
public:
    explicit LegendDots(std::vector<Verdict> verdicts)
        : m_verdicts(std::move(verdicts)) {
        setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    }
    void setVerdicts(std::vector<Verdict> verdicts) {
        m_verdicts = std::move(verdicts);
        updateGeometry();
        update();
    }
    void setPlain() { m_plain = true; }
    QSize sizeHint() const override {
        return {int(std::ceil(double(m_verdicts.size()) * step())), int(mm(mark_mm))};
    }

    static constexpr double mark_mm = 4.6; ///< the height of all marks of the legend

protected:
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        painter.setRenderHint(QPainter::Antialiasing);
        const double side = mm(dot_mm);
        QRectF place(0, (height() - side) / 2, side, side);
        for (std::size_t i = 0; i < m_verdicts.size(); ++i) {
            place.moveLeft(double(i) * step() + mm(gap_mm) / 2);
            drawDoorDot(painter, place, m_verdicts[i],
                        m_plain ? colours().ink : colourOf(m_verdicts[i], colours()));
        }
    }

private:
    static constexpr double dot_mm = 1.7;
    static constexpr double gap_mm = 0.9;

    double step() const { return mm(dot_mm + gap_mm); }

    std::vector<Verdict> m_verdicts;
    bool m_plain = false;
};

namespace {

constexpr std::array legend_verdicts{Verdict::Satisfactory,   Verdict::TimeAgain, Verdict::Judge,
                                     Verdict::Unsatisfactory, Verdict::Untested,  Verdict::Advice,
                                     Verdict::NotApplicable};

/// A short piece of a zone bulkhead.
class LegendBulkhead : public Part {
public:
    explicit LegendBulkhead(bool open)
        : m_open(open) {
        setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    }
    QSize sizeHint() const override { return {int(mm(5)), int(mm(LegendDots::mark_mm))}; }

protected:
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        painter.setRenderHint(QPainter::Antialiasing);
        if (m_open)
            drawOpenBulkhead(painter, QRectF(rect()), look());
        else
            drawUnprovenBulkhead(painter, QRectF(rect()), look());
    }

private:
    bool m_open;
};

/// Of the verdicts of some doors, one for each shape that a dot has.
std::vector<Verdict> shapesOf(const std::set<Verdict>& verdicts) {
    std::vector<Verdict> shapes;
    if (verdicts.contains(Verdict::Satisfactory))
        shapes.push_back(Verdict::Satisfactory);
    const auto is_ring = [](Verdict verdict) {
        return verdict != Verdict::Satisfactory && verdict != Verdict::Unsatisfactory;
    };
    if (std::any_of(verdicts.begin(), verdicts.end(), is_ring))
        shapes.push_back(Verdict::Untested);
    if (verdicts.contains(Verdict::Unsatisfactory))
        shapes.push_back(Verdict::Unsatisfactory);
    return shapes;
}

/// Keeps the room of what is only out of sight in a closer view: a legend that grew and shrank with
/// the view would move the profile under the finger.
void setShown(QWidget& part, bool has_room, bool is_shown) {
    QSizePolicy policy = part.sizePolicy();
    policy.setRetainSizeWhenHidden(has_room);
    part.setSizePolicy(policy);
    part.setVisible(has_room && is_shown);
}

} // namespace

Legend::Legend(QWidget* parent)
    : Part(parent)
    , m_grid(new QGridLayout(this))
    , m_other_dots(new LegendDots({})) {
    m_grid->setContentsMargins(0, 0, 0, 0);
    for (const Verdict verdict : legend_verdicts) {
        auto* dot = new LegendDots({verdict});
        QWidget* pair =
            pairOf({new DoorGlyph(verdict, LegendDots::mark_mm), dot}, verdictWords(verdict));
        m_verdicts.push_back({verdict, pair, dot});
    }
    m_other_dots->setPlain();
    m_others = pairOf({m_other_dots}, tr("other boundaries"));
    m_open = pairOf({new LegendBulkhead(true)}, tr("bulkhead open"));
    m_unproven = pairOf({new LegendBulkhead(false)}, tr("not yet proven"));
    auto* count = new Label(QStringLiteral("×2"), TextSize::Small);
    count->setWordWrap(false);
    m_count = pairOf({count}, tr("several doors"));
    lookChanged();
    setMarks({});
}

/// Few words, so that the line stays one line on a small window.
QWidget* Legend::pairOf(const std::vector<QWidget*>& marks, const QString& words) {
    auto* pair = new QWidget(this);
    auto* line = new QHBoxLayout(pair);
    line->setContentsMargins(0, 0, 0, 0);
    for (QWidget* mark : marks)
        line->addWidget(mark);
    auto* label = new Label(words, TextSize::Small);
    label->setWordWrap(false);
    line->addWidget(label, 1);
    m_pairs.push_back(pair);
    return pair;
}

void Legend::setBrief(bool brief) {
    if (brief == m_brief)
        return;
    m_brief = brief;
    setMarks(m_marks);
}

void Legend::setMarks(const ProfileMarks& marks) {
    m_marks = marks;
    m_shown.clear();
    const auto place = [this](QWidget& pair, bool has_room, bool is_shown) {
        setShown(pair, has_room, is_shown);
        if (has_room)
            m_shown.push_back(&pair);
        else
            m_grid->removeWidget(&pair);
    };
    for (const VerdictPair& each : m_verdicts) {
        setShown(*each.dot, marks.others.contains(each.verdict), marks.dots);
        place(*each.pair, marks.verdicts.contains(each.verdict), true);
    }
    m_other_dots->setVerdicts(shapesOf(marks.others));
    place(*m_others, !m_brief && !marks.others.empty(), marks.dots);
    place(*m_open, !m_brief && marks.open_bulkhead, true);
    place(*m_unproven, !m_brief && marks.unproven_bulkhead, true);
    place(*m_count, !m_brief && marks.neighbours, marks.counts);
    m_columns = 0;
    setRoom(m_room);
}

/// In one line where that fits, else in as few as it takes.
void Legend::setRoom(int room) {
    m_room = room;
    const int all = int(m_shown.size());
    for (int lines = 1; lines <= all; ++lines) {
        const int columns = (all + lines - 1) / lines;
        int needed = (columns - 1) * m_grid->horizontalSpacing();
        for (int column = 0; column < columns; ++column) {
            int widest = 0;
            for (int i = column; i < all; i += columns)
                widest = std::max(widest, m_shown[std::size_t(i)]->sizeHint().width());
            needed += widest;
        }
        if (needed <= room || columns == 1)
            return setColumns(columns);
    }
}

/// The words took another size of text.
bool Legend::event(QEvent* event) {
    if (event->type() == QEvent::LayoutRequest)
        setRoom(m_room);
    return Part::event(event);
}

void Legend::setColumns(int columns) {
    if (columns == m_columns)
        return;
    m_columns = columns;
    for (int i = 0; i < int(m_shown.size()); ++i)
        m_grid->addWidget(m_shown[std::size_t(i)], i / columns, i % columns);
}

void Legend::lookChanged() {
    m_grid->setHorizontalSpacing(sizes().gap + sizes().gap / 2);
    m_grid->setVerticalSpacing(sizes().gap / 2);
    for (QWidget* pair : m_pairs)
        pair->layout()->setSpacing(int(mm(1.2)));
    Part::lookChanged();
}

} // namespace latchround::ui

#include "moc_legend.cpp"
