#include "app/headless/opened_register.h"

#include <array>
#include <filesystem>
#include <system_error>

#include <QDateTime>
#include <QFile>

#include "core/error/command_errors.h"

namespace latchround::headless {

Result<OpenedRegister> openedRegister(const std::string& path) {
    std::error_code ignored;
    if (!std::filesystem::exists(path, ignored))
        return tl::unexpected(Error{path, errors::no_register_here()});
    auto file = SqliteRegister::open(QFile::decodeName(QByteArray::fromStdString(path)));
    if (!file)
        return tl::unexpected(file.error());
    auto arrangement = (*file)->arrangement();
    if (!arrangement)
        return tl::unexpected(arrangement.error());
    auto facts = (*file)->facts();
    if (!facts)
        return tl::unexpected(facts.error());
    OpenedRegister opened{std::move(*file), std::move(*arrangement), {}};
    for (Fact& fact : *facts)
        opened.ledger.add(std::move(fact));
    return opened;
}

Result<Walkdown> chosenWalkdown(const OpenedRegister& from, const std::optional<std::string>& id,
                                const std::string& path) {
    const std::vector<Walkdown> walkdowns = from.ledger.walkdowns();
    if (walkdowns.empty())
        return tl::unexpected(Error{path, errors::no_walkdown_yet()});
    if (!id)
        return walkdowns.back();
    for (const Walkdown& walkdown : walkdowns)
        if (walkdown.id == *id)
            return walkdown;
    return tl::unexpected(Error{path, errors::no_walkdown_of_id(*id, walkdowns.back().id)});
}

namespace {

std::array<std::string, 3> partsOf(const std::string& path) {
    return {path, path + "-wal", path + "-shm"};
}

} // namespace

PlaceBefore::PlaceBefore(std::string path)
    : m_path(std::move(path)) {
    for (const std::string& part : partsOf(m_path)) {
        std::error_code ignored;
        if (std::filesystem::exists(part, ignored))
            m_there.insert(part);
    }
}

void PlaceBefore::takeAwayWhatWasBegun() const {
    if (m_there.contains(m_path))
        return; // nothing was begun here
    for (const std::string& part : partsOf(m_path)) {
        std::error_code ignored;
        if (!m_there.contains(part))
            std::filesystem::remove(part, ignored);
    }
}

Moment now() {
    const QDateTime here = QDateTime::currentDateTime();
    return {here.toMSecsSinceEpoch(), here.offsetFromUtc() / 60};
}

} // namespace latchround::headless
