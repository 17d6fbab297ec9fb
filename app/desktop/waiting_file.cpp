#include "app/desktop/waiting_file.h"

#include <algorithm>
#include <cstdint>
#include <span>
#include <string>
#include <string_view>
#include <utility>

#include <QByteArray>
#include <QFile>
#include <QFileInfo>

#include "app/exchange/durable_file.h"
#include "app/exchange/fact_json.h"
#include "app/exchange/file_bytes.h"

namespace latchround {

namespace {

constexpr std::uintmax_t most_waiting_bytes = 1024u * 1024 * 1024;
constexpr std::string_view photograph_line = "photograph ";

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
    return text + '\n';
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

std::vector<FactId> namesOf(std::span<const ui::WaitingBatch> batches) {
    std::vector<FactId> names;
    for (const ui::WaitingBatch& batch : batches)
        names.push_back(nameOf(batch));
    return names;
}

Done writeWhole(const QString& path, std::span<const ui::WaitingBatch> waiting) {
    const std::string text = textOf(waiting);
    return writeDurably(path.toStdString(), std::as_bytes(std::span(text)), IfThere::Replace);
}

/// In a new file, "STEM.1" or the next that is free.
Result<QString> writtenAside(const QString& stem, const std::string& text) {
    for (int number = 1;; ++number) {
        const QString aside = QStringLiteral("%1.%2").arg(stem).arg(number);
        if (QFileInfo::exists(aside))
            continue;
        const Done written =
            writeDurably(aside.toStdString(), std::as_bytes(std::span(text)), IfThere::Refuse);
        if (written)
            return aside;
        if (!QFileInfo::exists(aside))
            return tl::unexpected(written.error());
    }
}

QString renamedAside(const QString& path) {
    for (int number = 1;; ++number) {
        const QString aside = QStringLiteral("%1.%2").arg(path).arg(number);
        if (!QFileInfo::exists(aside))
            return QFile::rename(path, aside) ? aside : path;
    }
}

/// One transaction of the file, and the number of its first line.
struct Piece {
    std::string_view text;
    int line = 1;
    bool is_closed = false;
};

std::vector<Piece> piecesOf(std::string_view text) {
    std::vector<Piece> pieces;
    std::size_t begin = 0;
    int first_line = 1;
    int line = 1;
    for (std::size_t at = 0; at < text.size(); ++line) {
        const std::size_t end = std::min(text.find('\n', at), text.size());
        if (end == at) {
            if (at > begin)
                pieces.push_back({text.substr(begin, at - begin), first_line, true});
            begin = end + 1;
            first_line = line + 1;
        }
        at = end + 1;
    }
    if (begin < text.size())
        pieces.push_back({text.substr(begin), first_line, false});
    return pieces;
}

Result<ui::WaitingBatch> batchFrom(const Piece& piece, const std::string& path) {
    ui::WaitingBatch batch;
    int number = piece.line;
    for (std::size_t at = 0; at < piece.text.size(); ++number) {
        const std::size_t end = std::min(piece.text.find('\n', at), piece.text.size());
        const std::string_view line = piece.text.substr(at, end - at);
        at = end + 1;
        if (line.starts_with(photograph_line)) {
            batch.photograph = bytesFrom(line.substr(photograph_line.size()));
            continue;
        }
        auto fact = factFromJson(std::string(line), path + " line " + std::to_string(number));
        if (!fact)
            return tl::unexpected(fact.error());
        batch.facts.push_back(std::move(*fact));
    }
    if (!piece.is_closed || batch.facts.empty())
        return tl::unexpected(
            Complaint{path + " line " + std::to_string(piece.line), "it was cut short", ""});
    return batch;
}

} // namespace

Done WaitingFile::keep(const std::vector<ui::WaitingBatch>& waiting) {
    const QString path = waitingPathOf(m_register);
    const std::vector<FactId> in_file = std::exchange(m_in_file, {});
    if (waiting.empty()) {
        if (QFile::exists(path) && !QFile::remove(path))
            return tl::unexpected(Complaint{path.toStdString(), "could not be taken away",
                                            "What it holds is saved; take it away by hand."});
        return {};
    }
    std::vector<FactId> names = namesOf(waiting);
    Done kept = tl::unexpected(Complaint{});
    if (!in_file.empty() && in_file.size() <= names.size() &&
        std::equal(in_file.begin(), in_file.end(), names.begin())) {
        const std::string text = textOf(std::span(waiting).subspan(in_file.size()));
        kept = text.empty() ? Done{}
                            : appendDurably(path.toStdString(), std::as_bytes(std::span(text)));
    }
    if (!kept)
        kept = writeWhole(path, waiting);
    if (kept)
        m_in_file = std::move(names);
    return kept;
}

WaitingFile::Read WaitingFile::read() {
    const QString path = waitingPathOf(m_register);
    if (!QFileInfo::exists(path))
        return {};
    const Result<std::string> text = bytesOf(path.toStdString(), most_waiting_bytes);
    if (!text)
        return {{},
                Complaint{text.error().where,
                          "what waited to be saved here cannot be read: " + text.error().what,
                          "It is kept as " + renamedAside(path).toStdString() + "; report this."}};
    Read read;
    std::string spoiled;
    for (const Piece& piece : piecesOf(*text)) {
        auto batch = batchFrom(piece, path.toStdString());
        if (batch) {
            read.waiting.push_back(std::move(*batch));
            continue;
        }
        spoiled += (spoiled.empty() ? "" : "\n") + std::string(piece.text);
        if (!spoiled.ends_with('\n'))
            spoiled += '\n';
        if (!read.fault)
            read.fault = batch.error();
    }
    if (!read.fault) {
        m_in_file = namesOf(read.waiting);
        return read;
    }
    const Result<QString> written = writtenAside(path, spoiled);
    // Where there is no room for that, the whole file goes aside; what can be read waits on.
    const QString aside = written ? *written : renamedAside(path);
    if (written)
        (void)keep(read.waiting);
    read.fault->what = "of what waited to be saved here, not all can be read: " + read.fault->what;
    read.fault->remedy = "It is kept as " + aside.toStdString() + "; report this.";
    return read;
}

Result<QString> WaitingFile::putAside(const std::vector<ui::WaitingBatch>& refused) const {
    std::string text;
    for (const ui::WaitingBatch& batch : refused) {
        if (batch.refused)
            text += "refused " + inOneLine(*batch.refused) + '\n';
        text += textOf(batch);
    }
    return writtenAside(m_register + QStringLiteral(".aside"), text);
}

} // namespace latchround
