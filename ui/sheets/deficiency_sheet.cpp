#include "ui/sheets/deficiency_sheet.h"

#include <algorithm>

#include <QCoreApplication>
#include <QVBoxLayout>

#include "core/deficiency/findings.h"
#include "core/evidence/moment_text.h"
#include "ui/frames/sheet.h"
#include "ui/keys/choice_keys.h"
#include "ui/keys/phrase_picker.h"
#include "ui/look/label.h"
#include "ui/words/catalogue_words.h"
#include "ui/words/date_words.h"
#include "ui/words/grade_words.h"
#include "ui/words/in_english.h"
#include "ui/words/item_words.h"

namespace latchround::ui {

namespace {

struct DeficiencyWords {
    Q_DECLARE_TR_FUNCTIONS(DeficiencyWords)
};

const Item* itemOfFinding(const VesselSession& session, const FactId& finding) {
    for (const Item& item : session.items())
        if (std::ranges::any_of(item.findings,
                                [&](const auto& each) { return each.stamp.id == finding; }))
            return &item;
    return nullptr;
}

/// What is composed, as it goes on record.
template <class Compose>
Wording inRecord(const Compose& compose) {
    const InEnglish english;
    return compose().toStdString();
}

} // namespace

QString deficiencyWords(const RowGrade& row) {
    const QString words = rowWords(*row.requirement);
    if (!row.figure)
        return DeficiencyWords::tr("Not met: %1").arg(words);
    const QString limit = limitWords(*row.requirement);
    return limit.isEmpty()
               ? DeficiencyWords::tr("Not met: %1. Measured %2").arg(words, measuredWords(row))
               : DeficiencyWords::tr("Not met: %1. Measured %2; limit: %3")
                     .arg(words, measuredWords(row), limit);
}

Wording recordedDeficiency(const RowGrade& row) {
    return inRecord([&] { return deficiencyWords(row); });
}

QString foundBeforeWords(const Item& item) {
    const QString day = dateWords(shipsDay(item.findings.back().stamp.when));
    return item.isOpen()
               ? DeficiencyWords::tr("found on %1, open since").arg(day)
               : DeficiencyWords::tr("found on %1, since %2").arg(day, stateWords(item.state));
}

void writeUp(VesselSession& session, const GradedDoor& door, const RowGrade& row, QWidget* over) {
    const std::string number = door.door->number;
    const std::string requirement = row.requirement->id;
    auto* sheet = new Sheet(
        over, DeficiencyWords::tr("Deficiency at door %1").arg(QString::fromStdString(number)));
    auto* content = new QWidget;
    auto* lines = new QVBoxLayout(content);
    lines->setContentsMargins(0, 0, 0, 0);
    const auto before = newestFinding(session.items(), number, requirement);
    const Item* earlier = before ? itemOfFinding(session, *before) : nullptr;
    auto again = std::make_shared<bool>(earlier != nullptr);
    if (earlier) {
        lines->addWidget(new Label(DeficiencyWords::tr("This check was written up before: %1.")
                                       .arg(foundBeforeWords(*earlier)),
                                   TextSize::Lead));
        auto* which = new ChoiceKeys("deficiency-again", ChoiceKeys::Many::One, 2);
        which->setChoices(
            {DeficiencyWords::tr("The same defect again"), DeficiencyWords::tr("Another defect")});
        which->setChosen({0});
        lines->addWidget(which);
        QObject::connect(which, &ChoiceKeys::touched, sheet,
                         [again](int index, bool) { *again = index == 0; });
    }
    const auto plain = [&] {
        return DeficiencyWords::tr("Not met: %1").arg(rowWords(*row.requirement));
    };
    std::vector<PhrasePicker::Choice> choices{{deficiencyWords(row), recordedDeficiency(row)}};
    if (row.figure)
        choices.push_back({plain(), inRecord(plain)});
    auto* picker = new PhrasePicker;
    picker->setChoices(std::move(choices));
    lines->addWidget(picker);
    QObject::connect(picker, &PhrasePicker::picked, sheet,
                     [&session, sheet, number, requirement, before, again,
                      walkdown = session.walkdown()->id](const QString&, const Wording& words) {
                         sheet->close();
                         (void)session.record(Deficiency{walkdown, number, requirement, words,
                                                         *again ? before : std::nullopt});
                     });
    sheet->setContent(content);
    sheet->open();
}

} // namespace latchround::ui
