#include "ui/help/help_page.h"

#include <algorithm>

#include <QKeyEvent>
#include <QPainter>
#include <QVBoxLayout>

#include "ui/frames/sheet.h"
#include "ui/help/help_panel.h"
#include "ui/help/help_picture.h"
#include "ui/look/button_drawing.h"
#include "ui/look/english_label.h"
#include "ui/look/read_as.h"

namespace latchround::ui {
namespace {

constexpr double shape = Sketch::high / Sketch::wide;
constexpr double widest_mm = 120; ///< a single drawing
constexpr double least_px = 260;  ///< a narrower drawing tells nothing

} // namespace

HelpPage::HelpPage(const Help& help, QWidget* parent)
    : Part(parent)
    , m_words(new QWidget(this)) {
    readAs<HelpPage, QAccessible::Document>();
    setObjectName(QStringLiteral("help-page"));
    setAccessibleName(help.title);
    auto* lines = new QVBoxLayout(m_words);
    lines->setContentsMargins(0, 0, 0, 0);
    QStringList aloud;
    if (help.topic)
        for (HelpPanel& each : pictureOf(*help.topic)) {
            Panel panel;
            panel.drawing = new HelpPanelView(std::move(each), this);
            const Ink ink = panel.drawing->panel().says == PanelSays::Good  ? Ink::Good
                            : panel.drawing->panel().says == PanelSays::Bad ? Ink::Bad
                                                                            : Ink::Plain;
            panel.caption = new Label(panel.drawing->words(), TextSize::Body, ink, true, this);
            panel.caption->setAlignment(Qt::AlignHCenter | Qt::AlignTop);
            aloud << panel.drawing->words();
            m_panels.push_back(panel);
        }
    for (const HelpParagraph& paragraph : help.paragraphs) {
        say(paragraph.heading, TextSize::Body, Ink::Plain, true);
        say(paragraph.words, TextSize::Lead, Ink::Plain);
        if (!paragraph.english.isEmpty())
            m_words->layout()->addWidget(new EnglishLabel(paragraph.english));
        say(paragraph.source, TextSize::Small, Ink::Muted);
        aloud << paragraph.words;
    }
    setAccessibleDescription(aloud.join(QStringLiteral(". ")));
    setFocusPolicy(Qt::StrongFocus);
    lookChanged();
}

void HelpPage::say(const QString& words, TextSize size, Ink ink, bool bold) {
    if (words.isEmpty())
        return;
    auto* line = new Label(words, size, ink, bold);
    line->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    m_words->layout()->addWidget(line);
}

int HelpPage::wordsHeight(int width) const {
    return m_words->layout()->heightForWidth(width);
}

int HelpPage::captionHeight(int width) const {
    int highest = 0;
    for (const Panel& panel : m_panels)
        highest = std::max(highest, panel.caption->heightForWidth(width));
    return highest + sizes().gap / 2;
}

HelpPage::Block HelpPage::blockIn(int width, int height) const {
    Block best;
    const int count = int(m_panels.size());
    const int gap = sizes().gap;
    for (const bool stacked : {false, true}) {
        const int across = stacked ? 1 : count;
        const int down = stacked ? count : 1;
        if (count == 0 || (stacked && count == 1))
            break;
        const int column = (width - (across - 1) * gap) / across;
        const int caption = captionHeight(column);
        const double high = double(height - (down - 1) * gap) / down - caption;
        const double wide =
            std::min({double(column), high / shape, count == 1 ? mm(widest_mm) : double(column)});
        if (stacked && wide <= best.drawing_wide)
            break;
        const int row = int(wide * shape) + caption;
        best = {stacked, column, wide, row, down * row + (down - 1) * gap};
    }
    return best;
}

int HelpPage::heightForWidth(int width) const {
    const int margins = 2 * sizes().gap; // where the ring is drawn
    const int wide = width - margins;
    const int words = wordsHeight(wide) + margins;
    if (m_panels.empty())
        return words;
    // The drawings need no more than so much of the window.
    constexpr double most = 0.5;
    return blockIn(wide, int(most * window()->height())).high + sizes().gap + words;
}

QSize HelpPage::sizeHint() const {
    const int wide = int(mm(180));
    return {wide, heightForWidth(wide)};
}

QSize HelpPage::minimumSizeHint() const {
    const int least_wide = int(mm(40));
    const int margins = 2 * sizes().gap;
    const int wide = std::max(width(), least_wide) - margins;
    int least = wordsHeight(wide) + margins;
    if (const int count = int(m_panels.size()); count > 0)
        least += int(least_px * shape) + sizes().gap +
                 captionHeight((wide - (count - 1) * sizes().gap) / count);
    return {least_wide, least};
}

void HelpPage::place(const Panel& panel, const QRect& area) {
    const int caption = panel.caption->heightForWidth(area.width());
    const int high = area.height() - captionHeight(area.width());
    panel.drawing->setGeometry(area.left(), area.top(), area.width(), high);
    panel.caption->setGeometry(area.left(), area.top() + high + sizes().gap / 2, area.width(),
                               caption);
}

void HelpPage::arrange() {
    const int gap = sizes().gap;
    const QRect room = rect().adjusted(gap, gap, -gap, -gap);
    const int words = wordsHeight(room.width());
    const Block block = blockIn(room.width(), room.height() - words - gap);
    if (block.drawing_wide < 1) { // no drawing, or no size yet
        m_words->setGeometry(room.left(), room.top(), room.width(), words);
        return;
    }
    int x = room.left();
    int y = room.top();
    for (const Panel& panel : m_panels) {
        place(panel, {x, y, block.column, block.row});
        (block.stacked ? y : x) += (block.stacked ? block.row : block.column) + gap;
    }
    m_words->setGeometry(room.left(), room.top() + block.high + gap, room.width(), words);
}

bool HelpPage::event(QEvent* event) {
    // The words took another size of text: the look of the window they are shown in.
    if (event->type() == QEvent::LayoutRequest) {
        arrange();
        updateGeometry();
    }
    return Part::event(event);
}

void HelpPage::lookChanged() {
    Part::lookChanged();
    m_words->layout()->setSpacing(sizes().gap / 2);
    arrange();
}

void HelpPage::resizeEvent(QResizeEvent* event) {
    Part::resizeEvent(event);
    arrange();
}

void HelpPage::paintEvent(QPaintEvent*) {
    if (!hasFocus())
        return;
    QPainter painter(this);
    drawFocusRing(painter, rect(), look());
}

void HelpPage::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_F1)
        emit done();
    else
        Part::keyPressEvent(event);
}

void showHelp(const Help& help, QWidget* over) {
    auto* sheet = new Sheet(over, help.title);
    auto* page = new HelpPage(help, sheet); // in its look from the start
    QObject::connect(page, &HelpPage::done, sheet, &Sheet::close);
    sheet->setContent(page);
    sheet->setWidthMm(190);
    sheet->open();
}

} // namespace latchround::ui

#include "moc_help_page.cpp"
