#include "app/headless/collect_command.h"

#include <algorithm>
#include <iostream>
#include <set>

#include <CLI/CLI.hpp>

#include "app/ashore/fleet.h"
#include "app/exchange/hex.h"
#include "app/headless/json_answer.h"
#include "core/error/ashore_errors.h"
#include "core/error/command_errors.h"
#include "ui/words/phrase_words.h"

namespace latchround::headless {

namespace {

std::string newWords(const Collected& collected) {
    if (collected.was_taken)
        return "imported before";
    const std::size_t facts = collected.added.facts;
    return facts == 1 ? "1 new entry" : std::to_string(facts) + " new entries";
}

FleetWatch watchOf(const std::vector<std::string>& files) {
    return {[&files](std::size_t done, const Collected* collected) {
                std::cerr << done << " of " << files.size() << ", "
                          << (collected ? collected->vessel + ": " + newWords(*collected)
                                        : files[done - 1] + ": refused")
                          << std::endl;
            },
            [](const Error& cut) {
                std::cerr << ui::inOneLine({cut.where, errors::tried_again(cut.what)}) << std::endl;
            }};
}

OrderedJson summaryOf(const std::string& database, const Fleet& fleet) {
    Added added;
    std::set<std::string> vessels;
    OrderedJson taken = OrderedJson::array();
    for (const auto& [file, brought] : fleet.taken) {
        added.facts += brought.added.facts;
        added.issues += brought.added.issues;
        added.photographs += brought.added.photographs;
        vessels.insert(brought.number);
        taken.push_back({{"file", file},
                         {"number", brought.number},
                         {"vessel", brought.vessel},
                         {"facts", brought.added.facts},
                         {"arrangements", brought.added.issues},
                         {"photographs", brought.added.photographs},
                         {"imported_before", brought.was_taken}});
    }
    OrderedJson summary;
    summary["database"] = database;
    summary["vessels"] = vessels.size();
    summary["new"] = {
        {"facts", added.facts}, {"arrangements", added.issues}, {"photographs", added.photographs}};
    summary["imported"] = std::move(taken);
    summary["refused"] = OrderedJson::array();
    for (const Error& error : fleet.refused)
        summary["refused"].push_back(ui::inOneLine(error));
    summary["not_reached"] = fleet.not_reached;
    return summary;
}

} // namespace

Answer collect(const CollectAsked& asked, const Catalogue& catalogue) {
    for (const std::string& key : asked.accept_keys)
        if (!bytesOfHex<32>(key))
            return refused({"--accept-key " + key, errors::key_not_in_hex()});
    const auto url = databaseUrlFrom(asked.into);
    if (!url)
        return refused(url.error());
    auto collector = Collector::open(*url, catalogue, asked.accept_keys);
    if (!collector)
        return refused(collector.error());
    Fleet fleet = collectFleet(*collector, asked.files, watchOf(asked.files));
    const std::string summary = inLines(summaryOf(url->shown(), fleet));
    if (!fleet.not_reached.empty())
        fleet.refused.push_back(
            {url->shown(),
             errors::files_not_reached(fleet.not_reached.size(), fleet.not_reached.front())});
    if (fleet.refused.empty())
        return summary;
    std::cout << summary << std::flush;
    return tl::unexpected(std::move(fleet.refused));
}

void addCollectCommand(CLI::App& program, CollectAsked& asked, std::function<Answer()>& command,
                       const Graded& graded) {
    CLI::App* take = program.add_subcommand("collect", "Import a fleet's handover files into "
                                                       "PostgreSQL");
    take->fallthrough()
        ->add_option("--into", asked.into, "postgresql://USER@HOST:PORT/DATABASE")
        ->required();
    take->add_option("FILE", asked.files, "handover files")->required();
    take->add_option("--accept-key", asked.accept_keys,
                     "new key of a device that used another one before, 64 hex digits; may be "
                     "repeated")
        ->allow_extra_args(false);
    take->callback([&asked, &command, graded] {
        command =
            graded([&asked](const Catalogue& catalogue) { return collect(asked, catalogue); });
    });
}

} // namespace latchround::headless
