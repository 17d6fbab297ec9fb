#include "ui/screens/practice/exercise_row.h"

#include <QGridLayout>
#include <QPainter>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/look/label.h"
#include "ui/look/touch_style.h"
#include "ui/words/door_words.h"
#include "ui/words/exercise_words.h"

namespace latchround::ui {

namespace {

/// How hard it is, as one to four filled steps.
class LevelSteps : public Part {
public:
    explicit LevelSteps(practice::Level level)
        : m_filled(int(level) + 1) {
        setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    }
    QSize sizeHint() const override { return {int(mm(7)), int(mm(8))}; }

protected:
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        const int steps = int(practice::levelWords.size());
        const double wide = double(width()) / steps;
        for (int i = 0; i < steps; ++i) {
            const double high = height() * (i + 1.0) / steps;
            const QRectF step(i * wide + 0.5, height() - high + 0.5, wide - mm(0.5), high - 1);
            painter.setPen(QPen(colours().edge, 1));
            painter.setBrush(i < m_filled ? QBrush(colours().accent) : Qt::NoBrush);
            painter.drawRect(step);
        }
    }

private:
    int m_filled;
};

} // namespace

ExerciseRow::ExerciseRow(const ui::ExerciseOffered& exercise, QWidget* parent)
    : Part(parent)
    , m_grid(new QGridLayout(this))
    , m_words(new QWidget)
    , m_best(new Label({}, TextSize::Body, Ink::Plain, true))
    , m_key(keyOf(exercise.is_sealed ? tr("Unseal ›") : tr("Practise ›"), "")) {
    auto* lines = new QVBoxLayout(m_words);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->setSpacing(2);
    lines->addStretch(1);
    lines->addWidget(new Label(exercise.title, TextSize::Lead, Ink::Plain, true));
    QStringList facts{levelWords(exercise.level), doorCountWords(exercise.doors)};
    if (exercise.is_sealed)
        facts << tr("sealed by the instructor");
    const QString about = facts.join(QStringLiteral(" · "));
    lines->addWidget(new Label(about, TextSize::Body));
    auto* words = new Label(exercise.words, TextSize::Small, Ink::Muted);
    lines->addWidget(words);
    lines->addStretch(1);
    m_grid->addWidget(new LevelSteps(exercise.level), 0, 0, Qt::AlignVCenter);
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
