// handover export, check, import and key: what one register knows as a signed file, and into
// another.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "app/headless/answer.h"

namespace CLI {
class App;
}

namespace latchround::headless {

struct ExportAsked {
    std::string path; ///< of the register
    std::string to;
    bool replace = false;                  ///< a file that is there already
    std::optional<std::string> sealed_for; ///< the receiver's public key in hex
};
Answer exportHandover(const ExportAsked& asked);

struct CheckAsked {
    std::string file;
    std::optional<std::string> path; ///< register that it would go into
};
Answer checkHandover(const CheckAsked& asked);

struct ImportAsked {
    std::string file;
    std::string into; ///< register, begun where there is none
    bool dry_run = false;
    std::vector<std::string> accept_keys; ///< public keys in hex
    std::optional<std::string> person;    ///< name of who accepts them
};
/// A register that was begun for a file that is then refused is taken away again.
Answer importHandover(const ImportAsked& asked);

/// The key of the device that the register lies on.
Answer deviceKeyOf(const std::string& path);

struct HandoverAsked {
    ExportAsked export_to;
    CheckAsked check;
    ImportAsked import_from;
    std::string key_of;
};
/// The commands and their options; the one that is asked for becomes `command`.
void addHandoverCommands(CLI::App& program, HandoverAsked& asked, std::function<Answer()>& command);

} // namespace latchround::headless
