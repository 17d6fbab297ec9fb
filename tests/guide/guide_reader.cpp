#include "tests/guide/guide_reader.h"

#include <QFile>
#include <QRegularExpression>

namespace latchround::guide {

namespace {

Verb verbOf(const QString& word) {
    if (word == QLatin1String("mark"))
        return Verb::Mark;
    if (word == QLatin1String("choose"))
        return Verb::Choose;
    if (word == QLatin1String("type"))
        return Verb::Type;
    if (word == QLatin1String("press"))
        return Verb::Press;
    if (word == QLatin1String("see"))
        return Verb::See;
    return Verb::Touch;
}

int wordsIn(const QString& line) {
    return int(line.split(QLatin1Char(' '), Qt::SkipEmptyParts).size());
}

Step stepFrom(int line, const QString& text) {
    static const QRegularExpression telling(
        QStringLiteral(
            R"(\b(touch|mark|choose|type|press|see)\s+(?:\*\*(.+?)\*\*|\*(.+?)\*|`(.+?)`))"
            R"((?:\s+beside\s+\*(.+?)\*)?(?:\s+and name the file\s+`(.+?)`)?)"
            R"((?:\s+after\s+([0-9.]+)\s*s\b)?)"),
        QRegularExpression::CaseInsensitiveOption);
    static const QRegularExpression bold(QStringLiteral(R"(\*\*(.+?)\*\*)"));
    Step step{line, text, {}, {}};
    QStringList taken;
    for (auto each = telling.globalMatch(text); each.hasNext();) {
        const QRegularExpressionMatch match = each.next();
        Action action;
        action.verb = verbOf(match.captured(1).toLower());
        for (const int group : {2, 3, 4})
            if (!match.captured(group).isEmpty())
                action.what = match.captured(group);
        action.beside = match.captured(5);
        action.file = match.captured(6);
        if (!match.captured(7).isEmpty())
            action.after_s = match.captured(7).toDouble();
        taken << match.captured(2);
        step.actions.push_back(action);
    }
    for (auto each = bold.globalMatch(text); each.hasNext();)
        if (const QString words = each.next().captured(1); !taken.removeOne(words))
            step.loose << words;
    return step;
}

} // namespace

Guide guideFrom(const QString& path) {
    Guide guide;
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return guide;
    static const QRegularExpression numbered(QStringLiteral(R"(^\d+\.\s+(.*)$)"));
    const QStringList lines = QString::fromUtf8(file.readAll()).split(QLatin1Char('\n'));
    for (int i = 0; i < lines.size(); ++i) {
        guide.words += wordsIn(lines[i]);
        const QRegularExpressionMatch match = numbered.match(lines[i]);
        if (!match.hasMatch())
            continue;
        const int first = i;
        QString text = match.captured(1);
        // A step goes on over indented lines.
        while (i + 1 < lines.size() && lines[i + 1].startsWith(QLatin1String("   "))) {
            ++i;
            guide.words += wordsIn(lines[i]);
            text += QLatin1Char(' ') + lines[i].trimmed();
        }
        guide.steps.push_back(stepFrom(first + 1, text));
    }
    return guide;
}

} // namespace latchround::guide
