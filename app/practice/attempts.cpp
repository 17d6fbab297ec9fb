#include "app/practice/attempts.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <span>

#include <QDateTime>
#include <QDir>
#include <QFile>
#include <QUuid>
#include <nlohmann/json.hpp>

#include "app/exchange/durable_file.h"
#include "app/exchange/file_bytes.h"
#include "app/exchange/json_text.h"
#include "app/practice/practice_folder.h"
#include "core/error/exercise_errors.h"
#include "core/evidence/moment_text.h"
#include "core/phrase/places.h"
#include "core/reading/json_object.h"
#include "core/reading/written_json.h"

namespace latchround::practice {

namespace {

using OrderedJson = nlohmann::ordered_json;

constexpr int attempt_version = 1;
constexpr std::uintmax_t most_attempt_bytes = 4u << 20;
constexpr int most_counted = 100'000;

int count(JsonObject& object, const char* key, int most = most_counted) {
    return static_cast<int>(object.wholeNumber(key, Need::Required, 0, most).value_or(0));
}

std::vector<ThumbTrial> delaysIn(JsonObject& object) {
    std::vector<ThumbTrial> delays;
    for (JsonObject& entry : object.objects("delays", Need::Required)) {
        ThumbTrial trial;
        trial.cue = entry.word<Cue>("cue", Need::Required, cueWords).value_or(trial.cue);
        trial.delay_s = entry.number("delay_s", Need::Required).value_or(0);
        entry.complainOfTheRest();
        delays.push_back(trial);
    }
    return delays;
}

} // namespace

std::string jsonFrom(const Attempt& attempt) {
    OrderedJson file;
    file["attempt"] = attempt_version;
    file["ended"] = rfc3339Text(attempt.ended);
    file["person"] = attempt.person;
    file["exercise"] = attempt.exercise;
    file["title"] = attempt.title;
    file["level"] = word(attempt.level);
    file["seed"] = attempt.seed;
    file["percent"] = attempt.percent;
    file["pass_percent"] = attempt.pass_percent;
    file["found"] = attempt.found;
    file["missed"] = attempt.missed;
    file["absent"] = attempt.absent;
    file["endangered"] = attempt.endangered;
    file["cautions_untrue"] = attempt.cautions_untrue;
    file["delays"] = OrderedJson::array();
    for (const ThumbTrial& trial : attempt.delays)
        file["delays"].push_back({{"cue", word(trial.cue)}, {"delay_s", trial.delay_s}});
    return inLines(file);
}

Checked<Attempt> attemptFrom(std::string_view json, const std::string& where) {
    const Checked<Json> file = latchround::jsonFrom(json, where);
    if (!file)
        return tl::unexpected(file.error());
    JsonFaults faults(where);
    JsonObject object(*file, "", faults);
    Attempt attempt;
    static_cast<void>(
        object.wholeNumber("attempt", Need::Required, attempt_version, attempt_version));
    const std::string ended = object.text("ended", Need::Required).value_or("");
    if (const auto moment = momentFrom(ended))
        attempt.ended = *moment;
    else if (!ended.empty())
        object.complain("ended", errors::not_a_moment());
    attempt.person = object.text("person", Need::Required).value_or("");
    attempt.exercise = object.text("exercise", Need::Required).value_or("");
    attempt.title = object.text("title", Need::Required).value_or("");
    attempt.level = object.word<Level>("level", Need::Required, levelWords).value_or(attempt.level);
    attempt.seed = static_cast<std::uint32_t>(
        object.wholeNumber("seed", Need::Required, 0, std::numeric_limits<std::uint32_t>::max())
            .value_or(0));
    attempt.percent = count(object, "percent", 100);
    attempt.pass_percent = count(object, "pass_percent", 100);
    attempt.found = count(object, "found");
    attempt.missed = count(object, "missed");
    attempt.absent = count(object, "absent");
    attempt.endangered = count(object, "endangered");
    attempt.cautions_untrue = count(object, "cautions_untrue");
    attempt.delays = delaysIn(object);
    object.complainOfTheRest();
    if (!faults.empty())
        return tl::unexpected(faults.take());
    return attempt;
}

AttemptsRead attempts() {
    AttemptsRead all;
    const QDir folder(attemptFolder());
    for (const QString& name :
         folder.entryList({QStringLiteral("*.json")}, QDir::Files, QDir::Name)) {
        const auto bytes = bytesOf(pathOf(folder.filePath(name)), most_attempt_bytes);
        auto attempt = bytes ? attemptFrom(*bytes, name.toStdString())
                             : Checked<Attempt>(tl::unexpect, Errors{bytes.error()});
        if (attempt)
            all.attempts.push_back(std::move(*attempt));
        else
            all.spoiled.push_back(attempt.error().front());
    }
    std::ranges::stable_sort(all.attempts, {},
                             [](const Attempt& attempt) { return attempt.ended.utc_ms; });
    return all;
}

Result<> keepAttempt(const Attempt& attempt) {
    const bool finite = std::ranges::all_of(
        attempt.delays, [](const ThumbTrial& trial) { return std::isfinite(trial.delay_s); });
    if (!finite)
        return tl::unexpected(Error{place::attempt(), errors::delay_not_a_number()});
    const QDateTime ended = QDateTime::fromMSecsSinceEpoch(attempt.ended.utc_ms, Qt::UTC);
    const QString name = ended.toString(QStringLiteral("yyyyMMdd-HHmmss-zzz-")) +
                         QUuid::createUuid().toString(QUuid::Id128).left(8) +
                         QStringLiteral(".json");
    const std::string json = jsonFrom(attempt);
    return writeDurably(pathOf(QDir(attemptFolder()).filePath(name)),
                        std::as_bytes(std::span(json)), IfThere::Refuse);
}

} // namespace latchround::practice
