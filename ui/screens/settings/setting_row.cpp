#include "ui/screens/settings/setting_row.h"

#include <QBoxLayout>
#include <QPainter>
#include <QPushButton>

#include "ui/look/label.h"
#include "ui/look/touch_style.h"

namespace latchround::ui {

SettingRow::SettingRow(const QString& title, const QString& help,
                       const std::vector<SettingKey>& keys, Keys kind, QWidget* parent)
    : Part(parent)
    , m_sides(new QBoxLayout(QBoxLayout::LeftToRight, this))
    , m_key_line(new QBoxLayout(QBoxLayout::LeftToRight)) {
    auto* words = new QVBoxLayout;
    words->setSpacing(2);
    words->addStretch(1);
    words->addWidget(new Label(title, TextSize::Lead, Ink::Plain, true));
    words->addWidget(new Label(help, TextSize::Small, Ink::Muted));
    words->addStretch(1);
    m_sides->addLayout(words, 5);
    m_sides->addLayout(m_key_line, 6);
    for (const SettingKey& each : keys) {
        auto* key = new QPushButton(each.words);
        key->setObjectName(QString::fromLatin1(each.name));
        key->setAccessibleName(title + QStringLiteral(": ") + each.words);
        key->setCheckable(kind == Keys::Choices);
        setRole(*key, kind == Keys::Choices ? "choice" : "plain");
        key->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
        const int index = int(m_keys.size());
        connect(key, &QPushButton::clicked, this, [this, index] {
            setChosen(m_chosen); // pressing the chosen one again does not clear it
            emit pressed(index);
        });
        m_key_line->addWidget(key, 1);
        m_keys.push_back(key);
    }
    setAccessibleName(title);
    setAccessibleDescription(help);
    lookChanged();
}

void SettingRow::setChosen(int index) {
    m_chosen = index;
    for (std::size_t i = 0; i < m_keys.size(); ++i)
        if (m_keys[i]->isCheckable())
            m_keys[i]->setChecked(int(i) == index);
}

/// The keys beside the words where both have room, else below them, and below each other on the
/// narrowest.
void SettingRow::arrange() {
    const bool wide = width() > mm(150);
    m_sides->setDirection(wide ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
    double widest = 0;
    for (const QPushButton* key : m_keys)
        widest = std::max<double>(widest, key->fontMetrics().horizontalAdvance(key->text()));
    const double needed = double(m_keys.size()) * (widest + mm(8));
    m_key_line->setDirection(!wide && needed > width() - 2 * sizes().pad ? QBoxLayout::TopToBottom
                                                                         : QBoxLayout::LeftToRight);
}

void SettingRow::lookChanged() {
    const Sizes& s = sizes();
    m_sides->setContentsMargins(s.pad, s.gap, s.pad, s.gap);
    m_sides->setSpacing(s.gap);
    m_key_line->setSpacing(s.gap);
    for (QPushButton* key : m_keys)
        key->setMinimumHeight(s.target);
    arrange();
    Part::lookChanged();
}

void SettingRow::resizeEvent(QResizeEvent* event) {
    Part::resizeEvent(event);
    arrange();
}

void SettingRow::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setPen(QPen(colours().hairline, 1));
    painter.drawLine(QPointF(0, height() - 0.5), QPointF(width(), height() - 0.5));
}

} // namespace latchround::ui

#include "moc_setting_row.cpp"
