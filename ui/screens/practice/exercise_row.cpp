#include "ui/screens/practice/exercise_row.h"

#include <QGridLayout>
#include <QPainter>
#include <QPainterPath>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/look/label.h"
#include "ui/look/touch_style.h"
#include "ui/words/door_words.h"
#include "ui/words/exercise_words.h"

namespace latchround::ui {

namespace {

/// How hard it is: of four leaves, each with its window, one to four are filled.
class LevelLeaves : public Part {
public:
    explicit LevelLeaves(practice::Level level)
        : m_filled(int(level) + 1) {
        setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    }
    QSize sizeHint() const override { return {int(mm(7)), int(mm(9))}; }

protected:
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        painter.setRenderHint(QPainter::Antialiasing);
        constexpr int beside = 2; // and two below them
        const int leaves = int(practice::levelWords.size());
        const double gap = mm(1);
        const QSizeF size((width() - gap) / beside - 1, (height() - gap) / beside - 1);
        for (int i = 0; i < leaves; ++i)
            paintLeaf(painter,
                      QRectF(QPointF(0.5 + i % beside * (size.width() + 1 + gap),
                                     0.5 + i / beside * (size.height() + 1 + gap)),
                             size),
                      i < m_filled);
    }

private:
    void paintLeaf(QPainter& painter, const QRectF& leaf, bool filled) const {
        const double across = leaf.width() * 0.46;
        QPainterPath shape;
        shape.addRect(leaf);
        shape.addEllipse(QPointF(leaf.center().x(), leaf.top() + leaf.height() * 0.32), across / 2,
                         across / 2);
        painter.setPen(QPen(filled ? colours().accent : colours().edge, 1));
        painter.setBrush(filled ? QBrush(colours().accent) : QBrush(Qt::NoBrush));
        painter.drawPath(shape); // odd-even: the window stays open
    }

    int m_filled;
};

} // namespace

ExerciseRow::ExerciseRow(const ui::ExerciseOffered& exercise, QWidget* parent)
    : Part(parent)
    , m_grid(new QGridLayout(this))
    , m_words(new QWidget)
    , m_best(new Label({}, TextSize::Body, Ink::Plain, true))
    , m_key(keyOf(exercise.is_locked ? tr("Unlock ›") : tr("Practise ›"), "")) {
    auto* lines = new QVBoxLayout(m_words);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->setSpacing(2);
    lines->addStretch(1);
    lines->addWidget(new Label(exercise.title, TextSize::Lead, Ink::Plain, true));
    QStringList facts{levelWords(exercise.level), doorCountWords(exercise.doors)};
    if (exercise.is_locked)
        facts << tr("locked by the instructor");
    const QString about = facts.join(QStringLiteral(" · "));
    lines->addWidget(new Label(about, TextSize::Body));
    auto* words = new Label(exercise.words, TextSize::Small, Ink::Muted);
    lines->addWidget(words);
    lines->addStretch(1);
    m_grid->addWidget(new LevelLeaves(exercise.level), 0, 0, Qt::AlignVCenter);
    m_grid->setColumnStretch(1, 1);
    m_grid->setRowStretch(0, 1);
    place();
    words->setVisible(!exercise.words.isEmpty()); // now that it is no window of its own
    m_best->setObjectName(QStringLiteral("best-score"));
    m_best->setWordWrap(false);
    m_best->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    m_key->setObjectName(QStringLiteral("practise-") + exercise.place);
    m_key->setAccessibleName(tr("%1: %2, %3").arg(m_key->text(), exercise.title, about));
    setAccessibleName(exercise.title);
    setAccessibleDescription(about + QStringLiteral(". ") + exercise.words);
    connect(m_key, &QPushButton::clicked, this, &ExerciseRow::asked);
    lookChanged();
}

void ExerciseRow::setBest(std::optional<int> percent) {
    m_best->setVisible(percent.has_value());
    if (percent)
        m_best->setText(tr("best %1 %").arg(*percent));
}

/// Where the row is narrow its key stands below the words.
void ExerciseRow::place() {
    constexpr double narrow_mm = 90;
    const bool narrow = width() < mm(narrow_mm);
    for (QWidget* part : std::initializer_list<QWidget*>{m_words, m_best, m_key})
        m_grid->removeWidget(part);
    m_grid->addWidget(m_words, 0, 1, 1, narrow ? 2 : 1);
    m_grid->addWidget(m_best, narrow ? 1 : 0, narrow ? 1 : 2, Qt::AlignVCenter);
    m_grid->addWidget(m_key, narrow ? 1 : 0, narrow ? 2 : 3, Qt::AlignVCenter);
}

void ExerciseRow::resizeEvent(QResizeEvent* event) {
    Part::resizeEvent(event);
    place();
}

void ExerciseRow::lookChanged() {
    const Sizes& s = sizes();
    m_grid->setContentsMargins(s.pad, s.gap, s.pad, s.gap);
    m_grid->setSpacing(s.gap + s.gap / 2);
    m_key->setMinimumSize(s.main_target + s.target / 2, s.target);
    Part::lookChanged();
}

void ExerciseRow::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setPen(QPen(colours().hairline, 1));
    painter.drawLine(QPointF(0, height() - 0.5), QPointF(width(), height() - 0.5));
}

} // namespace latchround::ui

#include "moc_exercise_row.cpp"
