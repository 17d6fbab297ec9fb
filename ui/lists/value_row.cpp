#include "ui/lists/value_row.h"

#include <QKeyEvent>
#include <QPainter>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/keys/help_key.h"
#include "ui/look/english_label.h"
#include "ui/look/touch_style.h"

namespace latchround::ui {

ValueRow::ValueRow(const QString& words, const QString& key, QWidget* parent)
    : Part(parent)
    , m_line(new QBoxLayout(QBoxLayout::LeftToRight, this))
    , m_lines(new QVBoxLayout)
    , m_words(new Label(words, TextSize::Lead))
    , m_english(new EnglishLabel)
    , m_detail(new Label({}, TextSize::Small, Ink::Muted))
    , m_key(new QPushButton(key)) {
    m_lines->setSpacing(2);
    m_lines->addStretch(1);
    m_lines->addWidget(m_words);
    m_lines->addWidget(m_english);
    m_lines->addWidget(m_detail);
    m_lines->addStretch(1);
    m_line->addLayout(m_lines, 1);
    m_line->addWidget(m_key, 0, Qt::AlignVCenter);
    m_detail->hide();
    setRole(*m_key, "plain");
    m_key->setAccessibleName(key + QStringLiteral(": ") + words);
    connect(m_key, &QPushButton::clicked, this, &ValueRow::asked);
    setAccessibleName(words);
    lookChanged();
}

void ValueRow::offerHelp() {
    if (m_help)
        return;
    m_help = new HelpKey(*m_line, *m_lines, m_words->text());
    connect(m_help, &HelpKey::clicked, this, &ValueRow::helpAsked);
    lookChanged();
}

void ValueRow::keyPressEvent(QKeyEvent* event) {
    if (m_help && event->key() == Qt::Key_F1)
        emit helpAsked();
    else
        Part::keyPressEvent(event);
}

void ValueRow::setDetail(const QString& detail) {
    m_detail->setText(detail);
    m_detail->setVisible(!detail.isEmpty());
    setAccessibleDescription(detail);
}

void ValueRow::setKey(const QString& key) {
    m_key->setText(key);
    m_key->setAccessibleName(key + QStringLiteral(": ") + m_words->text());
}

void ValueRow::setEnglish(const QString& english) {
    m_english->setEnglish(english);
    placeKey();
}

void ValueRow::placeKey() {
    constexpr double narrow_mm = 90;
    const bool below = !m_english->text().isEmpty() && width() < mm(narrow_mm);
    m_line->setDirection(below ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    m_line->setAlignment(m_key, below ? Qt::AlignRight : Qt::AlignVCenter);
}

void ValueRow::resizeEvent(QResizeEvent* event) {
    Part::resizeEvent(event);
    placeKey();
}

QString ValueRow::detail() const {
    return m_detail->text();
}

void ValueRow::changeEvent(QEvent* event) {
    Part::changeEvent(event);
    if (event->type() == QEvent::ParentChange) // a row is made before it comes into its window
        lookChanged();
}

void ValueRow::lookChanged() {
    if (m_help)
        m_help->dress();
    const Sizes& s = sizes();
    m_line->setContentsMargins(m_help ? s.gap : s.pad, s.gap, s.pad, s.gap);
    m_line->setSpacing(s.gap);
    m_key->setMinimumSize(s.main_target + s.target / 2, s.target);
    placeKey();
    Part::lookChanged();
}

void ValueRow::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setPen(QPen(colours().hairline, 1));
    painter.drawLine(QPointF(0, height() - 0.5), QPointF(width(), height() - 0.5));
}

} // namespace latchround::ui

#include "moc_value_row.cpp"
