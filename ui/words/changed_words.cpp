#include "ui/words/changed_words.h"

#include <QCoreApplication>

#include "ui/words/catalogue_words.h"
#include "ui/words/grade_words.h"
#include "ui/words/plain_text.h"
#include "ui/words/verdict_words.h"

namespace latchround::ui {

namespace {

struct ChangedWords {
    Q_DECLARE_TR_FUNCTIONS(ChangedWords)
};

} // namespace

QString rulesChangeWords(const Catalogue& before, const Catalogue& now) {
    if (before.flag == now.flag)
        return now.flag.empty()
                   ? ChangedWords::tr("A different edition of the catalogue is now in use.")
                   : ChangedWords::tr(
                         "A different edition of the catalogue, or of the rules of %1, "
                         "is now in use.")
                         .arg(plainText(now.flag));
    return now.flag.empty()
               ? ChangedWords::tr("The rules of %1 no longer apply on top of the catalogue.")
                     .arg(plainText(before.flag))
               : ChangedWords::tr("The rules of %1 now apply on top of the catalogue.")
                     .arg(plainText(now.flag));
}

QString verdictChangeWords(const ChangedVerdict& change) {
    return ChangedWords::tr("was %1, now %2")
        .arg(verdictWords(change.before), verdictWords(change.now));
}

QString changedRowsWords(const ChangedVerdict& change) {
    QStringList words;
    for (const ChangedRow& row : change.rows)
        words << rowWords(*(row.now ? row.now : row.before)->requirement);
    return words.join(QStringLiteral("; "));
}

RowSideWords rowSideWords(const std::optional<RowGrade>& side) {
    RowSideWords words;
    if (!side) {
        words.verdict = ChangedWords::tr("no such requirement");
        return words;
    }
    const Requirement& row = *side->requirement;
    words.verdict = isAsked(*side) ? verdictWords(side->verdict)
                                   : ChangedWords::tr("does not apply to this door");
    words.text = rowWords(row);
    if (const QString limit = limitWords(row); !limit.isEmpty())
        words.limit = ChangedWords::tr("Limit: %1").arg(limit);
    words.citation = citationWords(row);
    if (!plainText(row.cite).contains(plainText(row.issuer)))
        words.citation += QStringLiteral(", ") + plainText(row.issuer);
    if (side->reason.kind != ReasonKind::NotAsked)
        words.why = reasonWords(side->reason);
    if (const QString measured = measuredWords(*side); !measured.isEmpty())
        words.why = measured + QStringLiteral(": ") + words.why;
    return words;
}

} // namespace latchround::ui
