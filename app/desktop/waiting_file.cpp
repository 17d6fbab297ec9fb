#include "app/desktop/waiting_file.h"

#include <algorithm>
#include <cstdint>
#include <span>
#include <string>
#include <utility>

#include <QByteArray>
#include <QFile>

#include "app/exchange/durable_file.h"
#include "app/exchange/fact_json.h"
#include "app/exchange/file_bytes.h"

namespace latchround {

namespace {

constexpr std::uintmax_t most_waiting_bytes = 1024u * 1024 * 1024;
const std::string photograph_line = "photograph ";

QString pathFor(const QString& register_path) {
    return register_path + QStringLiteral(".waiting");
}

std::string textOf(const ui::WaitingBatch& batch) {
    std::string text;
    for (const Fact& fact : batch.facts)
        text += jsonLineFrom(fact) + '\n';
    if (!batch.photograph.empty()) {
        const QByteArray bytes(reinterpret_cast<const char*>(batch.photograph.data()),
                               qsizetype(batch.photograph.size()));
        text += photograph_line + bytes.toBase64().toStdString() + '\n';
    }
    return text;
}

std::vector<std::byte> bytesFrom(const std::string& base64) {
    const QByteArray bytes = QByteArray::fromBase64(QByteArray::fromStdString(base64));
    const auto* first = reinterpret_cast<const std::byte*>(bytes.constData());
    return {first, first + bytes.size()};
}

std::string putAside(const QString& path) {
    for (int number = 1;; ++number) {
        const QString aside = QStringLiteral("%1.%2").arg(path).arg(number);
        if (QFile::exists(aside))
            continue;
        return (QFile::rename(path, aside) ? aside : path).toStdString();
    }
}

} // namespace

Done writeWaiting(const QString& register_path, const std::vector<ui::WaitingBatch>& waiting) {
    const QString path = pathFor(register_path);
    if (waiting.empty()) {
        if (QFile::exists(path) && !QFile::remove(path))
            return tl::unexpected(Complaint{path.toStdString(), "could not be taken away",
                                            "What it holds is saved; take it away by hand."});
        return {};
    }
    std::string text;
    for (const ui::WaitingBatch& batch : waiting)
        text += textOf(batch) + '\n';
    return writeDurably(path.toStdString(), std::as_bytes(std::span(text)), IfThere::Replace);
}

Result<std::vector<ui::WaitingBatch>> readWaiting(const QString& register_path) {
    const std::string path = pathFor(register_path).toStdString();
    std::vector<ui::WaitingBatch> waiting;
    if (!QFile::exists(pathFor(register_path)))
        return waiting;
    const Result<std::string> text = bytesOf(path, most_waiting_bytes);
    if (!text)
        return tl::unexpected(Complaint{
            text.error().where, "what waited to be saved here cannot be read: " + text.error().what,
            "It is kept as " + putAside(pathFor(register_path)) + "; report this."});
    ui::WaitingBatch batch;
    const auto finish = [&] {
        if (!batch.facts.empty())
            waiting.push_back(std::exchange(batch, {}));
    };
    int number = 0;
    for (std::size_t at = 0; at < text->size();) {
        const std::size_t end = std::min(text->find('\n', at), text->size());
        const std::string line = text->substr(at, end - at);
        at = end + 1;
        ++number;
        if (line.empty()) {
            finish();
        } else if (line.starts_with(photograph_line)) {
            batch.photograph = bytesFrom(line.substr(photograph_line.size()));
        } else {
            auto fact = factFromJson(line, path + " line " + std::to_string(number));
            if (!fact)
                return tl::unexpected(Complaint{
                    fact.error().where,
                    "of what waited to be saved here, not all can be read: " + fact.error().what,
                    "It is kept as " + putAside(pathFor(register_path)) + "; report this."});
            batch.facts.push_back(std::move(*fact));
        }
    }
    finish();
    return waiting;
}

} // namespace latchround
