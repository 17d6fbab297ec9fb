#include "app/handover/contents.h"

#include <charconv>

#include "app/exchange/hex.h"
#include "app/handover/handover.h"
#include "core/error/handover_errors.h"

namespace latchround {

std::string textOf(const Contents& contents) {
    std::string text;
    for (const auto& [entry, hash] : contents)
        text.append(hash).append("  ").append(entry).append("\n");
    return text;
}

Result<Contents> contentsFrom(std::string_view text, const std::string& where) {
    Contents contents;
    while (!text.empty()) {
        const std::size_t end = text.find('\n');
        const std::string_view line = text.substr(0, end);
        text.remove_prefix(end == text.npos ? text.size() : end + 1);
        const std::string_view hash = line.substr(0, 64);
        const std::string_view entry = line.size() > 66 ? line.substr(66) : std::string_view{};
        if (end == line.npos || !bytesOfHex<32>(hash) || line.substr(64, 2) != "  " ||
            !contents.emplace(entry, hash).second)
            return tl::unexpected(Error{where, errors::entry_damaged(contents_entry)});
    }
    return contents;
}

std::optional<std::string> photographOf(std::string_view entry) {
    constexpr std::string_view folder = "photographs/";
    const bool ending = entry.ends_with(".jpg") || entry.ends_with(".png");
    if (!entry.starts_with(folder) || !ending || entry.size() != folder.size() + 68)
        return std::nullopt;
    const std::string_view hash = entry.substr(folder.size(), 64);
    return bytesOfHex<32>(hash) ? std::optional<std::string>(hash) : std::nullopt;
}

bool isKnownEntry(std::string_view entry, std::size_t arrangements) {
    if (entry == cover_entry || entry == facts_entry || entry == key_entry || photographOf(entry))
        return true;
    constexpr std::string_view folder = "arrangements/";
    if (!entry.starts_with(folder))
        return false;
    std::size_t number = 0;
    std::from_chars(entry.data() + folder.size(), entry.data() + entry.size(), number);
    return number >= 1 && number <= arrangements && entry == arrangementEntry(number);
}

} // namespace latchround
