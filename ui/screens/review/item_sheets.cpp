#include "ui/screens/review/item_sheets.h"

#include <algorithm>

#include <QPushButton>
#include <QVBoxLayout>

#include "core/evidence/moment_text.h"
#include "core/evidence/terms.h"
#include "ui/frames/sheet.h"
#include "ui/keys/choice_keys.h"
#include "ui/keys/day_picker.h"
#include "ui/keys/phrase_picker.h"
#include "ui/lists/value_row.h"
#include "ui/look/label.h"
#include "ui/look/touch_style.h"
#include "ui/sheets/photograph_sheets.h"
#include "ui/words/grade_words.h"
#include "ui/words/item_words.h"
#include "ui/words/offered.h"
#include "ui/words/plain_text.h"

namespace latchround::ui {

namespace {

DeficiencyTerms termsOf(const Item& item) {
    return {item.findings.back().stamp.id};
}

} // namespace

ItemSheets::ItemSheets(VesselSession& session, QWidget* over)
    : QObject(over)
    , m_session(session)
    , m_over(over)
    , m_photographs(new PhotographSheets(session, over)) {}

void ItemSheets::set(const DeficiencyTerms& terms) {
    std::vector<Entry> entries;
    for (DeficiencyTerms& field : fieldByField(terms)) {
        auto before = standingTerms(m_session.ledger(), field);
        entries.push_back({std::move(field), std::move(before)});
    }
    (void)m_session.record(std::move(entries));
}

void ItemSheets::ask(const QString& title, OfferedFor use,
                     std::function<void(const Wording&)> record) {
    auto* sheet = new Sheet(m_over, title);
    auto* picker = new PhrasePicker;
    picker->setPhrases(offeredFor(use));
    connect(picker, &PhrasePicker::picked, sheet,
            [sheet, record = std::move(record)](const QString&, const Wording& words) {
                sheet->close();
                record(words);
            });
    sheet->setContent(picker);
    sheet->open();
}

QStringList ItemSheets::people() const {
    QStringList names;
    for (const Person& person : m_session.ledger().people())
        names << QString::fromStdString(person.name);
    for (const Item& item : m_session.items()) {
        names << QString::fromStdString(item.assigned);
        for (const auto& mended : item.rectifications)
            names << QString::fromStdString(mended.body.by);
    }
    names.removeDuplicates();
    names.removeAll(QString());
    constexpr qsizetype most = 12;
    return names.mid(0, most);
}

void ItemSheets::severity(const Item& item) {
    auto* sheet = new Sheet(m_over, tr("Severity"));
    auto* content = new QWidget;
    auto* lines = new QVBoxLayout(content);
    lines->setContentsMargins(0, 0, 0, 0);
    for (const auto& entry : latchround::severityWords) {
        auto* row = new ValueRow(severityName(entry.value), tr("Choose"));
        row->setDetail(ui::severityWords(entry.value));
        row->key()->setObjectName(QStringLiteral("severity-") + plainText(entry.word));
        row->key()->setAccessibleName(severityName(entry.value));
        connect(row, &ValueRow::asked, sheet,
                [this, sheet, value = entry.value, terms = termsOf(item)]() mutable {
                    sheet->close();
                    terms.severity = value;
                    set(terms);
                });
        lines->addWidget(row);
    }
    sheet->setContent(content);
    sheet->open();
}

void ItemSheets::portState(const Item& item) {
    auto* sheet = new Sheet(m_over, tr("Port State control"));
    auto* content = new QWidget;
    auto* lines = new QVBoxLayout(content);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->addWidget(new Label(
        tr("Action code, as the officer wrote it (published lists; deficiency %1)")
            .arg(QString::fromLatin1(port_state_code.data(), int(port_state_code.size()))),
        TextSize::Body));
    QStringList actions;
    int chosen = -1;
    for (const auto& entry : portActionWords) {
        if (entry.value == item.action)
            chosen = int(actions.size());
        actions << actionWords(entry.value);
    }
    auto* action_keys = new ChoiceKeys("port-action", ChoiceKeys::Many::One, int(actions.size()));
    action_keys->setChoices(actions);
    if (chosen >= 0)
        action_keys->setChosen({chosen});
    lines->addWidget(action_keys);
    lines->addWidget(new Label(
        tr("Ground for detention? Recorded separately: regimes differ in which code shows it."),
        TextSize::Body));
    auto* ground_keys = new ChoiceKeys("port-ground", ChoiceKeys::Many::One, 2);
    ground_keys->setChoices({detentionWords(true), detentionWords(false)});
    if (item.ground_for_detention)
        ground_keys->setChosen({*item.ground_for_detention ? 0 : 1});
    lines->addWidget(ground_keys);
    auto* keep = keyOf(tr("Save"), "port-keep", "primary");
    lines->addWidget(keep);
    auto terms = std::make_shared<DeficiencyTerms>(termsOf(item));
    connect(action_keys, &ChoiceKeys::touched, sheet, [terms](int index, bool) {
        terms->action = portActionWords[std::size_t(index)].value;
    });
    connect(ground_keys, &ChoiceKeys::touched, sheet,
            [terms](int index, bool) { terms->ground_for_detention = index == 0; });
    connect(keep, &QPushButton::clicked, sheet, [this, sheet, terms, due = item.due] {
        sheet->close();
        if (terms->action && !due)
            terms->due = dueBy(*terms->action, shipsDay(m_session.clock().now()));
        if (terms->action || terms->ground_for_detention)
            set(*terms);
    });
    sheet->setContent(content);
    sheet->setWidthMm(180);
    sheet->open();
}

void ItemSheets::due(const Item& item) {
    const CalendarDate today = shipsDay(m_session.clock().now());
    const auto in = [&](int days) {
        return CalendarDate(std::chrono::sys_days(today) + std::chrono::days(days));
    };
    auto* sheet = new Sheet(m_over, tr("Due date"));
    auto* picker = new DayPicker("due-day", {{tr("today"), today},
                                             {tr("in 3 days"), in(3)},
                                             {tr("in 7 days"), in(7)},
                                             {tr("in 14 days"), in(14)},
                                             {tr("in one month"), monthsLater(today, 1)},
                                             {tr("in three months"), monthsLater(today, 3)}});
    connect(picker, &DayPicker::picked, sheet,
            [this, sheet, terms = termsOf(item)](CalendarDate day) mutable {
                sheet->close();
                terms.due = day;
                set(terms);
            });
    sheet->setContent(picker);
    sheet->setWidthMm(180);
    sheet->open();
}

void ItemSheets::interim(const Item& item) {
    ask(tr("Interim measure"), OfferedFor::Interim,
        [this, terms = termsOf(item)](const Wording& words) mutable {
            terms.interim = words.text;
            terms.interim_phrase = words.phrase;
            set(terms);
        });
}

void ItemSheets::assign(const Item& item) {
    auto* sheet = new Sheet(m_over, tr("Assigned to"));
    auto* picker = new PhrasePicker(people());
    connect(picker, &PhrasePicker::picked, sheet,
            [this, sheet, terms = termsOf(item)](const QString& name) mutable {
                sheet->close();
                terms.assigned = name.simplified().toStdString();
                set(terms);
            });
    sheet->setContent(picker);
    sheet->open();
}

void ItemSheets::rectify(const Item& item) {
    ask(tr("What was done at door %1?").arg(QString::fromStdString(item.door)),
        OfferedFor::Rectification, [this, id = item.id](const Wording& what) {
            if (const Item* found = m_session.item(id))
                rectified(*found, what);
        });
}

void ItemSheets::rectified(const Item& item, const Wording& what) {
    auto* sheet = new Sheet(m_over, tr("Who rectified it?"));
    auto* content = new QWidget;
    auto* lines = new QVBoxLayout(content);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->addWidget(new Label(
        tr("Whoever rectifies cannot retest: the item closes when someone else finds it in order."),
        TextSize::Body, Ink::Muted));
    auto* picker = new PhrasePicker(people());
    lines->addWidget(picker);
    connect(picker, &PhrasePicker::picked, sheet,
            [this, sheet, what, id = item.findings.back().stamp.id](const QString& name) {
                sheet->close();
                (void)m_session.record(Rectification{id, what, name.simplified().toStdString()});
            });
    sheet->setContent(content);
    sheet->open();
}

void ItemSheets::ready(const Item& item) {
    (void)m_session.record(AwaitingRetest{item.findings.back().stamp.id, {}});
}

void ItemSheets::withdraw(const Item& item) {
    ask(tr("Why is it withdrawn?"), OfferedFor::Withdrawal,
        [this, id = item.findings.back().stamp.id](const Wording& reason) {
            (void)m_session.record(Withdrawal{id, reason});
        });
}

void ItemSheets::takeBackWithdrawal(const Item& item) {
    if (item.withdrawn)
        (void)m_session.record(TakenBack{offered("withdrawn-by-mistake")},
                               item.withdrawn->stamp.id);
}

void ItemSheets::photograph(const Item& item) {
    Photograph about;
    about.walkdown = item.findings.back().body.walkdown;
    about.door = item.door;
    about.requirement = item.requirement;
    about.shows = item.rectifications.empty() ? item.findings.back().stamp.id
                                              : item.rectifications.back().stamp.id;
    m_photographs->take(about, OfferedFor::WorkPhotograph);
}

} // namespace latchround::ui

#include "moc_item_sheets.cpp"
