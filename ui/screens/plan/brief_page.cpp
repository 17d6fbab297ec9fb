#include "ui/screens/plan/brief_page.h"

#include <algorithm>

#include <QPushButton>
#include <QVBoxLayout>

#include "ui/keys/row_pager.h"
#include "ui/lists/value_row.h"
#include "ui/look/english_label.h"
#include "ui/look/touch_style.h"
#include "ui/screens/plan/brief_row.h"
#include "ui/screens/plan/brief_words.h"
#include "ui/screens/plan/plan_sheets.h"
#include "ui/screens/plan/stage_keys.h"
#include "ui/words/offered.h"

namespace latchround::ui {

BriefPage::BriefPage(VesselSession& session, PlanDraft& draft, QWidget* parent)
    : Part(parent)
    , m_session(session)
    , m_draft(draft)
    , m_sheets(new PlanSheets(session, draft, this))
    , m_lines(new QVBoxLayout(this))
    , m_sides(new QBoxLayout(QBoxLayout::LeftToRight))
    , m_stages(new StageKeys(QStringLiteral("brief"))) {
    m_lines->setContentsMargins(0, 0, 0, 0);
    m_lines->addLayout(m_sides, 1);
    m_lines->addWidget(m_stages);
    auto* brief = new QWidget; // what is shown and hidden with the page's part on it
    auto* agreed = new QWidget;
    for (const auto& [place, part] :
         {std::pair{brief, makeBrief()}, std::pair{agreed, makeAgreed()}}) {
        auto* line = new QVBoxLayout(place);
        line->setContentsMargins(0, 0, 0, 0);
        line->addWidget(part);
        m_stages->add(part);
        m_sides->addWidget(place);
    }
    connect(m_sheets, &PlanSheets::agreedChosen, this, &BriefPage::showState);
    lookChanged();
}

QWidget* BriefPage::makeBrief() {
    auto* side = new QWidget;
    auto* lines = new QVBoxLayout(side);
    m_columns.push_back(lines);
    m_brief_title =
        new Label(tr("Read out to everyone taking part"), TextSize::Heading, Ink::Plain, true);
    lines->addWidget(m_brief_title);
    m_brief = new RowPager;
    m_brief->setObjectName(QStringLiteral("brief"));
    std::vector<QWidget*> rows;
    const std::vector<BriefPart> parts = briefParts();
    for (std::size_t i = 0; i < parts.size(); ++i) {
        auto* row = new BriefRow(parts[i]);
        row->key()->setObjectName(QStringLiteral("read-out-%1").arg(i));
        connect(row, &BriefRow::readOut, this, [this, i](bool read) {
            if (read)
                m_draft.read_out.insert(int(i));
            else
                m_draft.read_out.erase(int(i));
            showState();
        });
        m_brief_rows.push_back(row);
        rows.push_back(row);
        if (!parts[i].english.isEmpty())
            rows.push_back(new BelowBriefRow(new EnglishLabel(parts[i].english)));
    }
    auto* source = new Label(
        tr("Common practice, no published source. Source for the deaths: accident reports of P&I "
           "clubs and flag States."),
        TextSize::Small, Ink::Muted);
    // Two texts of each part need the room below them.
    const bool in_rows =
        std::ranges::any_of(parts, [](const BriefPart& part) { return !part.english.isEmpty(); });
    if (in_rows)
        rows.push_back(new BelowBriefRow(source));
    for (QWidget* row : rows)
        if (qobject_cast<BelowBriefRow*>(row))
            RowPager::makeFollow(*row);
    m_brief->setRows(std::move(rows));
    lines->addWidget(m_brief, 1);
    if (!in_rows)
        lines->addWidget(source);
    return side;
}

QWidget* BriefPage::makeAgreed() {
    auto* side = new QWidget;
    auto* lines = new QVBoxLayout(side);
    m_columns.push_back(lines);
    m_agreed_title =
        new Label(tr("Agreed with the control station"), TextSize::Heading, Ink::Plain, true);
    lines->addWidget(m_agreed_title);
    m_agreed = new RowPager;
    m_agreed->setObjectName(QStringLiteral("agreed"));
    std::vector<QWidget*> rows;
    for (int i = 0; i < agreed_count; ++i) {
        auto* row = new ValueRow(agreedTitle(Agreed(i)), {});
        row->setDetail(agreedHelp(Agreed(i)));
        row->key()->setObjectName(QStringLiteral("agreed-%1").arg(i));
        connect(row, &ValueRow::asked, m_sheets, [this, i] { m_sheets->agree(Agreed(i)); });
        m_agreed_rows.push_back(row);
        rows.push_back(row);
    }
    m_agreed->setRows(std::move(rows));
    lines->addWidget(m_agreed, 1);
    m_state = new Label({}, TextSize::Body, Ink::Again);
    m_state->setObjectName(QStringLiteral("brief-state"));
    lines->addWidget(m_state);
    m_keys = new QHBoxLayout;
    m_back = new QPushButton(tr("‹ Plan"));
    m_begin = new QPushButton;
    m_back->setObjectName(QStringLiteral("to-plan"));
    m_begin->setObjectName(QStringLiteral("begin"));
    setRole(*m_back, "plain", true);
    setRole(*m_begin, "primary", true);
    m_keys->addWidget(m_back, 2);
    m_keys->addWidget(m_begin, 3);
    for (QPushButton* key : {m_back, m_begin})
        key->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
    lines->addLayout(m_keys);
    m_stages->setEnd(m_begin, m_keys, 3);
    m_stages->setBeforeFirst(m_back->text());
    connect(m_stages, &StageKeys::beforeFirst, this, &BriefPage::planAsked);
    connect(m_back, &QPushButton::clicked, this, &BriefPage::planAsked);
    connect(m_begin, &QPushButton::clicked, this, &BriefPage::beginAsked);
    return side;
}

void BriefPage::refresh() {
    for (std::size_t i = 0; i < m_brief_rows.size(); ++i)
        m_brief_rows[i]->key()->setChecked(m_draft.read_out.contains(int(i)));
    showState();
}

QString BriefPage::whatIsMissing() const {
    if (m_session.personName().isEmpty() &&
        std::ranges::find(m_draft.joined, m_session.person(), &Person::id) == m_draft.joined.end())
        return tr("In the plan, choose who is recording.");
    for (int i = 0; i < agreed_count; ++i)
        if (m_draft.agreed[std::size_t(i)].empty())
            return tr("Not yet agreed: %1.").arg(agreedTitle(Agreed(i)).toLower());
    const std::size_t read = m_draft.read_out.size();
    if (read < m_brief_rows.size())
        return tr("%1 of %2 parts of the brief read.").arg(read).arg(m_brief_rows.size());
    return {};
}

void BriefPage::showState() {
    for (int i = 0; i < agreed_count; ++i) {
        const Wording& agreed = m_draft.agreed[std::size_t(i)];
        ValueRow& row = *m_agreed_rows[std::size_t(i)];
        row.setKey(agreed.empty() ? tr("choose") : wordingWords(agreed));
        setEnglish(*row.key(), agreedEnglish(Agreed(i), agreed));
    }
    const bool waiting = !m_waiting.isEmpty();
    const QString missing = whatIsMissing();
    m_state->setText(waiting ? tr("Not saved yet. %1").arg(m_waiting) : missing);
    m_state->setInk(waiting ? Ink::Bad : Ink::Again);
    m_state->setVisible(!m_state->text().isEmpty());
    m_begin->setText(waiting ? tr("Save again ›") : tr("Begin ›"));
    m_begin->setEnabled(waiting || missing.isEmpty());
    m_back->setEnabled(!waiting);
    m_brief->setEnabled(!waiting);
    m_agreed->setEnabled(!waiting);
}

void BriefPage::setWaiting(const QString& why) {
    m_waiting = why;
    showState();
}

QPushButton* BriefPage::firstKey() const {
    return m_brief_rows.front()->key();
}

void BriefPage::arrange(bool upright, bool small) {
    m_sides->setDirection(upright ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    m_sides->setStretch(0, upright ? 12 : 4);
    m_sides->setStretch(1, upright ? 11 : 3);
    m_roomy = !upright && !small; // else the rows need it
    for (Label* title : {m_brief_title, m_agreed_title})
        title->setVisible(!small); // the bar says it
    m_stages->setOneAtATime(small);
    m_back->setVisible(!small);
    sizeKeys();
}

void BriefPage::begin() {
    m_stages->begin();
}

void BriefPage::sizeKeys() {
    for (QPushButton* key : {m_back, m_begin})
        key->setFixedHeight(m_roomy ? sizes().main_target : sizes().target);
}

void BriefPage::lookChanged() {
    sizeKeys();
    m_keys->setSpacing(sizes().gap);
    m_sides->setSpacing(sizes().main_gap);
    m_lines->setSpacing(sizes().gap);
    for (QVBoxLayout* column : m_columns) {
        column->setContentsMargins(0, 0, 0, 0);
        column->setSpacing(sizes().gap);
    }
    Part::lookChanged();
}

} // namespace latchround::ui

#include "moc_brief_page.cpp"
