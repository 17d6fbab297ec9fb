#include "ui/screens/door/door_sheets.h"

#include <QHBoxLayout>
#include <QListWidget>
#include <QPushButton>
#include <QVBoxLayout>

#include "core/grading/as_found.h"
#include "core/requirement/applicability.h"
#include "core/requirement/catalogue.h"
#include "ui/frames/list_touch.h"
#include "ui/frames/sheet.h"
#include "ui/help/help_page.h"
#include "ui/keys/choice_row.h"
#include "ui/keys/key_grid.h"
#include "ui/keys/keypad.h"
#include "ui/keys/phrase_picker.h"
#include "ui/keys/second_tap.h"
#include "ui/lists/door_list.h"
#include "ui/look/label.h"
#include "ui/look/low_window.h"
#include "ui/look/touch_style.h"
#include "ui/screens/door/division_lookup.h"
#include "ui/screens/door/instrument_keys.h"
#include "ui/screens/door/why_panel.h"
#include "ui/sheets/deficiency_sheet.h"
#include "ui/sheets/figure_sheets.h"
#include "ui/sheets/photograph_sheets.h"
#include "ui/words/catalogue_words.h"
#include "ui/words/door_words.h"
#include "ui/words/grade_words.h"
#include "ui/words/inclination_words.h"
#include "ui/words/offered.h"
#include "ui/words/phrase_words.h"
#include "ui/words/plain_text.h"
#include "ui/words/units.h"
#include "ui/words/walkdown_words.h"

