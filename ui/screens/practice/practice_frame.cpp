#include "ui/screens/practice/practice_frame.h"

#include <QHBoxLayout>
#include <QPainter>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/look/practice_colours.h"
#include "ui/look/touch_style.h"
#include "ui/screens/practice/practice_cover.h"

namespace latchround::ui {

namespace {

/// The words of the strip, on as many lines as they need, in colours of their own.
class StripWords : public Part {
public:
    explicit StripWords(const QString& words)
        : m_words(words) {
        setObjectName(QStringLiteral("practice-words"));
        setAccessibleName(words);
        setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Expanding);
    }

protected:
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        painter.setPen(practiceColoursOf(look().light).ink);
        const auto fits = [this](TextSize size) {
            return QFontMetrics(font(size, true))
                       .boundingRect(rect(), Qt::TextWordWrap | Qt::AlignVCenter, m_words)
                       .height() <= height();
        };
        painter.setFont(font(fits(TextSize::Lead) ? TextSize::Lead : TextSize::Small, true));
        painter.drawText(rect(), Qt::TextWordWrap | Qt::AlignVCenter, m_words);
    }

private:
    QString m_words;
};

} // namespace

PracticeFrame::PracticeFrame(QWidget* inside, QWidget* parent)
    : Part(parent)
    , m_lines(new QVBoxLayout(this))
    , m_strip(new QWidget)
    , m_strip_line(new QHBoxLayout(m_strip))
    , m_words(new StripWords(tr("PRACTICE: these doors are not there, nothing here is a record")))
    , m_scene(keyOf(tr("At the door"), "practice-scene", "bar"))
    , m_end(keyOf(tr("End and debrief"), "practice-end", "bar")) {
    setObjectName(QStringLiteral("practice-frame"));
    m_lines->setSpacing(0);
    m_lines->addWidget(m_strip);
    m_lines->addWidget(inside, 1);
    m_strip_line->addWidget(m_words, 1);
    m_strip_line->addWidget(m_scene);
    m_strip_line->addWidget(m_end);
    connect(m_scene, &QPushButton::clicked, this, &PracticeFrame::sceneAsked);
    connect(m_end, &QPushButton::clicked, this, &PracticeFrame::endAsked);
    lookChanged();
}

void PracticeFrame::setSceneOffered(bool offered) {
    m_scene->setVisible(offered);
    sizeStrip();
}

void PracticeFrame::setEndOffered(bool offered) {
    m_end->setVisible(offered);
    sizeStrip();
}

/// Without keys no higher than its words: the screens need the room.
void PracticeFrame::sizeStrip() {
    const bool keys = !m_scene->isHidden() || !m_end->isHidden();
    m_strip->setFixedHeight(keys ? sizes().target + sizes().gap : int(mm(6)));
}

void PracticeFrame::lookChanged() {
    const int border = int(mm(practice_border_mm));
    m_lines->setContentsMargins(border, 0, border, border); // the strip is the border above
    // Apart from the keys of the bar below it.
    m_strip_line->setContentsMargins(sizes().gap, 1, sizes().gap, sizes().gap - 1);
    m_strip_line->setSpacing(sizes().gap);
    sizeStrip();
    Part::lookChanged();
}

void PracticeFrame::showEvent(QShowEvent* event) {
    Part::showEvent(event);
    if (!m_over) { // the window is known only now
        m_over = new PracticeCover(window());
        m_over->show();
    }
}

void PracticeFrame::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.fillRect(rect(), practiceColoursOf(look().light).area);
}

} // namespace latchround::ui
