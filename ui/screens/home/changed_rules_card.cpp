#include "ui/screens/home/changed_rules_card.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

#include "core/grading/changed_verdicts.h"
#include "ui/look/label.h"
#include "ui/look/touch_style.h"
#include "ui/ports/former_rules.h"
#include "ui/words/changed_words.h"
#include "ui/words/door_words.h"

namespace latchround::ui {

ChangedRulesCard::ChangedRulesCard(VesselSession& session, QWidget* parent)
    : Card(parent)
    , m_session(session)
    , m_line(new QHBoxLayout(this))
    , m_words(new Label({}, TextSize::Lead))
    , m_detail(new Label({}, TextSize::Small, Ink::Muted))
    , m_look(keyOf(tr("Show ›"), "changed-rules-look")) {
    setObjectName(QStringLiteral("changed-rules"));
    m_words->setObjectName(QStringLiteral("changed-rules-count"));
    auto* lines = new QVBoxLayout;
    lines->addWidget(m_words);
    lines->addWidget(m_detail);
    m_line->setContentsMargins(0, 0, 0, 0);
    m_line->addLayout(lines, 1);
    m_line->addWidget(m_look, 0, Qt::AlignVCenter);
    connect(m_look, &QPushButton::clicked, this, &ChangedRulesCard::asked);
    ChangedRulesCard::lookChanged();
}

void ChangedRulesCard::refresh() {
    const FormerRules* rules = m_session.ports().former_rules;
    const Catalogue* former = rules ? rules->former() : nullptr;
    const bool is_unreadable = rules && rules->unreadable();
    const int doors = former ? int(changedVerdicts(m_session.arrangement(), m_session.ledger(),
                                                   *former, m_session.catalogue())
                                       .size())
                             : 0;
    m_needed = doors > 0 || is_unreadable;
    if (is_unreadable)
        m_words->setText(tr("The rules have changed since the doors were last shown"));
    else if (doors > 0)
        m_words->setText(
            tr("%1 graded differently since the rules changed").arg(doorCountWords(doors)));
    m_look->setAccessibleName(m_look->text() + QStringLiteral(": ") + m_words->text());
    m_detail->setText(former ? rulesChangeWords(*former, m_session.catalogue()) : QString());
    setBrief(m_brief);
}

void ChangedRulesCard::setBrief(bool brief) {
    m_brief = brief;
    giveMargins();
    m_detail->setVisible(!brief && !m_detail->text().isEmpty());
}

void ChangedRulesCard::giveMargins() {
    const Sizes& s = sizes();
    const int above = m_brief ? s.gap / 2 : s.gap;
    setContentsMargins(s.pad, above, s.pad, above);
}

void ChangedRulesCard::lookChanged() {
    Card::lookChanged();
    const Sizes& s = sizes();
    giveMargins();
    m_line->setSpacing(s.gap);
    m_look->setMinimumSize(s.main_target + s.target / 2, s.target);
}

} // namespace latchround::ui

#include "moc_changed_rules_card.cpp"
