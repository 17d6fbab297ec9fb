#include "ui/screens/rules/rule_page.h"

#include <QPushButton>
#include <QScrollBar>
#include <QVBoxLayout>

#include "ui/frames/reading_pane.h"
#include "ui/keys/key_grid.h"
#include "ui/look/label.h"
#include "ui/look/touch_style.h"

namespace latchround::ui {

RulePage::RulePage(QWidget* parent)
    : Card(parent)
    , m_title(new Label({}, TextSize::Heading, Ink::Plain, true))
    , m_words(new ReadingPane(tr("The requirement in full")))
    , m_keys(new KeyGrid)
    , m_list(keyOf(tr("‹ List"), "part-list"))
    , m_print(keyOf(tr("Print ›"), "rules-print")) {
    setObjectName(QStringLiteral("rule-page"));
    m_title->setObjectName(QStringLiteral("rule-title"));
    m_words->setObjectName(QStringLiteral("rule-words"));
    auto* lines = new QVBoxLayout(this);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->addWidget(m_title);
    lines->addWidget(m_words, 1);
    lines->addWidget(m_keys);
    m_keys->add(m_list);
    m_keys->add(m_print);
    setFocusProxy(m_words);
    m_print->setAccessibleName(tr("Print the rule book"));
    connect(m_list, &QPushButton::clicked, this, &RulePage::listAsked);
    connect(m_print, &QPushButton::clicked, this, &RulePage::printAsked);
    RulePage::lookChanged();
}

void RulePage::say(const RulePart& part) {
    if (!part.heading.isEmpty()) {
        m_words->add(part.heading, TextSize::Body, Ink::Plain, true);
        m_paragraphs << part.heading;
    }
    for (const RuleLine& line : part.lines) {
        auto* both = new QWidget;
        auto* lines = new QVBoxLayout(both);
        lines->setContentsMargins(0, 0, 0, 0);
        lines->setSpacing(0);
        lines->addWidget(new Label(line.name, TextSize::Small, Ink::Muted));
        lines->addWidget(new Label(line.words, TextSize::Body, Ink::Plain));
        m_words->add(both);
        m_paragraphs << line.name + QStringLiteral(": ") + line.words;
    }
}

void RulePage::show(const QString& title, const std::vector<RulePart>& parts) {
    m_title->setText(title);
    m_parts = parts;
    fill();
    m_words->verticalScrollBar()->setValue(0);
}

/// Where there is little height the title moves with the words.
void RulePage::fill() {
    m_title->setVisible(!m_alone);
    m_words->clear();
    m_paragraphs.clear();
    if (m_alone)
        m_words->add(m_title->text(), TextSize::Lead, Ink::Plain, true);
    for (const RulePart& part : m_parts)
        say(part);
    m_words->setAccessibleDescription(m_paragraphs.join(QStringLiteral(". ")));
}

void RulePage::setAlone(bool alone) {
    m_list->setVisible(alone);
    m_keys->arrange();
    if (alone == m_alone)
        return;
    m_alone = alone;
    fill();
}

void RulePage::setPrintable(bool printable) {
    m_print->setVisible(printable);
    m_keys->arrange();
}

void RulePage::lookChanged() {
    Card::lookChanged();
    layout()->setSpacing(sizes().gap);
}

} // namespace latchround::ui

#include "moc_rule_page.cpp"
