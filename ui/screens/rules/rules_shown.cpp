#include "ui/screens/rules/rules_shown.h"

#include <algorithm>

#include <QCoreApplication>
#include <QStringList>

#include "ui/words/catalogue_words.h"
#include "ui/words/due_words.h"
#include "ui/words/grade_words.h"

namespace latchround::ui {

namespace {

struct RulesShownWords {
    Q_DECLARE_TR_FUNCTIONS(RulesScreen)
};

TwoLineRow groupHeading(const QString& words) {
    TwoLineRow heading;
    heading.name = words;
    return heading;
}

TwoLineRow lineFrom(const QString& key, const QString& name, QStringList details) {
    details.removeAll(QString());
    TwoLineRow line;
    line.key = key;
    line.name = name;
    line.detail = details.join(QStringLiteral(" · "));
    line.spoken = QStringList{line.name, line.detail}.join(QStringLiteral(", "));
    return line;
}

bool hasAllWords(const QString& text, const QString& words) {
    const QStringList wanted = words.split(QLatin1Char(' '), Qt::SkipEmptyParts);
    return std::ranges::all_of(
        wanted, [&](const QString& word) { return text.contains(word, Qt::CaseInsensitive); });
}

QString searched(const Requirement& row) {
    QStringList text{rowWords(row), askedWords(row)};
    for (const std::string* part : {&row.id, &row.cite, &row.edition, &row.issuer})
        text << QString::fromStdString(*part);
    for (const Requirement& variant : row.variants)
        text << rowWords(variant) << QString::fromStdString(variant.cite)
             << QString::fromStdString(variant.edition);
    return text.join(QLatin1Char(' '));
}

QString searched(const Upkeep& task) {
    return QStringList{upkeepWords(task), QString::fromStdString(task.id),
                       QString::fromStdString(task.cite), QString::fromStdString(task.edition)}
        .join(QLatin1Char(' '));
}

} // namespace

RulesShown::RulesShown(const VesselSession& session, const QString& door)
    : m_catalogue(session.catalogue())
    , m_vessel(session.arrangement().particulars)
    , m_door(door) {
    const Arrangement& arrangement = session.arrangement();
    const Door* registered = findDoor(arrangement, door.toStdString());
    if (!registered) {
        m_door.clear();
        m_aboard = rulesAboard(m_catalogue, arrangement);
        return;
    }
    const GradedDoor* shown = session.door(door);
    m_at_door = shown ? rulesAtDoor(*shown, arrangement.particulars)
                      : rulesAtDoor(asRegistered(arrangement, *registered, m_catalogue),
                                    arrangement.particulars);
}

RulesShown::Here RulesShown::here(std::size_t row) const {
    if (row < m_at_door.size())
        return {m_at_door[row].asked != Asked::No, askedTitle(m_at_door[row])};
    if (row < m_aboard.size())
        return {m_aboard[row].isAsked(), askedCountWords(m_aboard[row])};
    return {};
}

std::optional<std::size_t> RulesShown::indexOf(const QString& id) const {
    const auto found = std::ranges::find(m_catalogue.rows, id.toStdString(), &Requirement::id);
    return found == m_catalogue.rows.end()
               ? std::nullopt
               : std::optional(std::size_t(found - m_catalogue.rows.begin()));
}

const Upkeep* RulesShown::upkeepOf(const QString& id) const {
    const auto found = std::ranges::find(m_catalogue.upkeep, id.toStdString(), &Upkeep::id);
    return found == m_catalogue.upkeep.end() ? nullptr : &*found;
}

bool RulesShown::isAsked(const QString& id) const {
    const auto row = indexOf(id);
    return !row || here(*row).is_asked;
}

TwoLineRow RulesShown::line(std::size_t index) const {
    const Requirement& row = m_catalogue.rows[index];
    const Requirement& in_force = index < m_at_door.size() ? *m_at_door[index].in_force : row;
    return lineFrom(QString::fromStdString(row.id), rowWords(in_force),
                    {citeWords(in_force), figureOf(in_force), here(index).words});
}

std::vector<TwoLineRow> RulesShown::upkeepLines(const QString& words) const {
    std::vector<TwoLineRow> lines;
    for (const Upkeep& task : m_catalogue.upkeep) {
        if (!hasAllWords(searched(task), words))
            continue;
        if (lines.empty())
            lines.push_back(groupHeading(RulesShownWords::tr("Maintenance")));
        lines.push_back(lineFrom(QString::fromStdString(task.id), upkeepWords(task),
                                 {QString::fromStdString(task.cite), periodWords(task.every)}));
    }
    return lines;
}

std::vector<TwoLineRow> RulesShown::lines(bool all, const QString& words) const {
    std::vector<TwoLineRow> lines;
    const QString texts = RulesShownWords::tr("The texts that were read");
    if (hasAllWords(texts, words))
        lines.push_back(lineFrom(QString::fromLatin1(rule_texts_line), texts,
                                 {RulesShownWords::tr("editions, dates, and what was not read")}));
    for (const Step step : {Step::Look, Step::Release, Step::Function}) {
        bool has_heading = false;
        for (std::size_t i = 0; i < m_catalogue.rows.size(); ++i) {
            const Requirement& row = m_catalogue.rows[i];
            if (row.step != step || !(all || here(i).is_asked) ||
                !hasAllWords(searched(row), words))
                continue;
            if (!has_heading)
                lines.push_back(groupHeading(stepTitle(step)));
            has_heading = true;
            lines.push_back(line(i));
        }
    }
    if (all || m_door.isEmpty())
        for (TwoLineRow& upkeep : upkeepLines(words))
            lines.push_back(std::move(upkeep));
    return lines;
}

QString RulesShown::title(const QString& id) const {
    if (id == QLatin1String(rule_texts_line))
        return RulesShownWords::tr("The texts that were read");
    if (const auto row = indexOf(id))
        return rowWords(m_catalogue.rows[*row]);
    const Upkeep* task = upkeepOf(id);
    return task ? upkeepWords(*task) : QString();
}

std::vector<RulePart> RulesShown::parts(const QString& id) const {
    std::vector<RulePart> parts;
    if (id == QLatin1String(rule_texts_line))
        return textParts(m_catalogue, &m_vessel);
    const auto row = indexOf(id);
    if (!row) {
        const Upkeep* task = upkeepOf(id);
        return task ? upkeepParts(*task, m_catalogue, &m_vessel) : parts;
    }
    if (*row < m_at_door.size())
        parts.push_back(atDoorPart(m_at_door[*row], m_catalogue.rows[*row], m_door));
    else if (*row < m_aboard.size())
        parts.push_back(aboardPart(m_aboard[*row]));
    for (RulePart& part : rowParts(m_catalogue.rows[*row], m_catalogue, &m_vessel))
        parts.push_back(std::move(part));
    return parts;
}

} // namespace latchround::ui
