#include "ui/help/help_page.h"

#include <algorithm>

#include <QKeyEvent>
#include <QVBoxLayout>

#include "ui/help/help_panel.h"
#include "ui/help/help_picture.h"
#include "ui/parts/sheet.h"

namespace latchround::ui {
namespace {

constexpr double shape = Sketch::high / Sketch::wide;
constexpr double widest_mm = 120;        ///< a single drawing
constexpr double stacked_below_mm = 150; ///< narrower pages show two drawings one above the other
constexpr double least_px = 260;         ///< a narrower drawing tells nothing

} // namespace

HelpPage::HelpPage(const Help& help, QWidget* parent)
    : Part(parent)
    , m_words(new QWidget(this)) {
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
            panel.caption = new Lettering(panel.drawing->words(), TextSize::Body, ink, true, this);
            panel.caption->setAlignment(Qt::AlignHCenter | Qt::AlignTop);
            aloud << panel.drawing->words();
            m_panels.push_back(panel);
        }
    for (const HelpParagraph& paragraph : help.paragraphs) {
        say(paragraph.heading, TextSize::Body, Ink::Plain, true);
        say(paragraph.words, TextSize::Lead, Ink::Plain);
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
    auto* line = new Lettering(words, size, ink, bold);
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

double HelpPage::drawingWidth(int width, int height, bool stacked) const {
    const int count = int(m_panels.size());
    const int gap = sizes().gap;
    if (count == 0)
        return 0;
    const int across = stacked ? 1 : count;
    const int down = stacked ? count : 1;
    const int wide = (width - (across - 1) * gap) / across;
    const double high = double(height - (down - 1) * gap) / down - captionHeight(wide);
    return std::min({double(wide), high / shape, count == 1 ? mm(widest_mm) : double(wide)});
}

int HelpPage::heightForWidth(int width) const {
    const bool stacked = m_panels.size() == 2 && width < mm(stacked_below_mm);
    constexpr int without_end = 100000;
    const double wide = drawingWidth(width, without_end, stacked);
    int height = wordsHeight(width);
    if (m_panels.empty())
        return height;
    const int down = stacked ? int(m_panels.size()) : 1;
    const int across = stacked ? 1 : int(m_panels.size());
    const int each =
        int(wide * shape) + captionHeight((width - (across - 1) * sizes().gap) / across);
    return height + sizes().gap + down * each + (down - 1) * sizes().gap;
}

QSize HelpPage::sizeHint() const {
    const int wide = int(mm(180));
    return {wide, heightForWidth(wide)};
}

QSize HelpPage::minimumSizeHint() const {
    const int least_wide = int(mm(40));
    const int wide = std::max(width(), least_wide);
    int least = wordsHeight(wide);
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
    const int room = height() - wordsHeight(width()) - gap;
    const bool stacked = m_panels.size() == 2 &&
                         drawingWidth(width(), room, true) > drawingWidth(width(), room, false);
    const double wide = drawingWidth(width(), room, stacked);
    if (m_panels.empty() || wide < 1) {
        m_words->setGeometry(rect());
        return;
    }
    const int count = int(m_panels.size());
    const int across = stacked ? 1 : count;
    const int each = (width() - (across - 1) * gap) / across;
    const int high = int(wide * shape) + captionHeight(each);
    int x = 0;
    int y = 0;
    for (const Panel& panel : m_panels) {
        place(panel, {x, y, each, high});
        (stacked ? y : x) += (stacked ? high : each) + gap;
    }
    const int below = (stacked ? count : 1) * (high + gap);
    m_words->setGeometry(0, below, width(), height() - below);
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
