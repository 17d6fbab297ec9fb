#include <algorithm>
#include <memory>

#include <QPushButton>
#include <QVBoxLayout>

#include "ui/frames/sheet.h"
#include "ui/keys/choice_keys.h"
#include "ui/lists/value_row.h"
#include "ui/look/label.h"
#include "ui/look/touch_style.h"
#include "ui/ports/signing.h"
#include "ui/screens/review/review_sheets.h"
#include "ui/sheets/message.h"
#include "ui/sheets/paper_sheet.h"
#include "ui/words/door_words.h"
#include "ui/words/english_beneath.h"
#include "ui/words/item_words.h"
#include "ui/words/phrase_words.h"
#include "ui/words/spoken_language.h"
#include "ui/words/walkdown_words.h"

// The part of ReviewSheets that makes papers and has walkdowns signed.
namespace latchround::ui {

namespace {

/// As many as a row of keys holds; older ones are reached by the key that shows the next.
constexpr int walkdowns_at_once = 4;

QString signatureWords(const VesselSession& session, const Recorded<WalkdownSigned>& signature) {
    const SignatureHolds check = session.ports().signing->check(signature);
    QString words = ReviewSheets::tr("%1, as %2, %3 %4: ")
                        .arg(nameOf(session.ledger(), signature.stamp.person),
                             capacityWords(signature.body.capacity), dayWords(signature.stamp.when),
                             clockWords(signature.stamp.when));
    if (!check.holds)
        return words + ReviewSheets::tr("NOT VALID: %1").arg(phraseWords(check.why));
    words += ReviewSheets::tr("%1 entries, unchanged").arg(check.facts);
    if (check.later > 0)
        words += ReviewSheets::tr("; %1 came later and are not covered").arg(check.later);
    return words;
}

/// English first: that is what is signed.
void offerLanguages(QVBoxLayout& lines, const std::shared_ptr<PaperLanguage>& chosen) {
    const QString of_screen = spokenLanguage();
    auto* which = new ChoiceKeys("paper-language", ChoiceKeys::Many::One, 2);
    which->setAccessibleName(ReviewSheets::tr("Language of the document"));
    which->setChoices({languageName(QStringLiteral("en")), languageName(of_screen)});
    which->setChosen({0});
    QObject::connect(which, &ChoiceKeys::touched, which, [chosen](int index, bool) {
        *chosen = index == 0 ? PaperLanguage::English : PaperLanguage::OfTheScreen;
    });
    lines.addWidget(which);
    lines.addWidget(new Label(
        isCheckedBySpeaker(of_screen)
            ? ReviewSheets::tr("What is signed is the English record. A document in another "
                               "language is marked as a translation.")
            : ReviewSheets::tr("What is signed is the English record. A document in another "
                               "language is marked as a machine translation, not yet checked."),
        TextSize::Small, Ink::Muted));
}

} // namespace

void ReviewSheets::papers(const QString& door) {
    auto* sheet = new Sheet(m_over, tr("Documents, as PDF"));
    auto* content = new QWidget;
    auto* lines = new QVBoxLayout(content);
    lines->setContentsMargins(0, 0, 0, 0);
    const auto language = std::make_shared<PaperLanguage>(PaperLanguage::English);
    if (spokenLanguage() != QLatin1String("en"))
        offerLanguages(*lines, language);
    const auto add = [&](Paper paper, const char* name, const QString& words, const QString& detail,
                         bool usable) {
        auto* row = new ValueRow(words, tr("Create"));
        row->setDetail(detail);
        row->key()->setObjectName(QLatin1String(name));
        row->key()->setAccessibleName(tr("Create: %1").arg(words));
        row->key()->setEnabled(usable);
        connect(row, &ValueRow::asked, sheet, [this, sheet, paper, door, language] {
            sheet->close();
            make(paper, paper == rule_book ? QString() : door, *language);
        });
        lines->addWidget(row);
    };
    const bool walked = m_session.walkdown().has_value();
    if (!walked)
        lines->addWidget(
            new Label(tr("There is no walkdown yet: only the blank form and the rule book can be "
                         "created."),
                      TextSize::Body, Ink::Again));
    add(ReportKind::DeficiencyList, "paper-deficiencies", tr("Deficiency list"),
        tr("for the master: what is open, its effect, interim measures"), walked);
    add(ReportKind::WorkList, "paper-work", tr("Work list"),
        tr("for the crew: by person assigned, with boxes to tick"), walked);
    add(ReportKind::DoorRecord, "paper-door",
        door.isEmpty() ? tr("Door record") : tr("Door record: %1").arg(door),
        tr("one page: particulars, results, rectifications"), walked && !door.isEmpty());
    add(ReportKind::Survey, "paper-survey", tr("Survey report"),
        tr("the walkdown shown: every door, every check"), walked);
    add(blank_form, "blank-form", tr("Blank form"),
        tr("what the tablet asks, to be filled in by hand"), true);
    add(rule_book, "paper-rules", tr("Rule book"),
        tr("every requirement with its limit, dates, exemptions and text, and where it applies "
           "aboard"),
        true);
    sheet->setContent(content);
    sheet->setWidthMm(170);
    sheet->open();
}

void ReviewSheets::make(Paper paper, const QString& door, PaperLanguage language) {
    const FactId walkdown = m_session.walkdown() ? m_session.walkdown()->id : FactId();
    makePaper(m_session, paper, walkdown, door, m_over, language);
}

void ReviewSheets::sign() {
    std::vector<Walkdown> ended = m_session.ledger().walkdowns();
    std::erase_if(ended, [](const Walkdown& walkdown) { return !walkdown.end; });
    if (ended.empty()) {
        showMessage(m_over, tr("Nothing to sign yet"),
                    tr("A walkdown can be signed once it has ended."));
        return;
    }
    std::ranges::reverse(ended);
    auto* sheet = new Sheet(m_over, tr("Sign a walkdown"));
    auto* content = new QWidget;
    auto* lines = new QVBoxLayout(content);
    lines->setContentsMargins(0, 0, 0, 0);
    QStringList names;
    for (const Walkdown& walkdown : ended)
        names << tr("%1\n%2").arg(dayWords(walkdown.begun_by.when),
                                  purposeWords(walkdown.plan.purpose));
    auto* which = new ChoiceKeys("sign-which", ChoiceKeys::Many::One, walkdowns_at_once);
    which->setChoices(names);
    which->setChosen({0});
    lines->addWidget(which);
    auto* place = new QWidget;
    new QVBoxLayout(place);
    place->layout()->setContentsMargins(0, 0, 0, 0);
    lines->addWidget(place, 1);
    showSignatures(sheet, place, ended.front().id);
    connect(which, &ChoiceKeys::touched, sheet, [this, sheet, place, ended](int index, bool) {
        showSignatures(sheet, place, ended[std::size_t(index)].id);
    });
    sheet->setContent(content);
    sheet->setWidthMm(180);
    sheet->open();
}

void ReviewSheets::showSignatures(Sheet* sheet, QWidget* place, const FactId& walkdown) {
    for (QWidget* before : place->findChildren<QWidget*>(QString(), Qt::FindDirectChildrenOnly)) {
        before->hide();
        before->deleteLater();
    }
    const auto signatures = m_session.ledger().signaturesOf(walkdown);
    QStringList words;
    bool signed_before = false;
    for (const auto& signature : signatures) {
        words << signatureWords(m_session, signature);
        signed_before = signed_before || signature.stamp.person == m_session.person();
    }
    if (words.isEmpty())
        words << tr("No one has signed it yet.");
    auto* text = new Label(words.join(QLatin1Char('\n')), TextSize::Body);
    text->setObjectName(QStringLiteral("signatures"));
    place->layout()->addWidget(text);
    place->layout()->addWidget(new Label(
        tr("A signature covers everything recorded of this walkdown so far, under this device's "
           "key. It is not a qualified electronic signature: sign the paper as well where your "
           "Administration requires it."),
        TextSize::Small, Ink::Muted));
    if (signed_before)
        place->layout()->addWidget(
            new Label(tr("%1 has signed it.").arg(m_session.personName()), TextSize::Body));
    for (const auto& [capacity, name] : {std::pair{Capacity::Inspector, "sign-inspector"},
                                         std::pair{Capacity::ChiefOfficer, "sign-chief"}}) {
        auto* key =
            keyOf(tr("Sign as %1: %2").arg(capacityWords(capacity), m_session.personName()), name);
        key->setEnabled(!signed_before && !m_session.person().empty());
        connect(key, &QPushButton::clicked, sheet, [this, sheet, walkdown, as = capacity] {
            sheet->close();
            const bool all_saved = m_session.waiting() == 0;
            if (const Result<> done = m_session.sign(walkdown, as); done)
                sign();
            else if (all_saved && m_session.isSavingShortly())
                showMessage(
                    m_over, tr("Being saved"),
                    tr("The signature is kept and will be saved automatically in a moment."));
            else
                showMessage(m_over, tr("Not signed"), errorWords(done.error()));
        });
        place->layout()->addWidget(key);
    }
}

} // namespace latchround::ui
