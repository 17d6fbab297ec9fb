#include "ui/screens/practice/practice_frame.h"

#include <algorithm>

#include <QHBoxLayout>
#include <QPainter>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/frames/top_bar.h"
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

    int leastHeight(int width) const { return heightOf(TextSize::Small, width); }

protected:
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        painter.setPen(practiceColoursOf(look().light).ink);
        const bool fits = heightOf(TextSize::Lead, width()) <= height();
        painter.setFont(font(fits ? TextSize::Lead : TextSize::Small, true));
        painter.drawText(rect(), Qt::TextWordWrap | Qt::AlignVCenter, m_words);
    }

private:
    int heightOf(TextSize size, int width) const {
        return QFontMetrics(font(size, true))
            .boundingRect(QRect(0, 0, std::max(width, int(mm(20))), 1000), Qt::TextWordWrap,
                          m_words)
            .height();
    }

    QString m_words;
};

} // namespace

PracticeFrame::PracticeFrame(QWidget* inside, QWidget* parent)
    : Part(parent)
    , m_lines(new QVBoxLayout(this))
    , m_strip(new QWidget)
    , m_strip_line(new QHBoxLayout(m_strip))
    , m_words(new StripWords(tr("PRACTICE: simulated doors, nothing here is a record")))
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
    m_scene_offered = offered;
    showKeys();
}

void PracticeFrame::setEndOffered(bool offered) {
    m_end_offered = offered;
    showKeys();
}

void PracticeFrame::setBar(TopBar& bar) {
    m_bar = &bar;
    place();
}

/// Strip and keys above the screens, or in their bar.
void PracticeFrame::place() {
    const bool in_bar = m_bar && isLow(*this);
    if (m_dressed != (in_bar ? m_bar : nullptr)) {
        leaveBar();
        if (in_bar) {
            m_bar->setPractice(PracticeCover::tr("PRACTICE"), m_words->accessibleName(),
                               {m_scene, m_end});
            m_dressed = m_bar;
        }
    }
    m_strip->setVisible(!in_bar);
    const int border = int(mm(practiceBorderMm(*this)));
    m_lines->setContentsMargins(border, 0, border, border); // strip or bar are the border above
    showKeys();
}

void PracticeFrame::leaveBar() {
    if (m_dressed)
        m_dressed->endPractice();
    m_dressed.clear();
    m_strip_line->addWidget(m_scene);
    m_strip_line->addWidget(m_end);
}

void PracticeFrame::showKeys() {
    m_scene->setVisible(m_scene_offered);
    m_end->setVisible(m_end_offered);
    if (m_dressed)
        m_dressed->practiceKeysChanged();
    else
        sizeStrip();
}

/// The words have their room, and keys beside them the width that is left.
void PracticeFrame::sizeStrip() {
    const auto& words = *static_cast<StripWords*>(m_words);
    const int high = sizes().target + sizes().gap;
    const int whole = width() - 2 * int(mm(practiceBorderMm(*this))) - 2 * sizes().gap;
    const auto beside_keys = [this, whole] {
        int room = whole;
        for (const QPushButton* key : {m_scene, m_end})
            if (!key->isHidden())
                room -= std::min(key->sizeHint().width(), key->maximumWidth()) + sizes().gap;
        return room;
    };
    for (QPushButton* key : {m_scene, m_end})
        widenKey(*key);
    if (words.leastHeight(beside_keys()) > sizes().target)
        for (QPushButton* key : {m_scene, m_end})
            narrowKey(*key);
    const int needed = words.leastHeight(beside_keys()) + sizes().gap;
    // Without keys no higher than its words: the screens need the room.
    const bool keys = m_scene_offered || m_end_offered;
    m_strip->setFixedHeight(std::max(keys ? high : int(mm(6)), needed));
}

void PracticeFrame::lookChanged() {
    // Apart from the keys of the bar below it.
    m_strip_line->setContentsMargins(sizes().gap, 1, sizes().gap, sizes().gap - 1);
    m_strip_line->setSpacing(sizes().gap);
    place();
    Part::lookChanged();
}

void PracticeFrame::resizeEvent(QResizeEvent* event) {
    Part::resizeEvent(event);
    place();
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

#include "moc_practice_frame.cpp"
