#include "ui/parts/keypad.h"

#include <QGridLayout>
#include <QKeyEvent>
#include <QLocale>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/look/touch_style.h"
#include "ui/parts/figure_label.h"
#include "ui/parts/lettering.h"
#include "ui/parts/units.h"

namespace latchround::ui {
namespace {

constexpr int most_digits = 7;

} // namespace

Keypad::Keypad(QWidget* parent)
    : Part(parent)
    , m_title(new Lettering({}, TextSize::Lead, Ink::Muted, false, this))
    , m_figure(new FigureLabel(TextSize::Display, {}, this))
    , m_grid(new QGridLayout) {
    setFocusPolicy(Qt::StrongFocus);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(m_title);
    layout->addWidget(m_figure);
    layout->addLayout(m_grid, 1);
    m_figure->setRoomFor(QStringLiteral("00000.00"));
    for (int n = 1; n <= 9; ++n) {
        const QString word = QString::number(n);
        QPushButton* key = addKey(word, word, 2 - (n - 1) / 3, (n - 1) % 3);
        connect(key, &QPushButton::clicked, this, [this, word] { digit(word[0]); });
    }
    QPushButton* zero = addKey(QStringLiteral("0"), QStringLiteral("0"), 3, 0, 1, 2);
    connect(zero, &QPushButton::clicked, this, [this] { digit(QLatin1Char('0')); });
    m_point = addKey(QLocale().decimalPoint(), tr("Decimal point"), 3, 2);
    connect(m_point, &QPushButton::clicked, this, &Keypad::point);
    QPushButton* back_key = addKey(tr("Back"), tr("Delete the last digit"), 0, 3);
    connect(back_key, &QPushButton::clicked, this, &Keypad::back);
    QPushButton* clear_key = addKey(tr("Clear"), tr("Clear the figure"), 1, 3);
    connect(clear_key, &QPushButton::clicked, this, &Keypad::clear);
    m_enter = addKey(tr("Enter"), tr("Enter the figure"), 2, 3, 2);
    setRole(*m_enter, "primary");
    connect(m_enter, &QPushButton::clicked, this, &Keypad::enter);
    clear();
    lookChanged();
}

QPushButton* Keypad::addKey(const QString& word, const QString& spoken, int row, int column,
                            int rows, int columns) {
    auto* key = new QPushButton(word, this);
    setRole(*key, "choice");
    key->setAccessibleName(spoken);
    key->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    key->setFocusPolicy(Qt::TabFocus); // a tap leaves the keyboard with the pad
    m_grid->addWidget(key, row, column, rows, columns);
    return key;
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

void Keypad::lookChanged() {
    const Sizes& s = sizes();
    layout()->setContentsMargins(s.pad, s.pad, s.pad, s.pad);
    layout()->setSpacing(s.gap);
    m_grid->setSpacing(s.gap);
    for (QPushButton* key : findChildren<QPushButton*>()) {
        key->setFont(font(TextSize::Title, key->text().size() == 1));
        key->setMinimumSize(int(mm(s.gloves ? 15 : 14)), s.target);
    }
    Part::lookChanged();
}

void Keypad::paintEvent(QPaintEvent*) {
    paintPanel();
}

} // namespace latchround::ui
