#include "app/practice/locked_exercise.h"

#include <array>
#include <cstdint>
#include <utility>

#include <nlohmann/json.hpp>
#include <sodium.h>

#include "app/exchange/hex.h"
#include "app/exchange/json_text.h"
#include "app/exchange/utf8.h"
#include "core/error/exercise_errors.h"
#include "core/phrase/places.h"
#include "core/reading/json_object.h"
#include "core/reading/written_json.h"

namespace latchround::practice {

namespace {

using Key = std::array<unsigned char, crypto_secretbox_KEYBYTES>;
using Salt = std::array<std::byte, crypto_pwhash_SALTBYTES>;
using Nonce = std::array<std::byte, crypto_secretbox_NONCEBYTES>;
using OrderedJson = nlohmann::ordered_json;

constexpr std::string_view form = "argon2id-secretbox-1";
/// About a second on a tablet; memory that a tablet has to spare.
constexpr std::int64_t passes = 4;
constexpr std::int64_t memory_bytes = 64ll << 20;

unsigned char* uchars(std::byte* bytes) {
    return reinterpret_cast<unsigned char*>(bytes);
}
const unsigned char* uchars(const std::byte* bytes) {
    return reinterpret_cast<const unsigned char*>(bytes);
}
const unsigned char* uchars(std::string_view text) {
    return reinterpret_cast<const unsigned char*>(text.data());
}

/// The key of a password, gone from memory with this.
class PasswordKey {
public:
    PasswordKey() = default;
    ~PasswordKey() { sodium_memzero(m_key.data(), m_key.size()); }
    PasswordKey(const PasswordKey&) = delete;
    PasswordKey& operator=(const PasswordKey&) = delete;

