#include "ui/keys/keypad.h"

#include <QGridLayout>
#include <QKeyEvent>
#include <QLocale>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/figures/figure_label.h"
#include "ui/look/label.h"
#include "ui/look/low_window.h"
#include "ui/look/touch_style.h"
#include "ui/words/units.h"

namespace latchround::ui {
namespace {

constexpr int most_digits = 7;

} // namespace

Keypad::Keypad(QWidget* parent)
    : Part(parent)
    , m_title(new Label({}, TextSize::Lead, Ink::Muted, false, this))
    , m_figure(new FigureLabel(TextSize::Display, {}, this))
    , m_grid(new QGridLayout) {
    setLayoutDirection(Qt::LeftToRight); // 1 2 3 as on every pad, whichever side words begin on
    setFocusPolicy(Qt::StrongFocus);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(m_title);
    layout->addLayout(m_grid, 1);
    m_figure->setRoomFor(QStringLiteral("00000.00"));
    for (int n = 1; n <= 9; ++n) {
        const QString word = QString::number(n);
        QPushButton* key =
            addKey(word, word, {3 - (n - 1) / 3, (n - 1) % 3}, {1 + (n - 1) / 5, (n - 1) % 5});
        connect(key, &QPushButton::clicked, this, [this, word] { digit(word[0]); });
    }
    QPushButton* zero = addKey(QStringLiteral("0"), QStringLiteral("0"), {4, 0, 1, 2}, {2, 4});
    connect(zero, &QPushButton::clicked, this, [this] { digit(QLatin1Char('0')); });
    m_point = addKey(QLocale().decimalPoint(), tr("Decimal point"), {4, 2}, {1, 5});
    connect(m_point, &QPushButton::clicked, this, &Keypad::point);
    QPushButton* back_key = addKey(tr("Back"), tr("Delete the last digit"), {1, 3}, {0, 3});
    connect(back_key, &QPushButton::clicked, this, &Keypad::back);
    QPushButton* clear_key = addKey(tr("Clear"), tr("Clear the figure"), {2, 3}, {0, 4, 1, 2});
    connect(clear_key, &QPushButton::clicked, this, &Keypad::clear);
    m_enter = addKey(tr("Enter"), tr("Enter the figure"), {3, 3, 2}, {2, 5});
    setRole(*m_enter, "primary");
    connect(m_enter, &QPushButton::clicked, this, &Keypad::enter);
    clear();
    arrange();
}

QPushButton* Keypad::addKey(const QString& word, const QString& spoken, Place high, Place low) {
    auto* key = new QPushButton(word, this);
    setRole(*key, "choice");
    key->setAccessibleName(spoken);
    key->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    key->setFocusPolicy(Qt::TabFocus); // a tap leaves the keyboard with the pad
    m_keys.push_back({key, high, low});
    return key;
}

bool Keypad::isLow() const {
    constexpr double wide_mm = 80;
    return window() != this && isLowWindow(*window()) && width() > mm(wide_mm);
}

void Keypad::arrange() {
    const bool low = isLow();
    if (int(low) == m_low)
        return;
    m_low = int(low);
    const Place figure = low ? Place{0, 0, 1, 3} : Place{0, 0, 1, 4};
    m_grid->addWidget(m_figure, figure.row, figure.column, figure.rows, figure.columns);
    for (const Key& each : m_keys) {
        const Place& at = low ? each.low : each.high;
        m_grid->addWidget(each.key, at.row, at.column, at.rows, at.columns);
    }
    for (int column = 0; column < 6; ++column)
        m_grid->setColumnStretch(column, low || column < 4 ? 1 : 0);
    for (int row = 0; row < 5; ++row)
        m_grid->setRowStretch(row, row > 0 && (!low || row < 3) ? 1 : 0);
    lookChanged();
}

void Keypad::resizeEvent(QResizeEvent* event) {
    Part::resizeEvent(event);
    arrange();
    sizeKeys();
}

void Keypad::setTitle(const QString& title) {
    m_title->setText(title);
    setAccessibleName(title);
}

void Keypad::setUnit(const QString& unit) {
    m_unit = unit;
    m_figure->setUnit(unit);
    display(m_text);
}

void Keypad::setDecimals(int decimals) {
    m_decimals = decimals;
    m_point->setEnabled(decimals > 0);
    clear();
}

std::optional<double> Keypad::value() const {
    bool good = false;
    const double value = m_text.toDouble(&good); // always with a point: QString's own rule
    return good ? std::optional(value) : std::nullopt;
}

void Keypad::digit(QChar digit) {
    const auto point_at = m_text.indexOf(QLatin1Char('.'));
    if (point_at >= 0 && m_text.size() - point_at - 1 >= m_decimals)
        return;
    if (m_text.size() - (point_at >= 0 ? 1 : 0) >= most_digits)
        return;
    display(m_text == QLatin1String("0") ? QString(digit) : m_text + digit);
}

void Keypad::point() {
    if (m_decimals == 0 || m_text.contains(QLatin1Char('.')))
        return;
    display(m_text.isEmpty() ? QStringLiteral("0.") : m_text + QLatin1Char('.'));
}

void Keypad::back() {
    display(m_text.left(m_text.size() - 1));
}

void Keypad::clear() {
    display({});
}

void Keypad::enter() {
    if (const auto figure = value())
        emit entered(*figure);
}

void Keypad::display(const QString& text) {
    m_text = text;
    QString shown = text.isEmpty() ? QStringLiteral("–") : text;
    shown.replace(QLatin1Char('.'), QLocale().decimalPoint());
    m_figure->setFigure(shown);
    // Asked for and recorded in the unit of the text, so that what was typed is what stands beside
    // the limit; the other unit beside it shows at once who read the wrong scale of the tape.
    const QString also =
        value() ? alsoWords(*value(), m_unit.toStdString(), m_decimals) : QString();
    m_figure->setUnit(also.isEmpty() ? m_unit : QStringLiteral("%1 = %2").arg(m_unit, also));
    setAccessibleDescription(text.isEmpty() ? tr("nothing entered")
                             : also.isEmpty()
                                 ? shown + ' ' + m_unit
                                 : shown + ' ' + m_unit + QStringLiteral(" = ") + also);
    m_enter->setEnabled(value().has_value());
}

void Keypad::keyPressEvent(QKeyEvent* event) {
    const QString typed = event->text();
    switch (event->key()) {
    case Qt::Key_Backspace:
        back();
        return;
    case Qt::Key_Delete:
        clear();
        return;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        enter();
        return;
    default:
        break;
    }
    if (typed == QLatin1String(".") || typed == QLatin1String(",") ||
        typed == QLocale().decimalPoint())
        point();
    else if (typed.size() == 1 && typed[0].isDigit()) // of any script
        digit(QChar(QLatin1Char(char('0' + typed[0].digitValue()))));
    else
        Part::keyPressEvent(event);
}

void Keypad::sizeKeys() {
    constexpr double narrow_mm = 75;
    constexpr double least_mm = 12;
    const Sizes& s = sizes();
    const bool tight = m_low == 1 || width() < mm(narrow_mm);
    const int wide = int(mm(tight ? least_mm : s.gloves ? 15 : 14));
    for (const Key& each : m_keys) {
        const bool figure = each.key->text().size() == 1;
        each.key->setFont(font(tight && !figure ? TextSize::Body : TextSize::Title, figure));
        each.key->setMinimumSize(wide, s.target);
    }
}

void Keypad::lookChanged() {
    const Sizes& s = sizes();
    const int pad = m_low == 1 ? s.gap : s.pad;
    layout()->setContentsMargins(pad, pad, pad, pad);
    layout()->setSpacing(s.gap);
    m_grid->setSpacing(s.gap);
    sizeKeys();
    Part::lookChanged();
}

void Keypad::paintEvent(QPaintEvent*) {
    paintPanel();
}

QWidget* padAbove(Keypad* pad, QWidget* below) {
    auto* both = new QWidget;
    both->setFocusPolicy(Qt::StrongFocus);
    both->setFocusProxy(pad);
    auto* lines = new QVBoxLayout(both);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->addWidget(pad);
    lines->addWidget(below);
    return both;
}

} // namespace latchround::ui

#include "moc_keypad.cpp"
