// latchround-cli: the program's jobs from a shell. JSON on standard output, one line a fault on
// standard error; exit 0 when done, 2 when something given was wrong.
#include <exception>
#include <functional>
#include <iostream>
#include <memory>

#include <CLI/CLI.hpp>
#include <QFile>
#include <QFileInfo>
#include <QGuiApplication>
#include <QLocale>

#include "app/catalogue/catalogue_place.h"
#include "app/exchange/catalogue_file.h"
#include "app/headless/boundary_command.h"
#include "app/headless/collect_command.h"
#include "app/headless/compare_command.h"
#include "app/headless/figure_commands.h"
#include "app/headless/grade_command.h"
#include "app/headless/handover_command.h"
#include "app/headless/items_command.h"
#include "app/headless/paper_language.h"
#include "app/headless/practice_command.h"
#include "app/headless/register_commands.h"
#include "app/headless/report_command.h"
#include "app/headless/rules_command.h"
#include "app/headless/sample_command.h"
#include "app/headless/verify_command.h"
#include "app/headless/walkdown_command.h"
#include "app/vessels/vessel_folder.h"
#include "core/error/command_errors.h"
#include "ui/ink/typeface.h"
#include "ui/words/phrase_words.h"

namespace {

using namespace latchround;
using namespace latchround::headless;

constexpr int exit_done = 0;
constexpr int exit_refused = 2;

/// What was asked for on the command line.
struct Asked {
    std::vector<std::string> catalogue_files;
    std::optional<std::string> flag_rules;
    std::string register_path; ///< of the commands that grade a walkdown
    std::string file;
    Import import;
    Export give_out;
    Show show;
    Print print;
    ItemsAsked items;
    RulesAsked rules;
    CompareAsked compare;
    HandoverAsked handover;
    CollectAsked collect;
    PracticeAsked practice;
    DivisionAsked division;
    SampleAsked sample;
    TrendAsked trend;
    ConformityAsked conformity;
    std::function<headless::Answer()> command;
};

int fail(const Errors& faults) {
    for (const Error& fault : faults)
        std::cerr << ui::inOneLine(fault) << '\n';
    return exit_refused;
}

Checked<Catalogue> internationalCatalogue(const Asked& asked) {
    const std::string folder = QCoreApplication::applicationDirPath().toLocal8Bit().toStdString();
    if (!asked.catalogue_files.empty())
        return catalogueOfFiles({asked.catalogue_files.begin(), asked.catalogue_files.end()},
                                folder);
    auto shipped = shippedCatalogue(folder);
    if (!shipped)
        return tl::unexpected(shipped.error());
    if (shipped->notice)
        std::cerr << "note: " << ui::inOneLine(*shipped->notice) << '\n';
    return std::move(shipped->catalogue);
}

/// The flag's rules that were named, else those that lie beside the register.
std::optional<std::string> flagRulesFor(const Asked& asked) {
    if (asked.flag_rules || asked.register_path.empty())
        return asked.flag_rules;
    const QString beside =
        flagRulesPathFor(QFile::decodeName(QByteArray::fromStdString(asked.register_path)));
    return QFileInfo::exists(beside) ? std::optional(QFile::encodeName(beside).toStdString())
                                     : std::nullopt;
}

Checked<Catalogue> catalogueFor(const Asked& asked) {
    Checked<Catalogue> catalogue = internationalCatalogue(asked);
    const auto rules = flagRulesFor(asked);
    return catalogue && rules ? withFlagRulesOf(std::move(*catalogue), *rules)
                              : std::move(catalogue);
}

/// A command that grades: the catalogue is read first.
template <class Command>
std::function<headless::Answer()> graded(const Asked& asked, Command command) {
    return [&asked, command]() -> headless::Answer {
        const auto catalogue = catalogueFor(asked);
        if (!catalogue)
            return tl::unexpected(catalogue.error());
        return command(*catalogue);
    };
}

void addRegisterCommands(CLI::App& program, Asked& asked) {
    CLI::App* commands = program.add_subcommand("register", "A vessel's register of doors");
    commands->require_subcommand(1)->fallthrough();

    CLI::App* check = commands->add_subcommand("check", "Check a register file; changes nothing");
    check->fallthrough()->add_option("FILE", asked.file, "register as CSV")->required();
    check->callback([&] { asked.command = [&] { return checkRegisterFile(asked.file); }; });

    CLI::App* take = commands->add_subcommand("import", "Import a register");
    take->fallthrough()->add_option("FILE", asked.import.csv, "register as CSV")->required();
    take->add_option("--into", asked.import.into, "register file; created if absent")->required();
    take->add_option("--history", asked.import.history, "entries, one JSON object per line");
    take->add_flag("--dry-run", asked.import.dry_run, "check everything, change nothing");
    take->callback([&] { asked.command = [&] { return importRegister(asked.import); }; });

    CLI::App* give = commands->add_subcommand("export", "Export a register as CSV");
    give->fallthrough()->add_option("REGISTER", asked.give_out.path, "register file")->required();
    give->add_option("--to", asked.give_out.to, "CSV file, or - for standard output")->required();
    give->add_flag("--replace", asked.give_out.replace, "overwrite the file if it exists");
    give->callback([&] { asked.command = [&] { return exportRegister(asked.give_out); }; });
}

void addGradingCommands(CLI::App& program, Asked& asked) {
    CLI::App* grade = program.add_subcommand("grade", "Grade the doors in a JSON file");
    grade->fallthrough()->add_option("FILE", asked.file, "grade file")->required();
    grade->callback([&] {
        asked.command = graded(
            asked, [&](const Catalogue& catalogue) { return gradeFile(asked.file, catalogue); });
    });

    CLI::App* show = program.add_subcommand("walkdown", "Show the doors of a walkdown with "
                                                        "their verdicts");
    show->fallthrough()->add_option("REGISTER", asked.register_path, "register file")->required();
    show->add_option("--walkdown", asked.show.walkdown, "id; default: latest");
    show->add_flag("--json", asked.show.json, "JSON instead of a table");
    show->callback([&] {
        asked.command = graded(asked, [&](const Catalogue& catalogue) {
            asked.show.path = asked.register_path;
            return showWalkdown(asked.show, catalogue);
        });
    });
}

void addReportCommands(CLI::App& program, Asked& asked) {
    CLI::App* print = program.add_subcommand("report", "Write a document from a register");
    print->fallthrough()->add_option("REGISTER", asked.register_path, "register file")->required();
    print->add_option("--to", asked.print.to, "file to write")->required();
    print->add_option("--kind", asked.print.kind,
                      "survey, deficiency-list, work-list, door-record, blank-form or "
                      "rule-book; default: survey");
    print->add_option("--format", asked.print.format,
                      "pdf, csv or json; default: from the file's extension");
    print->add_option("--walkdown", asked.print.walkdown, "id; default: latest");
    print->add_option("--door", asked.print.door, "door number, for a door record or rule book");
    print->add_option("--by", asked.print.by, "name of the person creating it, as in the register");
    print->add_option("--language", asked.print.language, language_help);
    print->add_flag("--replace", asked.print.replace, "overwrite the file if it exists");
    print->add_flag("--practice", asked.print.practice, "mark every page as practice");
    print->callback([&] {
        asked.command = graded(asked, [&](const Catalogue& catalogue) {
            asked.print.path = asked.register_path;
            return printReport(asked.print, catalogue);
        });
    });

    CLI::App* items = program.add_subcommand("items", "List the open items of a register");
    items->fallthrough()->add_option("REGISTER", asked.register_path, "register file")->required();
    items->add_flag("--all", asked.items.all, "include closed and withdrawn items");
    items->add_flag("--json", asked.items.json, "JSON instead of a table");
    items->callback([&] {
        asked.command = graded(asked, [&](const Catalogue& catalogue) {
            asked.items.path = asked.register_path;
            return showItems(asked.items, catalogue);
        });
    });
}

void addCompareCommand(CLI::App& rules, Asked& asked) {
    CLI::App* compare = rules.add_subcommand(
        "compare", "Compare two catalogues; with --vessel, list the doors graded differently");
    CompareAsked& both = asked.compare;
    compare->fallthrough()
        ->add_option("A", both.before, "catalogue file, or folder of them")
        ->required();
    compare->add_option("B", both.now, "the same, or a flag's own rules to apply over A")
        ->required();
    compare->callback([&] {
        asked.command = [&] {
            both.register_path = asked.register_path;
            both.flag_rules = flagRulesFor(asked);
            both.executable_folder = QCoreApplication::applicationDirPath().toStdString();
            both.json = asked.rules.json;
            return compareRules(both);
        };
    });
}

void addVerifyCommand(CLI::App& program, Asked& asked) {
    CLI::App* verify = program.add_subcommand("verify", "Check the whole register");
    verify->fallthrough()->add_option("REGISTER", asked.file, "register file")->required();
    verify->callback([&] { asked.command = [&] { return verifyRegister(asked.file); }; });
}

void addBoundaryCommand(CLI::App& program, Asked& asked) {
    CLI::App* boundary = program.add_subcommand("boundary", "Fire class of the division "
                                                            "between two spaces");
    DivisionAsked& division = asked.division;
    boundary->fallthrough()
        ->add_option("--ship", division.ship,
                     "passenger-over-36, passenger-36-or-fewer, cargo, tanker, us-h or us-k")
        ->required();
    boundary
        ->add_option("--division", division.division,
                     "bulkhead, deck, zone-bulkhead, or zone-step for a deck that forms a "
                     "step of a zone")
        ->required();
    boundary->add_option("--spaces", division.spaces,
                         "categories of the two spaces, A,B; for a deck, A below and B above");
    boundary->add_flag("--sprinklers", division.sprinklers, "sprinklers on both sides");
    boundary->add_flag("--special-category", division.special_category,
                       "it adjoins a special category or ro-ro space");
    boundary->add_option("--built", division.built, "day the keel was laid, YYYY-MM-DD");
    boundary->callback([&] {
        asked.command = graded(asked, [&](const Catalogue& catalogue) {
            return boundaryClass(asked.division, catalogue.divisions);
        });
    });
}

void addSampleCommand(CLI::App& program, Asked& asked) {
    CLI::App* sample =
        program.add_subcommand("sample", "How many doors to test, and what the result proves");
    SampleAsked& plan = asked.sample;
    sample->fallthrough()->add_option("--doors", plan.doors, "number of doors")->required();
    sample->add_option("--defective", plan.defective, "claim: at most this many are defective")
        ->required();
    sample->add_option("--confidence", plan.confidence,
                       "confidence of the claim, 0 to 1; "
                       "default: 0.95");
    sample->add_option("--failed", plan.failed, "result: number failed");
    sample->add_option("--tested", plan.tested, "result: number tested");
    sample->callback([&] { asked.command = [&] { return planSample(asked.sample); }; });
}

void addFigureCommands(CLI::App& program, Asked& asked) {
    CLI::App* trend = program.add_subcommand("trend", "Fit a straight line to points");
    trend->fallthrough()->add_option("FILE", asked.trend.csv, "CSV file, x and y")->required();
    trend->add_option("--at", asked.trend.at, "x at which to predict y");
    trend->add_option("--confidence", asked.trend.confidence, "0 to 1; default: 0.95");
    trend->callback([&] { asked.command = [&] { return trendOf(asked.trend); }; });

    CLI::App* conformity =
        program.add_subcommand("conformity", "Probability that a figure is within its limits");
    ConformityAsked& figure = asked.conformity;
    conformity->fallthrough()->add_option("--value", figure.value, "measured value")->required();
    conformity->add_option("--u", figure.u, "its standard uncertainty, k = 1")->required();
    conformity->add_option("--low", figure.low, "lower limit");
    conformity->add_option("--high", figure.high, "upper limit");
    conformity->add_option("--dof", figure.degrees_of_freedom,
                           "degrees of freedom of u; default: infinite");
    conformity->callback(
        [&] { asked.command = [&] { return conformityOfFigure(asked.conformity); }; });
}

/// Standard error belongs to faults of what was given; Qt's own chatter would hide them.
void onlyGraveWords(QtMsgType type, const QMessageLogContext&, const QString& words) {
    if (type == QtCriticalMsg || type == QtFatalMsg)
        std::cerr << words.toStdString() << '\n';
}

int run(int argc, char** argv) {
    CLI::App program("Fire door registers, grades and reports from a shell", "latchround-cli");
    program.set_version_flag("--version", std::string("latchround-cli ") + LATCHROUND_VERSION);
    program.require_subcommand(1)->fallthrough();
    Asked asked;
    program
        .add_option("--catalogue", asked.catalogue_files,
                    "catalogue file instead of the program's own; may be repeated")
        ->allow_extra_args(false);
    program.add_option("--flag-rules", asked.flag_rules,
                       "file of a flag Administration's own rules, applied over the catalogue; "
                       "default: REGISTER.rules.json beside the register");
    addRegisterCommands(program, asked);
    addGradingCommands(program, asked);
    addReportCommands(program, asked);
    addHandoverCommands(program, asked.handover, asked.command);
    addCollectCommand(program, asked.collect, asked.command,
                      [&](auto command) { return graded(asked, std::move(command)); });
    addPracticeCommands(program, asked.practice, asked.command,
                        [&](auto command) { return graded(asked, std::move(command)); });
    addCompareCommand(
        *addRulesCommand(program, asked.rules, asked.register_path, asked.command,
                         [&](auto command) { return graded(asked, std::move(command)); }),
        asked);
    addVerifyCommand(program, asked);
    addBoundaryCommand(program, asked);
    addSampleCommand(program, asked);
    addFigureCommands(program, asked);
    try {
        program.parse(argc, argv);
    } catch (const CLI::Success& asked_for_help) {
        return program.exit(asked_for_help);
    } catch (const CLI::ParseError& fault) {
        return fail({{"command line", errors::command_line_said(fault.what())}});
    }

    qputenv("QT_QPA_PLATFORM", "offscreen");
    qInstallMessageHandler(onlyGraveWords);
    ui::readyTypeface();
    const QGuiApplication application(argc, argv);
    QLocale::setDefault(QLocale::c());
    const headless::Answer answer = asked.command();
    if (!answer)
        return fail(answer.error());
    std::cout << *answer << std::flush;
    return std::cout ? exit_done : fail({{"standard output", errors::output_not_written()}});
}

} // namespace

int main(int argc, char** argv) {
    try {
        return run(argc, argv);
    } catch (const std::exception& fault) {
        return fail({{"latchround-cli", errors::fault_of_the_program(fault.what())}});
    }
}
