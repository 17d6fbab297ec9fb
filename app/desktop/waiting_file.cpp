#include "app/desktop/waiting_file.h"

#include <algorithm>
#include <cstdint>
#include <filesystem>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <system_error>
#include <utility>

#include <QByteArray>
#include <QFileInfo>

#include "app/exchange/durable_file.h"
#include "app/exchange/fact_json.h"
#include "app/exchange/file_bytes.h"
#include "core/error/desktop_errors.h"
#include "core/phrase/places.h"
#include "ui/words/in_english.h"
#include "ui/words/phrase_words.h"

namespace latchround {

namespace {

constexpr std::uintmax_t most_waiting_bytes = 1024u * 1024 * 1024;
constexpr std::string_view photograph_line = "photograph ";
constexpr std::string_view closing_line = "together ";
/// Of a new file: some two hundred taps. Our choice, no source.
constexpr std::size_t room_bytes = 64u * 1024;

QString waitingPathOf(const QString& register_path) {
    return register_path + QStringLiteral(".waiting");
}

std::string textOf(const ui::WaitingBatch& batch) {
    std::string text;
    for (const Fact& fact : batch.facts)
        text += jsonLineFrom(fact) + '\n';
    if (!batch.photograph.empty()) {
        const QByteArray bytes(reinterpret_cast<const char*>(batch.photograph.data()),
                               qsizetype(batch.photograph.size()));
        text += std::string(photograph_line) + bytes.toBase64().toStdString() + '\n';
    }
    return text + std::string(closing_line) + std::to_string(batch.facts.size()) + '\n';
}

std::string textOf(std::span<const ui::WaitingBatch> batches) {
    std::string text;
    for (const ui::WaitingBatch& batch : batches)
        text += textOf(batch);
    return text;
}

std::vector<std::byte> bytesFrom(std::string_view base64) {
    const QByteArray bytes =
        QByteArray::fromBase64(QByteArray(base64.data(), qsizetype(base64.size())));
    const auto* first = reinterpret_cast<const std::byte*>(bytes.constData());
    return {first, first + bytes.size()};
}

FactId nameOf(const ui::WaitingBatch& batch) {
    return batch.facts.empty() ? FactId() : batch.facts.front().stamp.id;
}

std::set<FactId> namesOf(std::span<const ui::WaitingBatch> batches) {
    std::set<FactId> names;
    for (const ui::WaitingBatch& batch : batches)
        names.insert(nameOf(batch));
    return names;
}

/// In a new file, "STEM.1" or the next that is free.
Result<QString> writtenAside(const QString& stem, const std::string& text) {
    for (int number = 1;; ++number) {
        const QString aside = QStringLiteral("%1.%2").arg(stem).arg(number);
        if (QFileInfo::exists(aside))
            continue;
        const Result<> written =
            writeDurably(aside.toStdString(), std::as_bytes(std::span(text)), IfThere::Refuse);
        if (written)
            return aside;
        if (!QFileInfo::exists(aside))
            return tl::unexpected(written.error());
    }
}

/// The same file by another name, however full the disk; nothing where the disk knows no such
/// names.
std::optional<QString> alsoNamedAside(const QString& path) {
    for (int number = 1;; ++number) {
        const QString aside = QStringLiteral("%1.%2").arg(path).arg(number);
        std::error_code fault;
        std::filesystem::create_hard_link(path.toStdString(), aside.toStdString(), fault);
        if (!fault)
            return aside;
        if (fault != std::errc::file_exists)
            return std::nullopt;
    }
}

/// One transaction of the file, and the number of its first line.
struct Piece {
    std::vector<std::string_view> lines;
    int line = 1;
    std::optional<std::string_view> facts; ///< how many it says; nothing: it does not end
};

std::vector<Piece> piecesOf(std::string_view text) {
    std::vector<Piece> pieces;
    bool is_open = false;
    int number = 0;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t end = std::min(text.find('\n', at), text.size());
        const std::string_view line = text.substr(at, end - at);
        at = end + 1;
        ++number;
        if (line.empty())
            continue;
        if (!std::exchange(is_open, true))
            pieces.push_back({{}, number, {}});
        if (line.starts_with(closing_line) && end < text.size()) {
            pieces.back().facts = line.substr(closing_line.size());
            is_open = false;
        } else {
            pieces.back().lines.push_back(line);
        }
    }
    return pieces;
}

Result<ui::WaitingBatch> batchFrom(const Piece& piece, const std::string& path) {
    ui::WaitingBatch batch;
    int number = piece.line - 1;
    for (const std::string_view line : piece.lines) {
        ++number;
        if (line.starts_with(photograph_line)) {
            batch.photograph = bytesFrom(line.substr(photograph_line.size()));
            continue;
        }
        auto fact = factFromJson(line, place::line(path, number));
        if (!fact)
            return tl::unexpected(fact.error());
        batch.facts.push_back(std::move(*fact));
    }
    if (batch.facts.empty() || piece.facts != std::to_string(batch.facts.size()))
        return tl::unexpected(Error{place::line(path, piece.line), errors::waiting_cut_short()});
    return batch;
}

} // namespace