    /// False where the machine has not the memory for it.
    bool make(std::string_view password, const Salt& salt) {
        return sodium_init() >= 0 &&
               crypto_pwhash(m_key.data(), m_key.size(), password.data(), password.size(),
                             uchars(salt.data()), std::uint64_t{passes}, std::size_t{memory_bytes},
                             crypto_pwhash_ALG_ARGON2ID13) == 0;
    }
    const unsigned char* data() const { return m_key.data(); }

private:
    Key m_key{};
};

Error noMemory(const std::string& where) {
    return {where, errors::no_memory_for_password()};
}

/// Without what the password locks.
Exercise frontOf(Exercise exercise) {
    for (DoorTask& task : exercise.doors)
        task.faults.clear();
    exercise.drawn = 0;
    exercise.drawn_from.clear();
    return exercise;
}

/// Empty where it is no hex.
std::string rawOfHex(std::string_view hex) {
    std::string raw;
    if (hex.size() % 2 != 0)
        return raw;
    for (std::size_t i = 0; i < hex.size(); i += 2) {
        const auto byte = bytesOfHex<1>(hex.substr(i, 2));
        if (!byte)
            return {};
        raw += static_cast<char>((*byte)[0]);
    }
    return raw;
}

struct Locked {
    Salt salt{};
    Nonce nonce{};
    std::string box; ///< raw
};

template <std::size_t Size>
void readHex(JsonObject& object, const char* key, std::array<std::byte, Size>& into) {
    const auto text = object.text(key, Need::Required);
    const auto bytes = text ? bytesOfHex<Size>(*text) : std::nullopt;
    if (bytes)
        into = *bytes;
    else if (text)
        object.complain(key, errors::lock_damaged());
}

Locked lockedPart(const Json& part, JsonFaults& faults) {
    Locked locked;
    JsonObject object(part, "/locked", faults);
    if (const auto written = object.text("form", Need::Required); written && *written != form)
        object.complain("form", errors::unknown_lock_form());
    readHex(object, "salt", locked.salt);
    readHex(object, "nonce", locked.nonce);
    const auto box = object.text("box", Need::Required);
    locked.box = box ? rawOfHex(*box) : std::string();
    if (box && locked.box.size() <= crypto_secretbox_MACBYTES)
        object.complain("box", errors::lock_damaged());
    object.complainOfTheRest();
    return locked;
}

bool hasLockedPart(const Json& file) {
    const auto part = file.is_object() ? file.find("locked") : file.end();
    return part != file.end() && !part->is_null();
}

struct LockedFile {
    Exercise front;
    Locked locked;
};

Checked<LockedFile> lockedFileFrom(std::string_view json, const std::string& where,
                                   const Arrangement& vessel) {
    auto file = latchround::jsonFrom(json, where);
    if (!file)
        return tl::unexpected(file.error());
    JsonFaults faults(where);
    if (!hasLockedPart(*file))
        return tl::unexpected(Errors{{where, errors::exercise_not_locked()}});
    LockedFile read;
    read.locked = lockedPart((*file)["locked"], faults);
    file->erase("locked");
    auto front = exerciseFrom(file->dump(), where, vessel);
    Errors all = faults.take();
    if (!front)
        all.insert(all.end(), front.error().begin(), front.error().end());
    if (!all.empty())
        return tl::unexpected(std::move(all));
    read.front = std::move(*front);
    if (read.front != frontOf(read.front))
        return tl::unexpected(Errors{{where, errors::locked_faults_in_open()}});
    return read;
}

} // namespace

bool isLockedExercise(std::string_view json) {
    return hasLockedPart(jsonIn(json));
}

Result<std::string> lockedExercise(const Exercise& exercise, std::string_view password) {
    if (charactersIn(password) < shortest_password)
        return tl::unexpected(
            Error{place::password(), errors::password_too_short(shortest_password)});
    Salt salt{};
    Nonce nonce{};
    PasswordKey key;
    if (sodium_init() < 0)
        return tl::unexpected(noMemory(exercise.id));
    randombytes_buf(salt.data(), salt.size());
    randombytes_buf(nonce.data(), nonce.size());
    if (!key.make(password, salt))
        return tl::unexpected(noMemory(exercise.id));
    const std::string whole = jsonFrom(exercise);
    std::vector<std::byte> box(whole.size() + crypto_secretbox_MACBYTES);
    crypto_secretbox_easy(uchars(box.data()), uchars(whole), whole.size(), uchars(nonce.data()),
                          key.data());
    OrderedJson file = orderedJsonIn(jsonFrom(frontOf(exercise)));
    file.erase("drawn");
    file["locked"] = {
        {"form", form}, {"salt", hexOf(salt)}, {"nonce", hexOf(nonce)}, {"box", hexOf(box)}};
    return inLines(file, NotUtf8::Refused);
}

Checked<Exercise> frontOfLocked(std::string_view json, const std::string& where,
                                const Arrangement& vessel) {
    auto file = lockedFileFrom(json, where, vessel);
    if (!file)
        return tl::unexpected(file.error());
    return std::move(file->front);
}

Checked<Exercise> unlockedExercise(std::string_view json, const std::string& where,
                                   std::string_view password, const Arrangement& vessel) {
    const auto file = lockedFileFrom(json, where, vessel);
    if (!file)
        return tl::unexpected(file.error());
    PasswordKey key;
    if (!key.make(password, file->locked.salt))
        return tl::unexpected(Errors{noMemory(where)});
    const std::string& box = file->locked.box;
    std::string whole(box.size() - crypto_secretbox_MACBYTES, '\0');
    if (crypto_secretbox_open_easy(reinterpret_cast<unsigned char*>(whole.data()), uchars(box),
                                   box.size(), uchars(file->locked.nonce.data()), key.data()) != 0)
        return tl::unexpected(Errors{{where, errors::password_does_not_open()}});
    auto exercise = exerciseFrom(whole, where, vessel);
    if (exercise && frontOf(*exercise) != file->front)
        return tl::unexpected(Errors{{where, errors::changed_after_locking()}});
    return exercise;
}

} // namespace latchround::practice
