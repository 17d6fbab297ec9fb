#include "ui/words/tap_words.h"

#include <algorithm>

#include <QCoreApplication>

#include "core/evidence/fact_fields.h"
#include "core/requirement/catalogue.h"
#include "core/safety/cautions.h"
#include "ui/words/catalogue_words.h"
#include "ui/words/door_words.h"
#include "ui/words/offered.h"
#include "ui/words/phrase_words.h"
#include "ui/words/said_words.h"

namespace latchround::ui {

namespace {

struct TapWords {
    Q_DECLARE_TR_FUNCTIONS(TapWords)
};

struct Tapping {
    const Ledger& ledger;
    const Catalogue& catalogue;

    QString asked(const std::string& door, const std::string& requirement) const {
        const Requirement* row = findRequirement(catalogue, requirement);
        const QString number = QString::fromStdString(door);
        if (!row)
            return number;
        return QStringLiteral("%1, %2").arg(number, askedWords(*row));
    }
    QString about(const FactId& deficiency, const QString& words) const {
        const Fact* found = ledger.find(deficiency);
        const auto* written = found ? std::get_if<Deficiency>(&found->body) : nullptr;
        return words.arg(written ? QString::fromStdString(written->door) : QString());
    }

    QString operator()(const Observation& body) const { return asked(body.door, body.requirement); }
    QString operator()(const MeasuredValue& body) const {
        return asked(body.door, body.requirement);
    }
    QString operator()(const Judgement& body) const { return asked(body.door, body.requirement); }
    QString operator()(const PlateRead& body) const {
        return TapWords::tr("plate of %1").arg(QString::fromStdString(body.door));
    }
    QString operator()(const CouldNotTest& body) const {
        return TapWords::tr("not tested: %1").arg(QString::fromStdString(body.door));
    }
    QString operator()(const Note& body) const {
        return TapWords::tr("note on %1").arg(QString::fromStdString(body.door)) +
               QStringLiteral(": ") + wordingWords(body.text);
    }
    QString operator()(const Photograph& body) const {
        return TapWords::tr("photograph of %1").arg(QString::fromStdString(body.door));
    }
    QString operator()(const Deficiency& body) const {
        return TapWords::tr("deficiency at %1").arg(QString::fromStdString(body.door));
    }
    QString operator()(const CautionAnswered& body) const {
        const auto all = cautionsBeforeRelease();
        const auto asked = std::ranges::find(all, std::string_view(body.question), &Caution::id);
        const QString words =
            TapWords::tr("caution for %1").arg(QString::fromStdString(body.door)) +
            (asked == all.end() ? QString()
                                : QStringLiteral(": ") + phraseWords(asked->question()));
        return body.confirmed ? words : TapWords::tr("no longer confirmed: %1").arg(words);
    }
    QString operator()(const RunStarted& body) const {
        return TapWords::tr("run at %1").arg(QString::fromStdString(body.door)) +
               QStringLiteral(", ") + releaseWords(body.release);
    }
    QString operator()(const RunEnded& body) const {
        const Fact* run = ledger.find(body.run);
        const auto* started = run ? std::get_if<RunStarted>(&run->body) : nullptr;
        return started ? (*this)(*started) : TapWords::tr("last entry");
    }
    QString operator()(const DeficiencyTerms& body) const {
        return about(body.deficiency, TapWords::tr("details of the item at %1"));
    }
    QString operator()(const Rectification& body) const {
        return about(body.deficiency, TapWords::tr("rectification at %1"));
    }
    QString operator()(const AwaitingRetest& body) const {
        return about(body.deficiency, TapWords::tr("%1 awaiting retest"));
    }
    QString operator()(const Withdrawal& body) const {
        return about(body.deficiency, TapWords::tr("withdrawal of the item at %1"));
    }
    QString operator()(const WalkdownBegun&) const { return TapWords::tr("start of the walkdown"); }
    QString operator()(const WalkdownEnded&) const { return TapWords::tr("end of the walkdown"); }
    QString operator()(const ThumbDrill&) const { return TapWords::tr("timing drill"); }
    QString operator()(const DecisionLimits&) const { return TapWords::tr("when a figure passes"); }
    QString operator()(const UpkeepDone&) const { return TapWords::tr("maintenance done"); }
    QString operator()(const CertificateSeen&) const { return TapWords::tr("certificate date"); }
    QString operator()(const DifferenceSettled&) const { return TapWords::tr("decision"); }
    /// What undo does not reach is never named alone.
    template <class Other>
    QString operator()(const Other&) const {
        static_assert(rulesOf<Other>.undo != Undo::Yes, "say what undo takes back");
        return TapWords::tr("last entry");
    }
};

} // namespace

QString tapWords(const Fact& fact, const Ledger& ledger, const Catalogue& catalogue) {
    const Fact* subject = ledger.subjectOf(fact);
    if (!subject)
        return TapWords::tr("last entry");
    QString words = std::visit(Tapping{ledger, catalogue}, subject->body);
    if (const QString said = saidWords(*subject, ledger, catalogue); !said.isEmpty())
        words +=
            (words.endsWith(QLatin1Char('?')) ? QStringLiteral(" ") : QStringLiteral(": ")) + said;
    return subject == &fact ? words : TapWords::tr("taking back %1").arg(words);
}

} // namespace latchround::ui
