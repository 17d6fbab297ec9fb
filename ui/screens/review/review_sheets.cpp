#include "ui/screens/review/review_sheets.h"

#include <algorithm>

#include <QPushButton>
#include <QVBoxLayout>

#include "core/deficiency/findings.h"
#include "core/evidence/moment_text.h"
#include "ui/frames/picture_view.h"
#include "ui/frames/reading_pane.h"
#include "ui/frames/sheet.h"
#include "ui/keys/person_form.h"
#include "ui/keys/phrase_picker.h"
#include "ui/keys/row_pager.h"
#include "ui/lists/value_row.h"
#include "ui/look/label.h"
#include "ui/look/touch_style.h"
#include "ui/sheets/deficiency_sheet.h"
#include "ui/sheets/figure_sheets.h"
#include "ui/words/catalogue_words.h"
#include "ui/words/date_words.h"
#include "ui/words/door_words.h"
#include "ui/words/grade_words.h"
#include "ui/words/item_words.h"
#include "ui/words/offered.h"
#include "ui/words/verdict_words.h"
#include "ui/words/walkdown_words.h"

namespace latchround::ui {

namespace {

constexpr double wide_mm = 190;

const Requirement* timedRow(const DoorGrade& grade) {
    for (const RowGrade& row : grade.rows)
        if (hasHistory(*row.requirement) && isAsked(row))
            return row.requirement;
    return nullptr;
}

QStringList openRowWords(const DoorGrade& grade) {
    QStringList words;
    for (const RowGrade* row : askedWorstFirst(grade))
        if (row->verdict == Verdict::Unsatisfactory)
            words << rowWords(*row->requirement);
    return words;
}

} // namespace

ReviewSheets::ReviewSheets(VesselSession& session, QWidget* over)
    : QObject(over)
    , m_session(session)
    , m_over(over) {}

void ReviewSheets::who() {
    const std::vector<Person> people = m_session.ledger().people();
    if (people.empty()) {
        joinSomebody();
        return;
    }
    auto* sheet = new Sheet(m_over, tr("Who are you?"));
    auto* content = new QWidget;
    auto* lines = new QVBoxLayout(content);
    lines->setContentsMargins(0, 0, 0, 0);
    QStringList names;
    for (const Person& person : people)
        names << tr("%1, %2").arg(QString::fromStdString(person.name), wordingWords(person.role));
    auto* picker = new PhrasePicker(names, false);
    auto* other = keyOf(tr("Someone else"), "who-other");
    lines->addWidget(picker);
    lines->addWidget(other);
    connect(picker, &PhrasePicker::picked, sheet,
            [this, sheet, names, people](const QString& name) {
                sheet->close();
                m_session.setPerson(people[std::size_t(names.indexOf(name))].id);
                emit personChosen();
            });
    connect(other, &QPushButton::clicked, sheet, [this, sheet] {
        sheet->close();
        joinSomebody();
    });
    sheet->setContent(content);
    sheet->open();
}

void ReviewSheets::joinSomebody() {
    auto* sheet = new Sheet(m_over, tr("Add a person"));
    auto* form = new PersonForm;
    connect(form, &PersonForm::given, sheet,
            [this, sheet](const QString& name, const Wording& role) {
                sheet->close();
                m_session.setPerson(m_session.join(name, role));
                emit personChosen();
            });
    sheet->setContent(form);
    sheet->open();
}

void ReviewSheets::writeUp() {
    const std::vector<ToWriteUp> rows = toWriteUp(m_session.doors(), m_session.items());
    if (rows.empty())
        return;
    auto* sheet = new Sheet(m_over, tr("Checks not in order and not written up"));
    auto* content = new QWidget;
    auto* lines = new QVBoxLayout(content);
    lines->setContentsMargins(0, 0, 0, 0);
    std::vector<Entry> all;
    std::vector<QWidget*> shown;
    const std::string walkdown = m_session.walkdown()->id;
    for (const ToWriteUp& each : rows) {
        const QString number = QString::fromStdString(each.door->door->number);
        const QString words = deficiencyWords(*each.row);
        all.push_back({Deficiency{walkdown, number.toStdString(), each.row->requirement->id,
                                  recordedDeficiency(*each.row), each.repeats},
                       std::nullopt,
                       {}});
        auto* row =
            new ValueRow(tr("%1 · %2").arg(number, doorWords(*each.door->door)), tr("Write up…"));
        row->setDetail(each.repeats ? tr("%1 (found again)").arg(words) : words);
        row->key()->setObjectName(QStringLiteral("write-up-") + number);
        connect(row, &ValueRow::asked, sheet,
                [this, sheet, number, id = QString::fromStdString(each.row->requirement->id)] {
                    sheet->close();
                    const GradedDoor* door = m_session.door(number);
                    const RowGrade* found = door ? findRow(door->grade, id.toStdString()) : nullptr;
                    if (found)
                        ui::writeUp(m_session, *door, *found, m_over);
                });
        shown.push_back(row);
    }
    auto* pager = new RowPager;
    pager->setRows(std::move(shown));
    lines->addWidget(pager, 1);
    auto* every = keyOf(rows.size() == 1 ? tr("Write it up in these words")
                                         : tr("Write up all %1 in these words").arg(rows.size()),
                        "write-up-all", "primary");
    lines->addWidget(every);
    connect(every, &QPushButton::clicked, sheet, [this, sheet, all] {
        sheet->close();
        (void)m_session.record(all);
    });
    sheet->setContent(content);
    sheet->setTall();
    sheet->setWidthMm(wide_mm);
    sheet->open();
}

void ReviewSheets::history(const QString& number) {
    const Door* door = findDoor(m_session.arrangement(), number.toStdString());
    if (!door)
        return;
    auto* sheet = new Sheet(m_over, tr("History of door %1").arg(number));
    auto* content = new QWidget;
    auto* lines = new QVBoxLayout(content);
    lines->setContentsMargins(0, 0, 0, 0);
    auto* pane = new ReadingPane(tr("Walkdowns of this door, latest first"));
    pane->setObjectName(QStringLiteral("history-walks"));
    const Requirement* timed = nullptr;
    bool walked = false;
    const auto walkdowns = m_session.ledger().walkdowns();
    for (auto each = walkdowns.rbegin(); each != walkdowns.rend(); ++each) {
        const GradedDoor graded = gradeDoor(m_session.arrangement(), m_session.ledger(), *each,
                                            *door, m_session.catalogue());
        if (!timed)
            timed = timedRow(graded.grade);
        if (graded.evidence.empty())
            continue;
        walked = true;
        QString words = tr("%1, %2: %3")
                            .arg(dayWords(each->begun_by.when), purposeWords(each->plan.purpose),
                                 verdictWords(graded.grade.verdict));
        if (const RowGrade* row = timed ? findRow(graded.grade, timed->id) : nullptr)
            if (const QString figure = measuredWords(*row); !figure.isEmpty())
                words += tr(", closing %1").arg(figure);
        pane->add(words, TextSize::Body, Ink::Plain, true);
        for (const QString& open : openRowWords(graded.grade))
            pane->add(open, TextSize::Body, Ink::Bad);
        for (const auto& note : graded.evidence.notes)
            pane->add(wordingWords(note.body.text), TextSize::Small, Ink::Muted);
    }
    if (timed) {
        auto* years = new ValueRow(tr("Timing history"), tr("Chart ›"));
        years->key()->setObjectName(QStringLiteral("history-years"));
        connect(years, &ValueRow::asked, sheet, [this, sheet, door, timed] {
            sheet->close();
            showThroughTheYears(m_session, *door, *timed, m_over);
        });
        lines->addWidget(years);
    }
    lines->addWidget(pane, 1);
    if (!walked)
        pane->add(tr("Nothing has been recorded for this door yet."));
    pane->setAsHighAsWords();
    sheet->setContent(content);
    sheet->setWidthMm(wide_mm);
    sheet->open();
}

void ReviewSheets::photographs(const FactId& id) {
    const Item* item = m_session.item(id);
    if (!item || item->photographs.empty())
        return;
    auto* sheet =
        new Sheet(m_over, tr("Photographs of door %1").arg(QString::fromStdString(item->door)));
    std::vector<QWidget*> pictures;
    for (const auto& photograph : item->photographs) {
        const auto bytes = m_session.photograph(photograph.body.sha256);
        QImage picture;
        if (bytes)
            picture.loadFromData(reinterpret_cast<const uchar*>(bytes->data()), int(bytes->size()));
        pictures.push_back(new PictureView(
            std::move(picture), tr("%1, %2").arg(wordingWords(photograph.body.caption),
                                                 dateWords(shipsDay(photograph.stamp.when)))));
    }
    auto* pager = new RowPager;
    pager->setRows(std::move(pictures));
    sheet->setContent(pager);
    sheet->setTall();
    sheet->setWidthMm(wide_mm);
    sheet->open();
}

} // namespace latchround::ui

#include "moc_review_sheets.cpp"
