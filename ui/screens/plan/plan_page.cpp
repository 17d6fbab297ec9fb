#include "ui/screens/plan/plan_page.h"

#include <algorithm>

#include <QLocale>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/frames/card.h"
#include "ui/keys/choice_keys.h"
#include "ui/lists/value_row.h"
#include "ui/look/label.h"
#include "ui/look/touch_style.h"
#include "ui/screens/plan/plan_sheets.h"
#include "ui/screens/plan/stage_keys.h"
#include "ui/ship/zone_profile.h"
#include "ui/words/claim_words.h"
#include "ui/words/door_words.h"
#include "ui/words/offered.h"
#include "ui/words/units.h"

namespace latchround::ui {

namespace {

/// Keys of the scope, in their order on the page.
enum ScopeKey { AllDoorsKey, ZoneBulkheadsKey, OneDeckKey, OneZoneKey, FailedKey, RetestKey };

constexpr int purposes_at_once = 5;
constexpr int people_at_once = 5;
constexpr int people_at_once_small = 2;
constexpr std::uint32_t largest_seed = 0xFFFF; // short enough to be read out

Label* titleOf(const QString& words) {
    return new Label(words, TextSize::Lead, Ink::Plain, true);
}

QString metres(double length_m) {
    return lengthWords(length_m, 0);
}

/// How many doors, how far, and how much less than by their numbers.
QString sumWords(const PlanDraft& draft) {
    const WalkRoute& route = draft.route;
    const QString words =
        PlanPage::tr("%1: %2, %3 on foot. First: %4.")
            .arg(scopeWords(draft), doorCountWords(int(route.doors.size())), metres(route.length_m),
                 QString::fromStdString(route.doors.front()));
    const double saved = route.by_number_m - route.length_m;
    return saved < 1 ? words
                     : words + PlanPage::tr(" %1 shorter than in number order.").arg(metres(saved));
}

QString sampleWords(const SampleDrawn& sample, int drawn) {
    return PlanPage::tr("if none of the %1 fails: %2 confidence that %3")
        .arg(drawn)
        .arg(confidenceWords(sample.confidence_ppm), claimedWords(sample.of_doors, sample.at_most));
}

QString withCount(const QString& words, std::size_t doors) {
    return words + QLatin1Char('\n') + doorCountWords(int(doors));
}

} // namespace

PlanPage::PlanPage(VesselSession& session, PlanDraft& draft, QWidget* parent)
    : Part(parent)
    , m_session(session)
    , m_draft(draft)
    , m_sheets(new PlanSheets(session, draft, this))
    , m_lines(new QVBoxLayout(this))
    , m_sides(new QBoxLayout(QBoxLayout::LeftToRight))
    , m_stages(new StageKeys(QStringLiteral("plan"))) {
    m_lines->setContentsMargins(0, 0, 0, 0);
    m_lines->addLayout(m_sides, 1);
    m_lines->addWidget(m_stages);
    m_sides->addWidget(makeWho(), 1);
    m_sides->addWidget(makeDoors(), 1);
    connect(m_sheets, &PlanSheets::peopleChanged, this, &PlanPage::refresh);
    connect(m_sheets, &PlanSheets::whichChosen, this,
            [this](ScopeKind kind, const QString& which) { setScope(kind, which.toStdString()); });
    connect(m_sheets, &PlanSheets::heelChosen, this, &PlanPage::refresh);
    lookChanged();
}

/// What stays together when the parts come one at a time.
QWidget* PlanPage::partOf(std::initializer_list<QWidget*> parts) {
    auto* together = new QWidget;
    auto* lines = new QVBoxLayout(together);
    m_columns.push_back(lines);
    for (QWidget* part : parts)
        lines->addWidget(part);
    m_stages->add(together);
    return together;
}

QWidget* PlanPage::makeWho() {
    auto* card = new Card;
    auto* lines = new QVBoxLayout(card);
    m_columns.push_back(lines);
    m_purpose = new ChoiceKeys("purpose", ChoiceKeys::Many::One, purposes_at_once);
    m_recorder = new ChoiceKeys("person", ChoiceKeys::Many::One, people_at_once);
    m_team = new ChoiceKeys("team", ChoiceKeys::Many::Several, people_at_once);
    m_recorder->setAccessibleName(tr("Recorded by"));
    m_team->setAccessibleName(tr("Accompanied by"));
    m_team_title = titleOf(tr("Accompanied by"));
    auto* add = new QPushButton(tr("Add a person"));
    add->setObjectName(QStringLiteral("add-person"));
    setRole(*add, "plain");
    lines->addWidget(partOf({titleOf(tr("Purpose")), m_purpose}));
    lines->addWidget(partOf({titleOf(tr("Recorded by")), m_recorder, add}));
    lines->addWidget(partOf({m_team_title, m_team}));
    lines->addStretch(1);
    connect(m_purpose, &ChoiceKeys::touched, this,
            [this](int index, bool) { m_draft.purpose = Purpose(index); });
    connect(m_recorder, &ChoiceKeys::touched, this, [this](int index, bool) {
        const FactId person = m_people[std::size_t(index)].id;
        m_draft.team.erase(person);
        m_session.setPerson(person);
        showPeople();
        showNext();
    });
    connect(m_team, &ChoiceKeys::touched, this, [this](int index, bool on) {
        const FactId& walker = m_walkers[std::size_t(index)].id;
        if (on)
            m_draft.team.insert(walker);
        else
            m_draft.team.erase(walker);
    });
    connect(add, &QPushButton::clicked, m_sheets, &PlanSheets::addPerson);
    return card;
}

QWidget* PlanPage::makeDoors() {
    auto* card = new Card;
    auto* lines = new QVBoxLayout(card);
    m_columns.push_back(lines);
    m_scope = new ChoiceKeys("scope", ChoiceKeys::Many::One, FailedKey + 1);
    m_heel = new ValueRow(tr("Ship's heel"), {});
    m_heel->key()->setObjectName(QStringLiteral("heel"));
    m_heel->setDetail(tr("over 1 degree, closing times are advice only"));
    m_sample = new ValueRow(tr("How many of these"), {});
    m_sample->key()->setObjectName(QStringLiteral("sample"));
    m_profile = new ZoneProfile;
    m_profile->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Ignored);
    m_profile->setFocusPolicy(Qt::NoFocus); // a picture here
    m_profile->setAttribute(Qt::WA_TransparentForMouseEvents);
    m_sum = new Label({}, TextSize::Body);
    m_sum->setObjectName(QStringLiteral("plan-sum"));
    m_missing = new Label({}, TextSize::Body, Ink::Again);
    m_missing->setObjectName(QStringLiteral("plan-missing"));
    m_next = new QPushButton(tr("Safety brief ›"));
    m_next->setObjectName(QStringLiteral("to-brief"));
    setRole(*m_next, "primary", true);
    lines->addWidget(partOf({titleOf(tr("Which doors")), m_scope}), 0, Qt::AlignTop);
    lines->addWidget(partOf({m_sample, m_heel}), 0, Qt::AlignTop);
    QWidget* end = partOf({m_profile, m_sum, m_missing, m_next});
    auto* end_lines = static_cast<QVBoxLayout*>(end->layout());
    end_lines->setStretch(0, 1);
    m_stages->setEnd(m_next, end_lines, 0);
    lines->addWidget(end, 1);
    connect(m_scope, &ChoiceKeys::touched, this, [this](int index, bool) { chooseScope(index); });
    connect(m_heel, &ValueRow::asked, m_sheets, &PlanSheets::heel);
    connect(m_sample, &ValueRow::asked, m_sheets, &PlanSheets::sample);
    connect(m_sheets, &PlanSheets::everyDoorChosen, this, [this] { setSample({}); });
    connect(m_sheets, &PlanSheets::sampleChosen, this,
            [this](int at_most, int confidence_ppm) { setSample(at_most, confidence_ppm); });
    connect(m_next, &QPushButton::clicked, this, &PlanPage::briefAsked);
    return card;
}

