#include "ui/screens/plan/plan_sheets.h"

#include <algorithm>

#include <QHash>
#include <QVBoxLayout>

#include "core/planning/draw.h"
#include "ui/frames/sheet.h"
#include "ui/keys/keypad.h"
#include "ui/keys/person_form.h"
#include "ui/keys/phrase_picker.h"
#include "ui/look/label.h"
#include "ui/screens/plan/brief_words.h"
#include "ui/words/claim_words.h"
#include "ui/words/door_words.h"
#include "ui/words/offered.h"

namespace latchround::ui {

PlanSheets::PlanSheets(VesselSession& session, PlanDraft& draft, QWidget* over)
    : QObject(over)
    , m_session(session)
    , m_draft(draft)
    , m_over(over) {}

void PlanSheets::addPerson() {
    auto* sheet = new Sheet(m_over, tr("Add a person"));
    auto* form = new PersonForm;
    connect(form, &PersonForm::given, sheet,
            [this, sheet](const QString& name, const Wording& role) {
                sheet->close();
                join(name, role);
            });
    sheet->setContent(form);
    sheet->open();
}

/// The first to join records; a later one can be chosen to. Where the fact could not be saved the
/// session keeps it, and the person is here all the same.
void PlanSheets::join(const QString& name, const Wording& role) {
    const bool first = peopleOf(m_session, m_draft).empty();
    const FactId id = m_session.join(name, role);
    m_draft.joined.push_back({id, name.toStdString(), role});
    if (!first)
        m_draft.team.insert(id);
    emit peopleChanged();
}

void PlanSheets::which(ScopeKind kind) {
    const bool deck = kind == ScopeKind::OneDeck;
    auto* sheet = new Sheet(m_over, deck ? tr("Which deck?") : tr("Which zone?"));
    QStringList names;
    QHash<QString, QString> numbers;
    const auto add = [&](const QString& words, const std::string& number) {
        names << words;
        numbers[words] = QString::fromStdString(number);
    };
    if (deck) {
        std::vector<Deck> decks = m_session.arrangement().decks;
        std::ranges::stable_sort(decks, std::greater{}, &Deck::height_m);
        for (const Deck& each : decks) {
            const QString number = QString::fromStdString(each.number);
            add(each.name.empty()
                    ? tr("deck %1").arg(number)
                    : tr("deck %1, %2").arg(number, QString::fromStdString(each.name)),
                each.number);
        }
    } else {
        for (const Zone& each : m_session.arrangement().zones)
            add(tr("zone %1").arg(QString::fromStdString(each.number)), each.number);
    }
    auto* picker = new PhrasePicker(names, false);
    picker->setObjectName(QStringLiteral("which"));
    connect(picker, &PhrasePicker::picked, sheet, [this, sheet, kind, numbers](const QString& one) {
        sheet->close();
        emit whichChosen(kind, numbers.value(one));
    });
    sheet->setContent(picker);
    sheet->open();
}

void PlanSheets::heel() {
    auto* sheet = new Sheet(m_over, tr("Ship's heel, degrees"));
    auto* keypad = new Keypad;
    keypad->setObjectName(QStringLiteral("heel-pad"));
    keypad->setTitle(tr("over 1 degree, closing times are advice only"));
    keypad->setUnit(tr("degrees"));
    keypad->setDecimals(1);
    connect(keypad, &Keypad::entered, sheet, [this, sheet](double degrees) {
        sheet->close();
        m_session.setHeel(degrees);
        emit heelChosen();
    });
    sheet->setContent(keypad);
    sheet->setWidthMm(90);
    sheet->open();
}

void PlanSheets::sample() {
    const std::vector<std::string> doors = doorsInScope(m_session.arrangement(), m_draft.scope);
    auto* sheet =
        new Sheet(m_over, tr("How many of these %1?").arg(doorCountWords(int(doors.size()))));
    auto* content = new QWidget;
    auto* lines = new QVBoxLayout(content);
    lines->setContentsMargins(0, 0, 0, 0);
    QStringList names{tr("All")};
    const std::vector<SampleOffer> offers = sampleOffers(m_session.arrangement(), doors);
    for (const SampleOffer& offer : offers)
        names << tr("%1 at random: %2 confidence that at most %3 are defective")
                     .arg(offer.doors)
                     .arg(confidenceWords(offer.confidence))
                     .arg(offer.at_most);
    auto* picker = new PhrasePicker(names, false);
    picker->setObjectName(QStringLiteral("sample-choice"));
    lines->addWidget(picker);
    lines->addWidget(new Label(
        tr("The result is valid only if no door of the sample fails. The doors are spread over "
           "zones and kinds and drawn at random; hand-picked doors prove nothing about the rest. "
           "A sample never replaces a test that the flag or the rules require of every door."),
        TextSize::Body, Ink::Muted));
    connect(picker, &PhrasePicker::picked, sheet,
            [this, sheet, names, offers](const QString& picked) {
                sheet->close();
                const qsizetype index = names.indexOf(picked) - 1;
                if (index < 0)
                    emit everyDoorChosen();
                else
                    emit sampleChosen(offers[std::size_t(index)].at_most,
                                      offers[std::size_t(index)].confidence);
            });
    sheet->setContent(content);
    sheet->open();
}

void PlanSheets::agree(Agreed agreed) {
    auto* sheet = new Sheet(m_over, agreedTitle(agreed));
    auto* picker = new PhrasePicker;
    std::vector<PhrasePicker::Choice> choices;
    for (const Wording& phrase : agreedPhrases(agreed))
        choices.push_back({wordingWords(phrase), phrase, agreedEnglish(agreed, phrase)});
    picker->setChoices(std::move(choices));
    picker->setObjectName(QStringLiteral("agree"));
    connect(picker, &PhrasePicker::picked, sheet,
            [this, sheet, agreed](const QString&, const Wording& words) {
                sheet->close();
                m_draft.agreed[std::size_t(agreed)] = words;
                emit agreedChosen();
            });
    sheet->setContent(picker);
    sheet->open();
}

} // namespace latchround::ui

#include "moc_plan_sheets.cpp"
