#include "ui/help/help_page.h"

#include <algorithm>

#include <QKeyEvent>

#include "ui/help/help_panel.h"
#include "ui/help/help_picture.h"
#include "ui/parts/lettering.h"
#include "ui/parts/reading_pane.h"
#include "ui/parts/sheet.h"

namespace latchround::ui {
namespace {

constexpr double shape = Sketch::high / Sketch::wide;
constexpr double widest_mm = 120;        ///< a single drawing
constexpr double stacked_below_mm = 150; ///< narrower pages show two drawings one above the other
constexpr double least_px = 120;         ///< a drawing that is narrower tells nothing

} // namespace

HelpPage::HelpPage(const Help& help, QWidget* parent)
    : Part(parent)
    , m_words(new ReadingPane(help.title, this)) {
    setObjectName(QStringLiteral("help-page"));
    setAccessibleName(help.title);
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
        if (!paragraph.heading.isEmpty())
            m_words->add(paragraph.heading, TextSize::Body, Ink::Plain, true);
        m_words->add(paragraph.words, TextSize::Lead);
        if (!paragraph.source.isEmpty())
            m_words->add(paragraph.source, TextSize::Small, Ink::Muted);
        aloud << paragraph.words;
    }
    setAccessibleDescription(aloud.join(QStringLiteral(". ")));
    setFocusPolicy(Qt::StrongFocus);
    setFocusProxy(m_words); // arrow keys move the words
    lookChanged();
}

int HelpPage::wordsHeight(int width) const {
    return m_words->widget()->heightForWidth(width);
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
    return {int(mm(40)), int(mm(30))};
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
    const int words = std::min(wordsHeight(width()), height());
    const int room = height() - words - gap;
    const bool stacked = m_panels.size() == 2 &&
                         drawingWidth(width(), room, true) > drawingWidth(width(), room, false);
    const double wide = drawingWidth(width(), room, stacked);
    const bool shown = wide >= least_px;
    for (const Panel& panel : m_panels) {
        panel.drawing->setVisible(shown);
        panel.caption->setVisible(shown);
    }
    if (!shown) {
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

void HelpPage::lookChanged() {
    Part::lookChanged();
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
    auto* page = new HelpPage(help);
    QObject::connect(page, &HelpPage::done, sheet, &Sheet::close);
    sheet->setContent(page);
    sheet->setWidthMm(190);
    sheet->open();
}

} // namespace latchround::ui