Result<> WaitingFile::keep(const std::vector<ui::WaitingBatch>& waiting) {
    if (m_stays)
        return tl::unexpected(
            Error{waitingPathOf(m_register).toStdString(), errors::waiting_kept_nowhere_else()});
    if (!m_in_file || m_in_file->empty())
        return waiting.empty() ? takeAway() : writeAnew(waiting);
    const auto added = std::ranges::find_if(waiting, [this](const ui::WaitingBatch& batch) {
        return !m_in_file->contains(nameOf(batch));
    });
    const std::span fresh(added, waiting.end());
    const QString path = waitingPathOf(m_register);
    if (fresh.empty())
        return waiting.empty() || QFileInfo::exists(path) ? Result<>{} : writeAnew(waiting);
    const std::string text = textOf(fresh);
    const bool holds_saved = m_in_file->size() + fresh.size() > waiting.size();
    if (holds_saved && m_end + text.size() > room_bytes && writeAnew(waiting))
        return {};
    if (!writeDurablyAt(path.toStdString(), m_end, std::as_bytes(std::span(text)))) {
        m_in_file->clear();
        return writeAnew(waiting);
    }
    m_in_file->merge(namesOf(fresh));
    m_end += text.size();
    return {};
}

/// Where there is no room for more it is as long as it has to be.
Result<> WaitingFile::writeAnew(const std::vector<ui::WaitingBatch>& waiting) {
    const std::string path = waitingPathOf(m_register).toStdString();
    const std::string text = textOf(std::span(waiting));
    std::string roomy = text;
    roomy.resize(std::max(text.size(), room_bytes), '\n');
    Result<> written = writeDurably(path, std::as_bytes(std::span(roomy)), IfThere::Replace);
    if (!written)
        written = writeDurably(path, std::as_bytes(std::span(text)), IfThere::Replace);
    if (written) {
        m_in_file = namesOf(waiting);
        m_end = text.size();
    }
    return written;
}

Result<> WaitingFile::takeAway() {
    if (!m_in_file || m_stays)
        return {};
    m_in_file.reset();
    return removeDurably(waitingPathOf(m_register).toStdString());
}

WaitingFile::Read WaitingFile::read() {
    const QString path = waitingPathOf(m_register);
    m_in_file.reset();
    if (!QFileInfo::exists(path))
        return {};
    m_in_file.emplace();
    const Result<std::string> text = bytesOf(path.toStdString(), most_waiting_bytes);
    if (!text) {
        const auto& [where, why] = text.error();
        const std::optional<QString> aside = alsoNamedAside(path);
        m_stays = !aside;
        (void)takeAway();
        return {{},
                Error{where, aside ? errors::waiting_unread(why, aside->toStdString())
                                   : errors::waiting_unread_stays(why)}};
    }
    Read read;
    std::string spoiled;
    for (const Piece& piece : piecesOf(*text)) {
        auto batch = batchFrom(piece, path.toStdString());
        if (batch) {
            read.waiting.push_back(std::move(*batch));
            continue;
        }
        for (const std::string_view line : piece.lines)
            spoiled += std::string(line) + '\n';
        if (!read.fault)
            read.fault = batch.error();
    }
    if (!read.fault) {
        m_in_file = namesOf(read.waiting);
        m_end = text->find_last_not_of('\n') + 2; // past that line's own end
        return read;
    }
    const Result<QString> written = writtenAside(path, spoiled);
    const std::optional<QString> aside = written ? std::optional(*written) : alsoNamedAside(path);
    m_stays = !aside;
    Phrase& what = read.fault->what;
    what = aside ? errors::waiting_unread_in_part(what, aside->toStdString())
                 : errors::waiting_unread_in_part_stays(what);
    if (!m_stays)
        (void)keep(read.waiting);
    return read;
}

Result<QString> WaitingFile::putAside(const std::vector<ui::WaitingBatch>& refused) {
    const ui::InEnglish english; // for whoever reads the file
    std::string text;
    for (const ui::WaitingBatch& batch : refused) {
        if (batch.refused)
            text += "refused " + ui::inOneLine(*batch.refused) + '\n';
        text += textOf(batch);
    }
    if (m_in_file)
        m_in_file->clear(); // what waits from now on is written without them
    return writtenAside(m_register + QStringLiteral(".aside"), text);
}

} // namespace latchround