namespace latchround::ui {

namespace {

QString askedBecauseWords(const RowGrade& row, const Particulars& vessel,
                          const GradedDoor& graded) {
    const AsFound found(*graded.door, graded.evidence);
    return phraseWords(askedBecause(*row.requirement, vessel, found.of(*row.requirement),
                                    locationOf(graded.boundary, graded.grade.asked_class)));
}

QString whyNotAsked(const RowGrade& row, const Particulars& vessel, const GradedDoor& door) {
    if (row.reason.kind == ReasonKind::OutsideThisWalk ||
        row.reason.kind == ReasonKind::ExcusedByAnswer)
        return reasonWords(row.reason);
    return DoorSheets::tr("does not apply: %1").arg(askedBecauseWords(row, vessel, door));
}

} // namespace

DoorSheets::DoorSheets(VesselSession& session, QWidget* over)
    : QObject(over)
    , m_session(session)
    , m_over(over)
    , m_photographs(new PhotographSheets(session, over)) {}

void DoorSheets::setDoor(const QString& number) {
    m_door = number;
    m_walkdown = m_session.walkdown()->id;
}

void DoorSheets::readPlate() {
    auto* sheet = new Sheet(m_over, tr("The plate on door %1").arg(m_door));
    QStringList readings;
    for (const auto& entry : fireClassWords)
        readings << plainText(entry.word);
    const QString none = tr("no plate");
    readings << none << tr("illegible");
    auto* picker = new PhrasePicker(readings, false);
    connect(picker, &PhrasePicker::picked, sheet, [this, sheet, none](const QString& reading) {
        PlateRead plate{m_walkdown, door(), PlateState::Read, fireClassFrom(reading.toStdString())};
        if (!plate.fire_class)
            plate.state = reading == none ? PlateState::None : PlateState::Illegible;
        const auto before = evidence().plate;
        (void)m_session.record(plate, before ? std::optional(before->stamp.id) : std::nullopt);
        sheet->close();
    });
    sheet->setContent(picker);
    sheet->open();
}

void DoorSheets::lookUpBoundary() {
    const GradedDoor* graded = m_session.door(m_door);
    if (!graded)
        return;
    auto* sheet = new Sheet(m_over, tr("What the boundary requires"));
    const Boundary other;
    auto* lookup = new DivisionLookup(m_session.catalogue().divisions,
                                      questionOf(m_session.arrangement().particulars,
                                                 graded->boundary ? *graded->boundary : other));
    sheet->setContent(lookup);
    sheet->setTall();
    sheet->setWidthMm(230);
    sheet->open();
}

void DoorSheets::notAsked() {
    const GradedDoor* graded = m_session.door(m_door);
    if (!graded)
        return;
    const Particulars& vessel = m_session.arrangement().particulars;
    QStringList lines;
    for (const RowGrade& row : graded->grade.rows)
        if (!isAsked(row) && speaksTo(*row.requirement, vessel))
            lines << tr("%1\n    %2")
                         .arg(rowWords(*row.requirement), whyNotAsked(row, vessel, *graded));
    auto* sheet = new Sheet(m_over, tr("Does not apply to door %1").arg(m_door));
    auto* list = new QListWidget;
    list->setObjectName(QStringLiteral("not-asked-rows"));
    list->setAccessibleName(sheet->accessibleName());
    list->setWordWrap(true);
    list->setSelectionMode(QAbstractItemView::NoSelection);
    list->addItems(lines);
    scrollByTouch(*list);
    auto* rules = keyOf(tr("Rule book ›"), "not-asked-rules");
    connect(rules, &QPushButton::clicked, sheet, [this, sheet] {
        sheet->close();
        emit rulesAsked({});
    });
    sheet->setContent(list);
    sheet->setFoot(rules);
    sheet->setTall();
    sheet->setWidthMm(190);
    sheet->open();
}

void DoorSheets::clearAnswer(const QString& requirement, Side side) {
    const auto all = evidence().observations;
    const auto found = all.find({requirement.toStdString(), side});
    const GradedDoor* graded = m_session.door(m_door);
    const RowGrade* row = graded ? findRow(graded->grade, requirement.toStdString()) : nullptr;
    if (found == all.end() || !row)
        return;
    const Stamp& stamp = found->second.stamp;
    auto* sheet = new Sheet(m_over, tr("Clear this answer?"));
    auto* content = new QWidget;
    auto* lines = new QVBoxLayout(content);
    lines->addWidget(new Label(askedWords(*row->requirement), TextSize::Lead));
    lines->addWidget(
        new Label(tr("Door %1: “%2”, answered at %3 by %4. It stays on record as taken back.")
                      .arg(m_door, answerWords(found->second.body.answer), clockWords(stamp.when),
                           QString::fromStdString(m_session.ledger().nameOf(stamp.person))),
                  TextSize::Body));
    auto* keep = keyOf(tr("Keep it"), "keep-answer", "primary");
    auto* clear = keyOf(tr("Clear the answer"), "clear-answer");
    for (QPushButton* key : {keep, clear}) {
        passOverSecondTap(*key); // of the finger that asked
        lines->addWidget(key);
    }
    connect(clear, &QPushButton::clicked, sheet, [this, sheet, slip = stamp.id] {
        sheet->close();
        (void)m_session.record(TakenBack{offered("answer-taken-back")}, slip);
    });
    connect(keep, &QPushButton::clicked, sheet, &Sheet::close);
    sheet->setContent(content);
    sheet->setWidthMm(110);
    sheet->open();
}

void DoorSheets::measure(const QString& requirement) {
    const GradedDoor* graded = m_session.door(m_door);
    const RowGrade* found = graded ? findRow(graded->grade, requirement.toStdString()) : nullptr;
    if (!found)
        return;
    const Requirement* row = found->requirement;
    const std::string unit = gaugeUnit(*row);
    auto* sheet = new Sheet(m_over, rowWords(*row));
    auto* keypad = new Keypad;
    keypad->setTitle(row->incline_deg ? tr("closing force at the edge, by spring gauge")
                                      : limitWords(*row));
    keypad->setUnit(QString::fromStdString(unit));
    keypad->setDecimals(unit == "mm" || unit == "N" ? 1 : 3);
    // A low window has room for the keypad alone: what it was read off is asked after the figure.
    const bool has_step = InstrumentKeys::isFor(*row);
    const bool asks_after = has_step && isLowWindow(*m_over->window());
    auto* instrument = has_step && !asks_after ? new InstrumentKeys(m_session, *row) : nullptr;
    connect(
        keypad, &Keypad::entered, sheet, [this, sheet, row, instrument, asks_after](double value) {
            sheet->close();
            if (asks_after)
                askInstrument(*row, value);
            else
                keep(*row, value, instrument ? std::optional(instrument->step()) : std::nullopt);
        });
    sheet->setContent(instrument ? padAbove(keypad, instrument) : keypad);
    sheet->setWidthMm(90);
    sheet->open();
}

void DoorSheets::askInstrument(const Requirement& row, double value) {
    auto* sheet = new Sheet(
        m_over, tr("What was %1 measured with?").arg(quantityWords(value, gaugeUnit(row), 2)));
    auto* instrument = new InstrumentKeys(m_session, row);
    auto* record = keyOf(tr("Record"), "measured-record", "primary");
    auto* content = new QWidget;
    auto* layout = new QVBoxLayout(content);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(instrument);
    connect(record, &QPushButton::clicked, sheet, [this, sheet, &row, value, instrument] {
        sheet->close();
        keep(row, value, instrument->step());
    });
    sheet->setContent(content);
    sheet->setFoot(record);
    sheet->open();
}

void DoorSheets::keep(const Requirement& row, double value, std::optional<double> step) {
    const auto measured = evidence().measured;
    const auto before = measured.find(row.id);
    MeasuredValue read_off{m_walkdown, door(), row.id, value, gaugeUnit(row)};
    read_off.step = step;
    (void)m_session.record(std::move(read_off), before == measured.end()
                                                    ? std::nullopt
                                                    : std::optional(before->second.stamp.id));
}

void DoorSheets::heel() {
    auto* sheet = new Sheet(m_over, tr("Ship's heel, degrees"));
    auto* keypad = new Keypad;
    keypad->setTitle(tr("over 1 degree, closing times are advice only"));
    keypad->setUnit(tr("degrees"));
    keypad->setDecimals(1);
    connect(keypad, &Keypad::entered, sheet, [this, sheet](double value) {
        m_session.setHeel(value);
        emit heelChanged();
        sheet->close();
    });
    sheet->setContent(keypad);
    sheet->setWidthMm(90);
    sheet->open();
}

void DoorSheets::note() {
    auto* sheet = new Sheet(m_over, tr("Note about door %1").arg(m_door));
    auto* picker = new PhrasePicker;
    picker->setPhrases(offeredFor(OfferedFor::Note));
    connect(picker, &PhrasePicker::picked, sheet,
            [this, sheet](const QString&, const Wording& words) {
                (void)m_session.record(Note{m_walkdown, door(), words});
                sheet->close();
            });
    sheet->setContent(picker);
    sheet->open();
}

void DoorSheets::photograph() {
    Photograph about;
    about.walkdown = m_walkdown;
    about.door = door();
    m_photographs->take(about, OfferedFor::DoorPhotograph);
}

void DoorSheets::couldNotTest(const QString& requirement) {
    auto* sheet =
        new Sheet(m_over, requirement.isEmpty() ? tr("Why could door %1 not be tested?").arg(m_door)
                                                : tr("Why could this not be tested?"));
    auto* picker = new PhrasePicker;
    picker->setPhrases(offeredFor(OfferedFor::CouldNotTest));
    connect(picker, &PhrasePicker::picked, sheet,
            [this, sheet, requirement](const QString&, const Wording& why) {
                const auto all = evidence().could_not_test;
                const auto before = all.find(requirement.toStdString());
                (void)m_session.record(
                    CouldNotTest{m_walkdown, door(), requirement.toStdString(), why},
                    before == all.end() ? std::nullopt : std::optional(before->second.stamp.id));
                sheet->close();
            });
    sheet->setContent(picker);
    sheet->open();
}

void DoorSheets::why(const QString& requirement) {
    const GradedDoor* graded = m_session.door(m_door);
    const RowGrade* row = graded ? findRow(graded->grade, requirement.toStdString()) : nullptr;
    if (!row)
        return;
    auto* sheet = new Sheet(m_over, tr("Why"));
    auto* content = new QWidget;
    auto* lines = new QVBoxLayout(content);
    lines->setContentsMargins(0, 0, 0, 0);
    auto* panel = new WhyPanel;
    panel->setRow(*row, askedBecauseWords(*row, m_session.arrangement().particulars, *graded),
                  inclinationWords(*row->requirement, *graded));
    lines->addWidget(panel, 1);
    auto* keys = new KeyGrid;
    lines->addWidget(keys);
    if (row->figure) {
        auto* budget = keyOf(tr("Uncertainty breakdown"), "why-budget");
        keys->add(budget);
        connect(budget, &QPushButton::clicked, sheet,
                [this, copy = *row] { showBudget(copy, m_over); });
    }
    if (hasHistory(*row->requirement)) {
        auto* years = keyOf(tr("Timing history"), "why-years");
        keys->add(years);
        connect(years, &QPushButton::clicked, sheet,
                [this, timed = *graded->door, asked = row->requirement] {
                    showThroughTheYears(m_session, timed, *asked, m_over);
                });
    }
    if (row->verdict == Verdict::Unsatisfactory) {
        auto* deficiency = keyOf(tr("Write up…"), "why-deficiency");
        keys->add(deficiency);
        connect(deficiency, &QPushButton::clicked, sheet, [this, sheet, requirement] {
            sheet->close();
            writeDeficiency(requirement);
        });
    }
    if (!m_session.isUnderWay())
        panel->leaveUndecided();
    if (row->verdict == Verdict::Untested && m_session.isUnderWay()) {
        auto* could_not = keyOf(tr("Could not test"), "why-could-not");
        keys->add(could_not);
        connect(could_not, &QPushButton::clicked, sheet, [this, sheet, requirement] {
            sheet->close();
            couldNotTest(requirement);
        });
    }
    auto* rules = keyOf(tr("Rule book ›"), "why-rules");
    keys->add(rules);
    connect(rules, &QPushButton::clicked, sheet, [this, sheet, requirement] {
        sheet->close();
        emit rulesAsked(requirement);
    });
    connect(panel, &WhyPanel::decided, sheet,
            [this, sheet](const QString& id, bool satisfactory, const Wording& reason) {
                (void)m_session.record(
                    Judgement{m_walkdown, door(), id.toStdString(), satisfactory, reason});
                sheet->close();
            });
    sheet->setContent(content);
    sheet->open();
}

void DoorSheets::writeDeficiency(const QString& requirement) {
    const GradedDoor* graded = m_session.door(m_door);
    if (const RowGrade* row = graded ? findRow(graded->grade, requirement.toStdString()) : nullptr)
        writeUp(m_session, *graded, *row, m_over);
}

void DoorSheets::help(const Help& help) {
    showHelp(help, m_over);
}

void DoorSheets::allDoors() {
    auto* sheet = new Sheet(m_over, tr("Doors in this walkdown"));
    auto* list = new DoorListView;
    std::vector<DoorListEntry> entries;
    for (const GradedDoor& graded : m_session.doors())
        entries.push_back({QString::fromStdString(graded.door->number), doorWords(*graded.door),
                           graded.grade.verdict});
    list->setEntries(std::move(entries));
    list->setCurrentDoor(m_door);
    connect(list, &DoorListView::doorChosen, sheet, [this, sheet](const QString& number) {
        sheet->close();
        emit doorChosen(number);
    });
    sheet->setContent(list);
    sheet->setTall();
    sheet->open();
}

} // namespace latchround::ui

#include "moc_door_sheets.cpp"
