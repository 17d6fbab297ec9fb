#include "app/handover/zip_file.h"

#include <utility>

#include <zip.h>

#include "core/error/handover_errors.h"
#include "core/phrase/places.h"

namespace latchround {

namespace {

/// 1980-01-01 00:00, the first moment that a zip archive can name.
constexpr zip_uint16_t no_time = 0;
constexpr zip_uint16_t no_date = (1 << 5) | 1;

/// Lines of facts shrink to a tenth at best; what claims more than this hides something.
constexpr std::uint64_t most_swelling = 300;
constexpr std::uint64_t small_enough = 16u << 20;

std::string wordsOf(zip_error_t* error) {
    std::string words = zip_error_strerror(error);
    zip_error_fini(error);
    return words;
}

bool leadsOut(std::string_view name) {
    return name.empty() || name.front() == '/' || name.find('\\') != name.npos ||
           name.find("..") != name.npos || name.find(':') != name.npos;
}

Error damaged(const std::string& where, Phrase in_what) {
    return {where, errors::handover_damaged(std::move(in_what))};
}

} // namespace

struct ZipWriter::Inside {
    zip_source_t* target = nullptr;
    zip_t* archive = nullptr;
    std::string fault;

    void complain(const char* words) {
        if (fault.empty())
            fault = words;
    }
};

ZipWriter::ZipWriter()
    : m_inside(std::make_unique<Inside>()) {
    zip_error_t error;
    zip_error_init(&error);
    m_inside->target = zip_source_buffer_create(nullptr, 0, 0, &error);
    if (m_inside->target != nullptr) {
        zip_source_keep(m_inside->target); // closing the archive lets go of it
        m_inside->archive = zip_open_from_source(m_inside->target, ZIP_TRUNCATE, &error);
    }
    if (m_inside->archive == nullptr)
        m_inside->fault = wordsOf(&error);
}

ZipWriter::~ZipWriter() {
    if (m_inside->archive != nullptr)
        zip_discard(m_inside->archive);
    if (m_inside->target != nullptr)
        zip_source_free(m_inside->target);
}

void ZipWriter::add(const std::string& name, std::string_view bytes, Packing packing) {
    if (!m_inside->fault.empty())
        return;
    zip_t* archive = m_inside->archive;
    zip_source_t* source = zip_source_buffer(archive, bytes.data(), bytes.size(), 0);
    const zip_int64_t at =
        source == nullptr ? -1 : zip_file_add(archive, name.c_str(), source, ZIP_FL_ENC_UTF_8);
    if (at < 0) {
        zip_source_free(source);
        m_inside->complain(zip_strerror(archive));
        return;
    }
    const auto index = static_cast<zip_uint64_t>(at);
    const zip_int32_t method = packing == Packing::Store ? ZIP_CM_STORE : ZIP_CM_DEFLATE;
    if (zip_set_file_compression(archive, index, method, 0) != 0 ||
        zip_file_set_dostime(archive, index, no_time, no_date, 0) != 0)
        m_inside->complain(zip_strerror(archive));
}

Result<std::string> ZipWriter::finish(const ProgressRange& pace) {
    // libzip asks after every piece of 64 KB, with the share that is done.
    constexpr double often = 0.005;
    constexpr std::size_t fine = 1000;
    ProgressRange asked = pace;
    const auto at = [](zip_t*, double share, void* state) {
        (void)static_cast<ProgressRange*>(state)->at(static_cast<std::size_t>(share * fine), fine);
    };
    const auto stopped = [](zip_t*, void* state) {
        return static_cast<ProgressRange*>(state)->isStopped() ? 1 : 0;
    };
    if (m_inside->fault.empty()) {
        zip_register_progress_callback_with_state(m_inside->archive, often, at, nullptr, &asked);
        zip_register_cancel_callback_with_state(m_inside->archive, stopped, nullptr, &asked);
    }
    if (m_inside->fault.empty() && zip_close(m_inside->archive) != 0)
        m_inside->complain(zip_strerror(m_inside->archive));
    else
        m_inside->archive = nullptr;
    const auto refuse = [&](Phrase why) {
        return tl::unexpected(
            Error{place::handover_file(), errors::handover_not_made(std::move(why))});
    };
    if (asked.isStopped())
        return tl::unexpected(stoppedAsAsked(place::handover_file()));
    if (!m_inside->fault.empty())
        return refuse(m_inside->fault);
    zip_source_t* made = m_inside->target;
    zip_stat_t stat;
    if (zip_source_stat(made, &stat) != 0 || zip_source_open(made) != 0)
        return refuse(errors::handover_bytes_missing());
    std::string bytes(stat.size, '\0');
    const zip_int64_t got = zip_source_read(made, bytes.data(), bytes.size());
    zip_source_close(made);
    if (got != static_cast<zip_int64_t>(bytes.size()))
        return refuse(errors::handover_bytes_cut_short());
    return bytes;
}

void ZipReader::Discard::operator()(zip* archive) const {
    zip_discard(archive);
}

ZipReader::ZipReader(ZipReader&&) noexcept = default;
ZipReader& ZipReader::operator=(ZipReader&&) noexcept = default;
ZipReader::~ZipReader() = default;

Result<ZipReader> ZipReader::open(std::string bytes, const std::string& name) {
    ZipReader reader;
    reader.m_name = name;
    reader.m_bytes = std::make_unique<std::string>(std::move(bytes));
    const auto no_archive = [&] { return tl::unexpected(Error{name, errors::handover_in_part()}); };
    if (reader.m_bytes->empty()) // libzip takes nothing for an archive of nothing
        return no_archive();
    zip_error_t error;
    zip_error_init(&error);
    zip_source_t* source =
        zip_source_buffer_create(reader.m_bytes->data(), reader.m_bytes->size(), 0, &error);
    if (source != nullptr)
        reader.m_archive.reset(zip_open_from_source(source, ZIP_RDONLY | ZIP_CHECKCONS, &error));
    if (!reader.m_archive) {
        const bool no_zip = zip_error_code_zip(&error) == ZIP_ER_NOZIP;
        zip_source_free(source);
        const std::string words = wordsOf(&error);
        if (no_zip)
            return no_archive();
        return tl::unexpected(damaged(name, words));
    }
    const zip_int64_t count = zip_get_num_entries(reader.m_archive.get(), 0);
    for (zip_uint64_t i = 0; i < static_cast<zip_uint64_t>(count); ++i) {
        zip_stat_t stat;
        if (zip_stat_index(reader.m_archive.get(), i, ZIP_FL_ENC_STRICT, &stat) != 0 ||
            (stat.valid & ZIP_STAT_NAME) == 0 || (stat.valid & ZIP_STAT_SIZE) == 0 ||
            (stat.valid & ZIP_STAT_COMP_SIZE) == 0)
            return tl::unexpected(damaged(name, errors::an_entry_unreadable()));
        const std::string entry = stat.name;
        if (leadsOut(entry))
            return tl::unexpected(Error{name, errors::entry_leads_out(entry)});
        if (!reader.m_entries.emplace(entry, Place{i, stat.size}).second)
            return tl::unexpected(damaged(name, errors::entry_twice(entry)));
        if (stat.size > small_enough && stat.size / most_swelling > stat.comp_size)
            return tl::unexpected(Error{name, errors::entry_swells(entry)});
    }
    return reader;
}

std::vector<std::string> ZipReader::entries() const {
    std::vector<std::string> names;
    for (const auto& [name, place] : m_entries)
        names.push_back(name);
    return names;
}

Result<std::string> ZipReader::read(std::string_view entry, std::uint64_t most_bytes) const {
    const auto found = m_entries.find(entry);
    if (found == m_entries.end())
        return tl::unexpected(Error{m_name, errors::entry_missing(entry)});
    const auto& [name, place] = *found;
    if (place.size > most_bytes)
        return tl::unexpected(Error{m_name, errors::entry_too_large(name, most_bytes >> 20)});
    zip_file_t* file = zip_fopen_index(m_archive.get(), place.index, 0);
    if (file == nullptr)
        return tl::unexpected(damaged(m_name, errors::entry_unreadable(name)));
    std::string bytes(place.size, '\0');
    const zip_int64_t got = zip_fread(file, bytes.data(), bytes.size());
    char beyond = 0;
    // The checksum is compared when the end is reached.
    const bool whole =
        got == static_cast<zip_int64_t>(bytes.size()) && zip_fread(file, &beyond, 1) == 0;
    zip_fclose(file);
    if (!whole)
        return tl::unexpected(Error{m_name, errors::entry_damaged(name)});
    return bytes;
}

} // namespace latchround