void PlanPage::refresh() {
    QStringList purposes;
    for (const auto& entry : latchround::purposeWords)
        purposes << purposeWords(entry.value);
    m_purpose->setChoices(purposes);
    m_purpose->setChosen({int(m_draft.purpose)});
    showPeople();
    showScope();
    showSample();
    m_heel->setKey(tr("%1°").arg(QLocale().toString(m_session.heel_deg(), 'f', 1)));
    showNext();
}

void PlanPage::showPeople() {
    const auto with_role = [](const Person& person) {
        const QString name = QString::fromStdString(person.name);
        return person.role.empty() ? name : name + QLatin1Char('\n') + wordingWords(person.role);
    };
    m_people = peopleOf(m_session, m_draft);
    // The one chosen stands first, so that it is in sight among many.
    std::stable_partition(m_people.begin(), m_people.end(),
                          [this](const Person& person) { return person.id == m_session.person(); });
    QStringList names;
    QStringList walkers;
    m_walkers.clear();
    std::set<int> walking;
    for (const Person& person : m_people) {
        names << with_role(person);
        if (person.id == m_session.person())
            continue;
        if (m_draft.team.contains(person.id))
            walking.insert(int(m_walkers.size()));
        walkers << with_role(person);
        m_walkers.push_back(person);
    }
    m_recorder->setChoices(names);
    if (!m_people.empty() && m_people.front().id == m_session.person())
        m_recorder->setChosen({0});
    m_team->setChoices(walkers);
    m_team->setChosen(walking);
    m_team_title->setVisible(!walkers.isEmpty());
    m_team->setVisible(!walkers.isEmpty());
}

