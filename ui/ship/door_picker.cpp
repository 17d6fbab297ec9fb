#include "ui/ship/door_picker.h"

#include <algorithm>

#include <QGridLayout>
#include <QPainter>
#include <QPushButton>
#include <QStyleOptionButton>
#include <QVBoxLayout>

#include "ui/ink/glyph_drawing.h"
#include "ui/look/button_drawing.h"
#include "ui/look/label.h"
#include "ui/look/touch_style.h"
#include "ui/words/verdict_words.h"

namespace latchround::ui {
namespace {

constexpr double glyph_mm = 5.6;
constexpr double glyph_share = 0.84; ///< width to height

/// A key with the door's glyph before its number.
class DoorKey : public QPushButton {
public:
    explicit DoorKey(const DoorOffered& door)
        : m_verdict(door.verdict)
        , m_number(door.number) {
        setObjectName(QStringLiteral("pick-") + door.number);
        setAccessibleName(DoorPicker::tr("door %1, deck %2, %3")
                              .arg(door.number, door.deck, verdictWords(door.verdict)));
        setRole(*this, "plain");
    }

protected:
    void paintEvent(QPaintEvent*) override {
        const Appearance& look = lookOf(this);
        QPainter painter(this);
        QStyleOptionButton option;
        initStyleOption(&option);
        drawPushButtonArea(painter, option, this, look);
        if (hasFocus())
            drawFocusRing(painter, QRectF(rect()), look);
        const double mm = look.sizes.px_per_mm;
        const double height = glyph_mm * mm;
        const QRectF glyph(2 * mm, (this->height() - height) / 2, height * glyph_share, height);
        drawDoorGlyph(painter, glyph, m_verdict, look.colours);
        painter.setFont(font());
        painter.setPen(look.colours.accent);
        painter.drawText(
            QRectF(glyph.right() + mm, 0, width() - glyph.right() - 2 * mm, this->height()),
            Qt::AlignCenter, m_number);
    }

private:
    Verdict m_verdict;
    QString m_number;
};

using DeckRow = std::vector<DoorOffered>;

/// By decks from the top, each from aft to forward.
std::vector<DeckRow> byDeck(std::vector<DoorOffered> doors) {
    std::stable_sort(doors.begin(), doors.end(),
                     [](const DoorOffered& one, const DoorOffered& other) {
                         return std::pair(one.deck_row, one.x) < std::pair(other.deck_row, other.x);
                     });
    std::vector<DeckRow> rows;
    for (DoorOffered& door : doors) {
        if (rows.empty() || rows.back().front().deck_row != door.deck_row)
            rows.emplace_back();
        rows.back().push_back(std::move(door));
    }
    return rows;
}

int keyLinesOf(const std::vector<DeckRow>& rows, int columns) {
    int lines = 0;
    for (const DeckRow& row : rows)
        lines += (int(row.size()) + columns - 1) / columns;
    return lines;
}

} // namespace

DoorPicker::DoorPicker(std::vector<DoorOffered> nearest_first, const QSize& room,
                       const Appearance& look, QWidget* parent)
    : Part(parent) {
    const Sizes& s = look.sizes;
    const QFontMetrics numbers(textFont(TextSize::Lead, s, true));
    const QFontMetrics names(textFont(TextSize::Body, s));
    int number_width = 0;
    int name_width = 0;
    for (const DoorOffered& door : nearest_first) {
        number_width = std::max(number_width, numbers.horizontalAdvance(door.number));
        name_width = std::max(name_width, names.horizontalAdvance(tr("deck %1").arg(door.deck)));
    }
    const int key_width = number_width + int((glyph_mm * glyph_share + 6) * s.px_per_mm);
    const int columns = std::max(1, (room.width() - name_width - s.gap) / (key_width + s.gap));
    const int most_lines = std::max(1, (room.height() + s.gap) / (s.target + s.gap));
    std::vector<DeckRow> rows = byDeck(nearest_first);
    while (nearest_first.size() > 1 && keyLinesOf(rows, columns) > most_lines) {
        nearest_first.pop_back();
        rows = byDeck(nearest_first);
    }
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setSpacing(s.gap);
    int line = 0;
    for (const DeckRow& row : rows) {
        auto* name = new Label(tr("deck %1").arg(row.front().deck), TextSize::Body, Ink::Muted);
        name->setWordWrap(false);
        grid->addWidget(name, line, 0);
        for (std::size_t i = 0; i < row.size(); ++i) {
            if (i > 0 && i % std::size_t(columns) == 0)
                ++line;
            auto* key = new DoorKey(row[i]);
            key->setFixedSize(key_width, s.target);
            grid->addWidget(key, line, 1 + int(i % std::size_t(columns)));
            connect(key, &QPushButton::clicked, this,
                    [this, number = row[i].number] { emit doorChosen(number); });
            if (row[i].number == nearest_first.front().number)
                setFocusProxy(key); // where the finger was
        }
        ++line;
    }
    grid->setColumnStretch(columns + 1, 1);
    setFocusPolicy(Qt::StrongFocus);
}

} // namespace latchround::ui

#include "moc_door_picker.cpp"
