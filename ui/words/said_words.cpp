#include "ui/words/said_words.h"

#include <QCoreApplication>

#include "core/evidence/fact_fields.h"
#include "ui/words/catalogue_words.h"
#include "ui/words/date_words.h"
#include "ui/words/door_words.h"
#include "ui/words/item_words.h"
#include "ui/words/offered.h"
#include "ui/words/plain_text.h"
#include "ui/words/units.h"
#include "ui/words/walkdown_words.h"

namespace latchround::ui {

namespace {

struct SaidWords {
    Q_DECLARE_TR_FUNCTIONS(SaidWords)
};

struct Saying {
    const Ledger& ledger;
    const Catalogue& catalogue;

    QString operator()(const Observation& body) const {
        switch (body.answer) {
        case Answer::Yes:
            return SaidWords::tr("yes");
        case Answer::No:
            return SaidWords::tr("no");
        case Answer::NotApplicable:
            break;
        }
        return SaidWords::tr("not applicable");
    }
    QString operator()(const MeasuredValue& body) const {
        return recordedWords(body.value, body.unit);
    }
    QString operator()(const PlateRead& body) const {
        if (body.fire_class)
            return SaidWords::tr("%1 on the plate").arg(plainText(word(*body.fire_class)));
        return body.state == PlateState::None ? SaidWords::tr("no plate")
                                              : SaidWords::tr("plate illegible");
    }
    QString operator()(const Judgement& body) const {
        return (body.satisfactory ? SaidWords::tr("judged satisfactory: %1")
                                  : SaidWords::tr("judged unsatisfactory: %1"))
            .arg(wordingWords(body.reason));
    }
    QString operator()(const CouldNotTest& body) const {
        return SaidWords::tr("could not be tested: %1").arg(wordingWords(body.reason));
    }
    QString operator()(const Deficiency& body) const { return wordingWords(body.text); }
    QString operator()(const DifferenceSettled& body) const {
        const Fact* stands = ledger.find(body.stands);
        return SaidWords::tr("decided that this entry stands: %1")
            .arg(stands ? saidWords(*stands, ledger, catalogue)
                        : QString::fromStdString(body.stands));
    }
    /// Only terms that set one thing differ.
    QString operator()(const DeficiencyTerms& body) const {
        if (body.severity)
            return severityName(*body.severity);
        if (body.action)
            return actionWords(*body.action);
        if (body.ground_for_detention)
            return detentionWords(*body.ground_for_detention);
        if (body.due)
            return SaidWords::tr("due %1").arg(dateWords(*body.due));
        if (body.interim)
            return body.interim->empty() ? SaidWords::tr("no interim measure")
                                         : wordingWords({*body.interim, body.interim_phrase});
        return body.assigned && !body.assigned->empty() ? QString::fromStdString(*body.assigned)
                                                        : SaidWords::tr("no one yet");
    }
    template <class Other>
    QString operator()(const Other&) const {
        static_assert(rulesOf<Other>.differs == Differs::No, "say what two people differ in");
        return {};
    }
};

} // namespace

QString saidWords(const Fact& fact, const Ledger& ledger, const Catalogue& catalogue) {
    return std::visit(Saying{ledger, catalogue}, fact.body);
}

QString aboutWords(const Difference& difference, const Ledger& ledger, const Catalogue& catalogue) {
    if (difference.door.empty())
        return SaidWords::tr("Two decisions about the same entries");
    QString words = QString::fromStdString(difference.door);
    if (const auto walkdown = ledger.walkdown(difference.walkdown))
        words += SaidWords::tr(", %1 of %2")
                     .arg(purposeWords(walkdown->plan.purpose), dayWords(walkdown->begun_by.when));
    const Requirement* row = findRequirement(catalogue, difference.requirement);
    if (row)
        words += QStringLiteral(": ") + rowWords(*row);
    if (difference.side != Side::None)
        words += difference.side == Side::One ? SaidWords::tr(", side one")
                                              : SaidWords::tr(", side two");
    return words;
}

} // namespace latchround::ui