void PlanPage::showScope() {
    const Arrangement& vessel = m_session.arrangement();
    const auto count = [&vessel](const Scope& scope) { return doorsInScope(vessel, scope).size(); };
    const Scope& chosen = m_draft.scope;
    const QString which = QString::fromStdString(chosen.which);
    const std::size_t failed = failedLastTime(m_session).size();
    const std::size_t rectified = doorsToRetest(m_session.items()).size();
    m_scope->setChoices(
        {withCount(tr("All doors"), count({})),
         withCount(tr("Quarterly set"), count({ScopeKind::ZoneBulkheads, {}, {}})),
         chosen.kind == ScopeKind::OneDeck ? withCount(tr("Deck %1").arg(which), count(chosen))
                                           : tr("One deck…"),
         chosen.kind == ScopeKind::OneZone ? withCount(tr("Zone %1").arg(which), count(chosen))
                                           : tr("One zone…"),
         withCount(tr("Failed last time"), failed), withCount(tr("To retest"), rectified)});
    m_scope->setUsable(OneDeckKey, !vessel.decks.empty());
    m_scope->setUsable(OneZoneKey, !vessel.zones.empty());
    m_scope->setUsable(FailedKey, failed > 0);
    m_scope->setUsable(RetestKey, rectified > 0);
    switch (chosen.kind) {
    case ScopeKind::AllDoors:
        return m_scope->setChosen({AllDoorsKey});
    case ScopeKind::OneDeck:
        return m_scope->setChosen({OneDeckKey});
    case ScopeKind::OneZone:
        return m_scope->setChosen({OneZoneKey});
    case ScopeKind::ZoneBulkheads:
        return m_scope->setChosen({ZoneBulkheadsKey});
    case ScopeKind::Chosen:
        return m_scope->setChosen({FailedKey});
    case ScopeKind::Retest:
        return m_scope->setChosen({RetestKey});
    }
}

void PlanPage::chooseScope(int index) {
    switch (index) {
    case OneDeckKey:
    case OneZoneKey:
        m_sheets->which(index == OneDeckKey ? ScopeKind::OneDeck : ScopeKind::OneZone);
        showScope(); // until a deck or zone is named the scope stays as it was
        return;
    case ZoneBulkheadsKey:
        return setScope(ScopeKind::ZoneBulkheads);
    case FailedKey:
        return setScope(ScopeKind::Chosen);
    case RetestKey:
        return setScope(ScopeKind::Retest);
    default:
        return setScope(ScopeKind::AllDoors);
    }
}

void PlanPage::setScope(ScopeKind kind, const std::string& which) {
    m_draft.scope = scopeOf(m_session, kind, which);
    chooseDoors(m_session, m_draft);
    showScope();
    showSample();
    showNext();
}

void PlanPage::setSample(std::optional<int> at_most, int confidence_ppm) {
    m_draft.sample.reset();
    if (at_most)
        m_draft.sample =
            SampleDrawn{0, *at_most, confidence_ppm, int(m_session.chance() & largest_seed)};
    chooseDoors(m_session, m_draft);
    showSample();
    showNext();
}

void PlanPage::showSample() {
    if (!m_draft.sample) {
        m_sample->setKey(tr("All"));
        m_sample->setDetail(tr("or a random sample, and what it proves"));
        return;
    }
    const SampleDrawn& sample = *m_draft.sample;
    const int drawn = int(m_draft.route.doors.size());
    m_sample->setKey(tr("%1 drawn").arg(drawn));
    m_sample->setDetail(sampleWords(sample, drawn));
}

void PlanPage::showNext() {
    const std::vector<std::string>& doors = m_draft.route.doors;
    m_sum->setText(doors.empty() ? tr("No doors in this scope.") : sumWords(m_draft));
    Arrangement in_scope = m_session.arrangement();
    std::erase_if(in_scope.doors, [&doors](const Door& door) {
        return std::ranges::find(doors, door.number) == doors.end();
    });
    DoorVerdicts last;
    for (const GradedDoor& graded : m_session.doors())
        last[graded.door->number] = graded.grade.verdict;
    m_profile->setArrangement(std::move(in_scope));
    m_profile->setVerdicts(std::move(last));
    const bool somebody =
        std::ranges::find(m_people, m_session.person(), &Person::id) != m_people.end();
    m_missing->setText(somebody ? QString() : tr("First choose who is recording."));
    m_missing->setVisible(!somebody);
    m_next->setEnabled(somebody && !doors.empty());
}

void PlanPage::arrange(bool upright, bool small) {
    m_sides->setDirection(upright ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    m_upright = upright;
    for (ChoiceKeys* keys : {m_recorder, m_team})
        keys->setAtOnce(small ? people_at_once_small : people_at_once);
    setRole(*m_next, "primary", !small);
    m_stages->setOneAtATime(small);
    showProfile();
}

void PlanPage::begin() {
    m_stages->begin();
}

/// A picture that gives way to keys, and stands where the page has nothing else to show.
void PlanPage::showProfile() {
    m_profile->setVisible(m_stages->isOneAtATime() || (!m_upright && !sizes().gloves));
}

void PlanPage::lookChanged() {
    showProfile();
    m_sides->setSpacing(sizes().main_gap);
    m_lines->setSpacing(sizes().gap);
    for (QVBoxLayout* column : m_columns) {
        column->setContentsMargins(0, 0, 0, 0);
        column->setSpacing(sizes().gap);
    }
    Part::lookChanged();
}

} // namespace latchround::ui

#include "moc_plan_page.cpp"
