#include <CLI/CLI.hpp>

#include "app/headless/handover_command.h"

namespace latchround::headless {

void addHandoverCommands(CLI::App& program, HandoverAsked& asked,
                         std::function<Answer()>& command) {
    CLI::App* commands = program.add_subcommand("handover", "From tablet to tablet, as a file");
    commands->require_subcommand(1)->fallthrough();

    CLI::App* give = commands->add_subcommand("give", "Make a signed file of a whole register");
    give->fallthrough()->add_option("REGISTER", asked.give.path, "register file")->required();
    give->add_option("--to", asked.give.to, "handover file")->required();
    give->add_flag("--replace", asked.give.replace, "where there is such a file already");
    give->add_option("--sealed-for", asked.give.sealed_for,
                     "key of the one device that can open it, 64 hex digits");
    give->callback([&] { command = [&] { return giveHandover(asked.give); }; });

    CLI::App* look = commands->add_subcommand("look", "Check a file and show what it brings");
    look->fallthrough()->add_option("FILE", asked.look.file, "handover file")->required();
    look->add_option("--register", asked.look.path, "register that it would go into");
    look->callback([&] { command = [&] { return lookAtHandover(asked.look); }; });

    CLI::App* take = commands->add_subcommand("take", "Take a file into a register");
    take->fallthrough()->add_option("FILE", asked.take.file, "handover file")->required();
    take->add_option("--into", asked.take.into, "register file; begun where there is none")
        ->required();
    take->add_flag("--dry-run", asked.take.dry_run, "try all of it, change nothing");
    take->add_option("--accept-key", asked.take.accept_keys,
                     "the other device's key, which you have compared with what it shows; may be "
                     "given again")
        ->allow_extra_args(false);
    take->add_option("--person", asked.take.person, "name of who accepts the key");
    take->callback([&] { command = [&] { return takeHandover(asked.take); }; });

    CLI::App* key = commands->add_subcommand("key", "Show the key of a register's device");
    key->fallthrough()->add_option("REGISTER", asked.key_of, "register file")->required();
    key->callback([&] { command = [&] { return deviceKeyOf(asked.key_of); }; });
}

} // namespace latchround::headless
