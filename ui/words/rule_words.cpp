#include "ui/words/rule_words.h"

#include <algorithm>

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>

#include "core/requirement/condition_phrase.h"
#include "ui/words/catalogue_words.h"
#include "ui/words/door_words.h"
#include "ui/words/due_words.h"
#include "ui/words/grade_words.h"
#include "ui/words/phrase_words.h"

namespace latchround::ui {

namespace {

struct RuleWords {
    Q_DECLARE_TR_FUNCTIONS(RuleWords)
};

const QString semicolon = QStringLiteral("; ");

QString percentOf(double part) {
    return QLocale().toString(100 * part, 'g', 3);
}

QString checkWords(const Requirement& row) {
    switch (row.check) {
    case CheckKind::Seen:
        return RuleWords::tr("asked at the door");
    case CheckKind::SeenBothSides:
        return RuleWords::tr("asked at the door, on each side");
    case CheckKind::ClassAtLeast:
        return RuleWords::tr("class of the door compared with that of its boundary");
    case CheckKind::PlateAgrees:
        return RuleWords::tr("plate on the door compared with the register");
    case CheckKind::WithinBand:
    case CheckKind::AtMost:
    case CheckKind::AtLeast:
    case CheckKind::Order:
        break;
    }
    return {};
}

QString shownByWords(Source source) {
    switch (source) {
    case Source::None:
        break;
    case Source::Gauge:
        return RuleWords::tr("measured, with the step of the instrument taken into account");
    case Source::AnyRun:
        return RuleWords::tr("shown by a complete run");
    case Source::RemoteRun:
        return RuleWords::tr("shown by a run released from the control station");
    case Source::LocalRuns:
        return RuleWords::tr("shown by runs released at the door, from each side");
    case Source::AlarmMark:
        return RuleWords::tr("shown by a run in which the alarm was marked");
    case Source::ClosingTime:
        return RuleWords::tr("timed from first movement to shut");
    case Source::ClosingRate:
        return RuleWords::tr("clear opening divided by the time from first movement to shut");
    case Source::AlarmLead:
        return RuleWords::tr("timed from the alarm to the first movement");
    case Source::AlarmAfterShut:
        return RuleWords::tr("order of the marks: shut, then alarm off");
    }
    return {};
}

QString howWords(const Requirement& row) {
    QStringList parts{checkWords(row), shownByWords(row.source)};
    if (row.incline_deg)
        parts << RuleWords::tr("against an inclination of %1°")
                     .arg(QLocale().toString(*row.incline_deg, 'g', 3));
    if (row.upright)
        parts << RuleWords::tr("ship upright: with heel, a time is advice only");
    if (row.tells)
        parts << RuleWords::tr("the answer says what the door is; neither answer is a fault");
    parts.removeAll(QString());
    return parts.join(semicolon);
}

QString approximateWords(const Requirement& row) {
    return row.approximate
               ? RuleWords::tr("the text says so: up to %1 % outside the limits on the slow side, "
                               "%2 % on the fast side, the inspector decides (margins of our own "
                               "choice)")
                     .arg(percentOf(row.approximate->slow), percentOf(row.approximate->fast))
               : QString();
}

QString shipsWords(const Requirement& row) {
    QStringList parts{row.regimes.empty() ? RuleWords::tr("every ship")
                                          : phraseWords(shipsPhrase(row.regimes))};
    if (!row.advises.empty())
        parts << RuleWords::tr("advice for: %1").arg(phraseWords(shipsPhrase(row.advises)));
    return parts.join(semicolon);
}

QString conditionsWords(const std::vector<DoorCondition>& conditions) {
    return phraseWords(conditionsPhrase(conditions));
}

/// "answered no: Does the ...?"
QString answerWords(const char* answered, const std::string& id, const Catalogue& catalogue) {
    if (id.empty())
        return {};
    const Requirement* other = findRequirement(catalogue, id);
    return RuleWords::tr(answered).arg(other ? askedWords(*other) : QString::fromStdString(id));
}

QString unlessWords(const Requirement& row, const Catalogue& catalogue) {
    QStringList parts;
    for (const std::string& id : row.unless_yes)
        parts << answerWords(QT_TRANSLATE_NOOP("RuleWords", "answered yes: %1"), id, catalogue);
    parts << answerWords(QT_TRANSLATE_NOOP("RuleWords", "answered no: %1"), row.unless_no,
                         catalogue)
          << answerWords(QT_TRANSLATE_NOOP("RuleWords", "answered n/a: %1"), row.unless_na,
                         catalogue);
    parts.removeAll(QString());
    return parts.join(semicolon);
}

QString standingWords(Status status, const std::string& issuer) {
    return status == Status::Usage || issuer.empty()
               ? statusWords(status)
               : RuleWords::tr("%1; a rule of %2")
                     .arg(statusWords(status), QString::fromStdString(issuer));
}

class Lines {
public:
    void add(const QString& name, const QString& words) {
        if (!words.isEmpty())
            m_lines.push_back({name, words});
    }
    void addText(const std::string& cite, const std::string& edition, Status status,
                 const std::string& issuer) {
        if (status != Status::Usage)
            add(RuleWords::tr("Text"), QString::fromStdString(cite));
        add(RuleWords::tr("Edition"), QString::fromStdString(edition));
        add(RuleWords::tr("Source"), standingWords(status, issuer));
    }
    std::vector<RuleLine> all() && { return std::move(m_lines); }

private:
    std::vector<RuleLine> m_lines;
};

/// Of the row or a variant alike.
std::vector<RuleLine> linesOf(const Requirement& row, const Catalogue& catalogue) {
    Lines lines;
    lines.add(RuleWords::tr("Limit"), figureOf(row));
    lines.add(RuleWords::tr("Approximate"), approximateWords(row));
    lines.add(RuleWords::tr("Applies to"),
              row.any_of.empty() ? RuleWords::tr("every door") : conditionsWords(row.any_of));
    lines.add(RuleWords::tr("Exempt"), conditionsWords(row.none_of));
    lines.add(RuleWords::tr("Does not apply where"), unlessWords(row, catalogue));
    lines.add(RuleWords::tr("Ships"), shipsWords(row));
    lines.add(RuleWords::tr("Dates"), phraseWords(datesPhrase(row)));
    lines.add(RuleWords::tr("Other dates"), phraseWords(otherDatesPhrase(row)));
    lines.add(RuleWords::tr("Open point"), catalogueWords(row.left_open));
    lines.add(RuleWords::tr("No open point where"),
              answerWords(QT_TRANSLATE_NOOP("RuleWords", "answered no: %1"), row.open_unless_no,
                          catalogue));
    lines.add(RuleWords::tr("n/a allowed where"), conditionsWords(row.na_where));
    lines.add(RuleWords::tr("Checked by"), howWords(row));
    lines.add(RuleWords::tr("Severity"), severityWords(row.severity));
    lines.addText(row.cite, row.edition, row.status, row.issuer);
    return std::move(lines).all();
}

/// What stands in the heading is not said again.
bool isOfHeading(const RuleLine& line) {
    return line.name == RuleWords::tr("Applies to") || line.name == RuleWords::tr("Ships") ||
           line.name == RuleWords::tr("Dates");
}

RulePart variantPart(const Requirement& variant, const Requirement& row,
                     const Catalogue& catalogue) {
    const QString where = phraseWords(variantPhrase(variant, row));
    RulePart part{where.isEmpty() ? RuleWords::tr("Instead, at every door")
                                  : RuleWords::tr("Instead, where: %1").arg(where),
                  {}};
    if (variant.words != row.words)
        part.lines.push_back({RuleWords::tr("Requirement"), rowWords(variant)});
    if (askedWords(variant) != askedWords(row) && !variant.question.empty())
        part.lines.push_back({RuleWords::tr("Question"), askedWords(variant)});
    const std::vector<RuleLine> of_row = linesOf(row, catalogue);
    const bool of_its_dates = hasDatesOfItsOwn(variant, row);
    for (RuleLine& line : linesOf(variant, catalogue))
        if (!isOfHeading(line) && !(of_its_dates && line.name == RuleWords::tr("Other dates")) &&
            std::ranges::find(of_row, line) == of_row.end())
            part.lines.push_back(std::move(line));
    if (part.lines.empty())
        part.lines.push_back({RuleWords::tr("Says"), RuleWords::tr("the same as the requirement")});
    return part;
}

QString doorList(const std::vector<const Door*>& doors) {
    constexpr std::size_t most = 12;
    QStringList numbers;
    for (std::size_t i = 0; i < doors.size() && i < most; ++i)
        numbers << QString::fromStdString(doors[i]->number);
    QString words = numbers.join(QStringLiteral(", "));
    return doors.size() > most ? RuleWords::tr("%1 and %2 more").arg(words).arg(doors.size() - most)
                               : words;
}

QString datesWords(const Profile& profile) {
    Requirement dates;
    dates.keel_from = profile.built_from;
    dates.keel_before = profile.built_before;
    return phraseWords(datesPhrase(dates));
}

RulePart textPart(const Profile& profile) {
    Lines lines;
    lines.add(RuleWords::tr("Ships"), catalogueWords(profile.ships));
    lines.add(RuleWords::tr("Dates"), datesWords(profile));
    lines.add(RuleWords::tr("Texts read"), catalogueWords(profile.read_in));
    lines.add(RuleWords::tr("Not read"), catalogueWords(profile.not_read));
    lines.add(RuleWords::tr("Precedence"), catalogueWords(profile.deference));
    return {QString::fromStdString(profile.edition), std::move(lines).all()};
}

bool standsForShip(const Requirement& variant, const Particulars& vessel) {
    return variant.regimes.empty() ||
           std::ranges::find(variant.regimes, vessel.regime) != variant.regimes.end();
}

QString capital(QString words) {
    words[0] = words[0].toUpper();
    return words;
}

} // namespace

QString stepTitle(Step step) {
    switch (step) {
    case Step::Look:
        return RuleWords::tr("Look");
    case Step::Release:
        return RuleWords::tr("Release");
    case Step::Function:
        break;
    }
    return RuleWords::tr("Function");
}

QString deferenceWords(const Catalogue& catalogue, const Particulars* vessel) {
    QStringList sentences;
    const auto add = [&sentences](const Profile& profile) {
        sentences << catalogueWords(profile.deference);
    };
    if (vessel)
        for (const Profile* profile : profilesFor(catalogue, *vessel))
            add(*profile);
    else
        std::ranges::for_each(catalogue.profiles, add);
    sentences.removeAll(QString());
    sentences.removeDuplicates();
    return sentences.join(QLatin1Char(' '));
}

QString figureOf(const Requirement& row) {
    return row.check == CheckKind::Order ? QString() : limitWords(row);
}

std::vector<RulePart> rowParts(const Requirement& row, const Catalogue& catalogue,
                               const Particulars* vessel) {
    std::vector<RulePart> parts{{{}, linesOf(row, catalogue)}};
    const bool any_ship = !vessel || !speaksTo(row, *vessel);
    for (const Requirement& variant : row.variants)
        if (any_ship || standsForShip(variant, *vessel))
            parts.push_back(variantPart(variant, row, catalogue));
    return parts;
}

std::vector<RulePart> upkeepParts(const Upkeep& task, const Catalogue& catalogue,
                                  const Particulars* vessel) {
    Lines lines;
    lines.add(RuleWords::tr("Interval"), periodWords(task.every));
    lines.add(RuleWords::tr("Doors"), task.any_of.empty() ? RuleWords::tr("no door in particular")
                                                          : conditionsWords(task.any_of));
    QStringList covers;
    for (const std::string& id : task.covers)
        if (const Requirement* row = findRequirement(catalogue, id);
            row && (!vessel || speaksTo(*row, *vessel)))
            covers << rowWords(*row);
    lines.add(RuleWords::tr("Covers"), covers.join(semicolon));
    lines.addText(task.cite, task.edition, task.status, {});
    return {{{}, std::move(lines).all()}};
}

std::vector<RulePart> textParts(const Catalogue& catalogue, const Particulars* vessel) {
    std::vector<RulePart> parts;
    QStringList others;
    const std::vector<const Profile*> speaking =
        vessel ? profilesFor(catalogue, *vessel) : std::vector<const Profile*>{};
    for (const Profile& profile : catalogue.profiles)
        if (!vessel || std::ranges::find(speaking, &profile) != speaking.end())
            parts.push_back(textPart(profile));
        else if (const QString edition = QString::fromStdString(profile.edition);
                 !others.contains(edition))
            others << edition;
    if (!catalogue.flag.empty())
        parts.push_back({RuleWords::tr("Flag rules applied"),
                         {{RuleWords::tr("Rules of"), QString::fromStdString(catalogue.flag)}}});
    if (!others.isEmpty())
        parts.push_back({RuleWords::tr("Not for this vessel"),
                         {{RuleWords::tr("Other texts"), others.join(semicolon)}}});
    return parts;
}

QString askedTitle(const RuleAtDoor& rule) {
    switch (rule.asked) {
    case Asked::Yes:
        return RuleWords::tr("binding here");
    case Asked::Judge:
        return RuleWords::tr("on failure the inspector decides");
    case Asked::Advice:
        return RuleWords::tr("advice only here");
    case Asked::No:
        break;
    }
    return RuleWords::tr("does not apply here");
}

QString becauseWords(const RuleAtDoor& rule) {
    return rule.excused ? reasonWords(*rule.excused) : phraseWords(rule.because);
}

RulePart atDoorPart(const RuleAtDoor& rule, const Requirement& row, const QString& door) {
    Lines lines;
    lines.add(capital(askedTitle(rule)), becauseWords(rule));
    if (rule.in_force != &row && rule.asked != Asked::No)
        lines.add(RuleWords::tr("In force here"), phraseWords(variantPhrase(*rule.in_force, row)));
    return {RuleWords::tr("At door %1").arg(door), std::move(lines).all()};
}

RulePart aboardPart(const RuleAboard& rule) {
    Lines lines;
    const auto add = [&](const QString& name, const std::vector<const Door*>& doors) {
        if (!doors.empty())
            lines.add(name, RuleWords::tr("%1: %2").arg(doorCountWords(int(doors.size())),
                                                        doorList(doors)));
    };
    add(RuleWords::tr("Binding at"), rule.binding);
    add(RuleWords::tr("On failure the inspector decides at"), rule.left_to_inspector);
    add(RuleWords::tr("Advice only at"), rule.advised);
    if (!rule.isAsked())
        lines.add(RuleWords::tr("Does not apply"), phraseWords(rule.because));
    return {RuleWords::tr("Aboard this vessel"), std::move(lines).all()};
}

QString askedCountWords(const RuleAboard& rule) {
    QStringList parts;
    const auto add = [&](const QString& words, const std::vector<const Door*>& doors) {
        if (!doors.empty())
            parts << words.arg(doorCountWords(int(doors.size())));
    };
    add(RuleWords::tr("binding at %1"), rule.binding);
    add(RuleWords::tr("inspector decides at %1"), rule.left_to_inspector);
    add(RuleWords::tr("advice at %1"), rule.advised);
    return parts.isEmpty() ? RuleWords::tr("does not apply") : parts.join(QStringLiteral(", "));
}

} // namespace latchround::ui
