#include "app/headless/register_commands.h"

#include <QFile>
#include <nlohmann/json.hpp>

#include "app/exchange/durable_file.h"
#include "app/exchange/fact_json.h"
#include "app/exchange/file_bytes.h"
#include "app/exchange/register_csv.h"
#include "app/headless/json_answer.h"
#include "app/headless/opened_register.h"
#include "core/error/command_errors.h"

namespace latchround::headless {

namespace {

constexpr std::uintmax_t largest_register_bytes = 64u * 1024 * 1024;
constexpr std::uintmax_t largest_history_bytes = 1024u * 1024 * 1024;

Checked<Arrangement> arrangementIn(const std::string& csv) {
    const Result<std::string> bytes = bytesOf(csv, largest_register_bytes);
    if (!bytes)
        return refused(bytes.error());
    Checked<Arrangement> arrangement = arrangementFromCsv(*bytes, csv);
    if (!arrangement)
        return arrangement;
    if (const Result<> done =
            refuseForeignVessel(RegisterKind::Vessel, arrangement->particulars.number, csv);
        !done)
        return refused(done.error());
    return arrangement;
}

Checked<std::vector<Fact>> factsIn(const std::optional<std::string>& history) {
    if (!history)
        return std::vector<Fact>{};
    const Result<std::string> bytes = bytesOf(*history, largest_history_bytes);
    if (!bytes)
        return refused(bytes.error());
    return factsFromJsonLines(*bytes, *history);
}

void addCounts(OrderedJson& answer, const Arrangement& arrangement) {
    answer["vessel"] = arrangement.particulars.name;
    answer["decks"] = arrangement.decks.size();
    answer["zones"] = arrangement.zones.size();
    answer["boundaries"] = arrangement.boundaries.size();
    answer["doors"] = arrangement.doors.size();
}

Result<> takenIn(const std::string& path, const Arrangement& arrangement,
                 const std::vector<Fact>& facts, SqliteRegister::Ending ending) {
    auto file = SqliteRegister::open(QFile::decodeName(QByteArray::fromStdString(path)));
    if (!file)
        return tl::unexpected(file.error());
    return (*file)->takeIn(arrangement, facts, now(), ending);
}

} // namespace

Answer checkRegisterFile(const std::string& csv) {
    const Checked<Arrangement> arrangement = arrangementIn(csv);
    if (!arrangement)
        return tl::unexpected(arrangement.error());
    OrderedJson answer;
    answer["file"] = csv;
    addCounts(answer, *arrangement);
    return inLines(answer);
}

Answer importRegister(const Import& import) {
    const Checked<Arrangement> arrangement = arrangementIn(import.csv);
    const Checked<std::vector<Fact>> facts = factsIn(import.history);
    Errors faults;
    if (!arrangement)
        faults = arrangement.error();
    if (!facts)
        faults.insert(faults.end(), facts.error().begin(), facts.error().end());
    if (!faults.empty())
        return tl::unexpected(faults);

    const PlaceBefore before(import.into);
    const Result<> done =
        takenIn(import.into, *arrangement, *facts,
                import.dry_run ? SqliteRegister::Ending::TryOnly : SqliteRegister::Ending::Keep);
    if (!done || import.dry_run)
        before.takeAwayWhatWasBegun();
    if (!done)
        return refused(done.error());
    OrderedJson answer;
    answer["file"] = import.csv;
    answer["register"] = import.into;
    addCounts(answer, *arrangement);
    answer["facts"] = facts->size();
    answer["dry_run"] = import.dry_run;
    return inLines(answer);
}

Answer exportRegister(const Export& given) {
    const auto& [path, to, replace] = given;
    const auto opened = openedRegister(path);
    if (!opened)
        return refused(opened.error());
    if (opened->arrangement.particulars.name.empty() && opened->arrangement.doors.empty())
        return refused({path, errors::no_vessel_yet()});
    const std::string csv = csvFrom(opened->arrangement);
    if (to == "-")
        return csv;
    if (const Result<> own = refuseOverRegister(to, path); !own)
        return refused(own.error());
    if (const Result<> done = writeDurably(to, std::as_bytes(std::span(csv)),
                                           replace ? IfThere::Replace : IfThere::Refuse);
        !done)
        return refused(done.error());
    OrderedJson answer;
    answer["register"] = path;
    answer["file"] = to;
    addCounts(answer, opened->arrangement);
    return inLines(answer);
}

} // namespace latchround::headless
