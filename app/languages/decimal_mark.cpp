#include "app/languages/decimal_mark.h"

#include <QRegularExpression>

namespace latchround {

QString withDecimalMark(QString translated, const char* english, const QString& mark) {
    const QChar comma = QLatin1Char(',');
    if (mark == comma || !translated.contains(comma))
        return translated;
    // Neither "9.4.1.1.5", the number of a paragraph, nor the end of a sentence after a figure.
    static const QRegularExpression figure(
        QStringLiteral(R"((?<![\d.])([0-9]+)\.([0-9]+)(?!\.?\d))"));
    for (auto at = figure.globalMatch(QString::fromUtf8(english)); at.hasNext();) {
        const QRegularExpressionMatch each = at.next();
        const QRegularExpression written(QStringLiteral(R"((?<![\d.,])%1,%2(?![.,]?\d))")
                                             .arg(each.captured(1), each.captured(2)));
        translated.replace(written, each.captured(1) + mark + each.captured(2));
    }
    return translated;
}

} // namespace latchround
