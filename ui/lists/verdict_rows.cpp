#include "ui/lists/verdict_rows.h"

#include <QCoreApplication>

#include "ui/words/catalogue_words.h"
#include "ui/words/grade_words.h"
#include "ui/words/verdict_words.h"

namespace latchround::ui {

namespace {

struct VerdictRows {
    Q_DECLARE_TR_FUNCTIONS(latchround::ui::VerdictRows)
};

/// Words, measure, verdict, reason, limit, citation, in one breath.
QString spokenRow(const TwoLineRow& row) {
    QString spoken = row.name + QStringLiteral(", ") + row.detail;
    return spoken.replace(QStringLiteral(" · "), QStringLiteral(", "));
}

TwoLineRow verdictRow(const RowGrade& grade) {
    const Requirement& asked = *grade.requirement;
    TwoLineRow row;
    row.key = QString::fromStdString(asked.id);
    row.glyph = grade.verdict;
    row.name = rowWords(asked);
    if (const QString measured = measuredWords(grade); !measured.isEmpty())
        row.name += QStringLiteral(": ") + measured;
    row.detail = verdictWords(grade.verdict) + QStringLiteral(": ") + reasonWords(grade.reason);
    if (const QString limit = limitWords(asked); !limit.isEmpty())
        row.detail += QStringLiteral(" · ") + limit;
    row.detail += QStringLiteral(" · ") + citeWords(asked);
    row.spoken = spokenRow(row);
    row.spoken_help = VerdictRows::tr("press Return for the reason");
    return row;
}

} // namespace

std::vector<TwoLineRow> verdictRows(const std::vector<const RowGrade*>& rows) {
    std::vector<TwoLineRow> all;
    for (const RowGrade* grade : rows)
        if (grade != nullptr && grade->requirement != nullptr)
            all.push_back(verdictRow(*grade));
    return all;
}

} // namespace latchround::ui
