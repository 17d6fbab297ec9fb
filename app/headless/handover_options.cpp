#include <CLI/CLI.hpp>

#include "app/headless/handover_command.h"

namespace latchround::headless {

void addHandoverCommands(CLI::App& program, HandoverAsked& asked,
                         std::function<Answer()>& command) {
    CLI::App* commands = program.add_subcommand("handover", "Pass records between tablets as a "
                                                            "file");
    commands->require_subcommand(1)->fallthrough();

    CLI::App* export_to = commands->add_subcommand("export", "Export a whole register to a signed "
                                                             "file");
    export_to->fallthrough()
        ->add_option("REGISTER", asked.export_to.path, "register file")
        ->required();
    export_to->add_option("--to", asked.export_to.to, "handover file")->required();
    export_to->add_flag("--replace", asked.export_to.replace, "overwrite the file if it exists");
    export_to->add_option("--only-for", asked.export_to.sealed_for,
                          "key of the one device that can open it, 64 hex digits");
    export_to->callback([&] { command = [&] { return exportHandover(asked.export_to); }; });

    CLI::App* check = commands->add_subcommand("check", "Check a handover file and show what it "
                                                        "would bring");
    check->fallthrough()->add_option("FILE", asked.check.file, "handover file")->required();
    check->add_option("--register", asked.check.path, "register it would be imported into");
    check->callback([&] { command = [&] { return checkHandover(asked.check); }; });

    CLI::App* import_from =
        commands->add_subcommand("import", "Import a handover file into a register");
    import_from->fallthrough()
        ->add_option("FILE", asked.import_from.file, "handover file")
        ->required();
    import_from->add_option("--into", asked.import_from.into, "register file; created if absent")
        ->required();
    import_from->add_flag("--dry-run", asked.import_from.dry_run,
                          "check everything, change nothing");
    import_from
        ->add_option("--accept-key", asked.import_from.accept_keys,
                     "key of the other device, after comparing it with the one shown there; "
                     "may be repeated")
        ->allow_extra_args(false);
    import_from->add_option("--person", asked.import_from.person,
                            "name of the person accepting the key");
    import_from->callback([&] { command = [&] { return importHandover(asked.import_from); }; });

    CLI::App* key = commands->add_subcommand("key", "Show the key of a register's device");
    key->fallthrough()->add_option("REGISTER", asked.key_of, "register file")->required();
    key->callback([&] { command = [&] { return deviceKeyOf(asked.key_of); }; });
}

} // namespace latchround::headless
