#include "app/exchange/file_bytes.h"

#include <fstream>
#include <system_error>

namespace latchround {

Result<std::string> bytesOf(const std::filesystem::path& path, std::uintmax_t most_bytes) {
    const auto complaint = [&](std::string what, std::string remedy) {
        return tl::unexpected(Complaint{path.string(), std::move(what), std::move(remedy)});
    };
    std::error_code error;
    const auto status = std::filesystem::status(path, error);
    if (status.type() == std::filesystem::file_type::not_found)
        return complaint("there is no such file", "Check its name and folder.");
    if (std::filesystem::is_directory(status))
        return complaint("this is a folder, not a file", "Name the file in it.");
    if (!std::filesystem::is_regular_file(status))
        return complaint("this is not a file that can be read", "Copy it to a folder of yours.");
    const std::uintmax_t size = std::filesystem::file_size(path, error);
    if (!error && size > most_bytes)
        return complaint("the file is larger than " + std::to_string(most_bytes / 1024 / 1024) +
                             " MB",
                         "Choose the right file.");
    std::ifstream file(path, std::ios::binary);
    if (error || !file)
        return complaint("the file cannot be opened", "Ask for permission to read it.");
    std::string bytes(static_cast<std::size_t>(size), '\0');
    file.read(bytes.data(), static_cast<std::streamsize>(size));
    // It may have become shorter since its size was asked, or the medium may fail.
    if (file.bad() || file.gcount() != static_cast<std::streamsize>(size))
        return complaint("the file could not be read to its end", "Try again, or copy it first.");
    return bytes;
}

} // namespace latchround
