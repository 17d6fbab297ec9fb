#include "app/exchange/file_bytes.h"

#include <fstream>
#include <system_error>
#include <utility>

#include "core/error/reading_errors.h"

namespace latchround {

Result<std::string> bytesOf(const std::filesystem::path& path, std::uintmax_t most_bytes) {
    const auto refusal = [&](Phrase why) {
        return tl::unexpected(Error{path.string(), std::move(why)});
    };
    std::error_code error;
    const auto status = std::filesystem::status(path, error);
    if (status.type() == std::filesystem::file_type::not_found)
        return refusal(errors::no_such_file());
    if (std::filesystem::is_directory(status))
        return refusal(errors::folder_not_file());
    if (!std::filesystem::is_regular_file(status))
        return refusal(errors::not_readable_file());
    const std::uintmax_t size = std::filesystem::file_size(path, error);
    if (!error && size > most_bytes)
        return refusal(errors::file_too_large(most_bytes / 1024 / 1024));
    std::ifstream file(path, std::ios::binary);
    if (error || !file)
        return refusal(errors::file_not_opened());
    std::string bytes(static_cast<std::size_t>(size), '\0');
    file.read(bytes.data(), static_cast<std::streamsize>(size));
    // It may have become shorter since its size was asked, or the medium may fail.
    if (file.bad() || file.gcount() != static_cast<std::streamsize>(size))
        return refusal(errors::file_cut_short());
    return bytes;
}

} // namespace latchround
