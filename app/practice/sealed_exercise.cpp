#include "app/practice/sealed_exercise.h"

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

/// The key of a word, gone from memory with this.
class WordKey {
public:
    WordKey() = default;
    ~WordKey() { sodium_memzero(m_key.data(), m_key.size()); }
    WordKey(const WordKey&) = delete;
    WordKey& operator=(const WordKey&) = delete;

    /// False where the machine has not the memory for it.
    bool make(std::string_view word, const Salt& salt) {
        return sodium_init() >= 0 &&
               crypto_pwhash(m_key.data(), m_key.size(), word.data(), word.size(),
                             uchars(salt.data()), std::uint64_t{passes}, std::size_t{memory_bytes},
                             crypto_pwhash_ALG_ARGON2ID13) == 0;
    }
    const unsigned char* data() const { return m_key.data(); }

private:
    Key m_key{};
};

Error noMemory(const std::string& where) {
    return {where, errors::no_memory_for_word()};
}

/// Without what the word seals.
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

struct Sealed {
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
        object.complain(key, errors::seal_damaged());
}

Sealed sealedPart(const Json& part, JsonFaults& faults) {
    Sealed sealed;
    JsonObject object(part, "/sealed", faults);
    if (const auto written = object.text("form", Need::Required); written && *written != form)
        object.complain("form", errors::unknown_seal_form());
    readHex(object, "salt", sealed.salt);
    readHex(object, "nonce", sealed.nonce);
    const auto box = object.text("box", Need::Required);
    sealed.box = box ? rawOfHex(*box) : std::string();
    if (box && sealed.box.size() <= crypto_secretbox_MACBYTES)
        object.complain("box", errors::seal_damaged());
    object.complainOfTheRest();
    return sealed;
}

bool hasSealedPart(const Json& file) {
    const auto part = file.is_object() ? file.find("sealed") : file.end();
    return part != file.end() && !part->is_null();
}

struct SealedFile {
    Exercise front;
    Sealed sealed;
};

Checked<SealedFile> sealedFileFrom(std::string_view json, const std::string& where,
                                   const Arrangement& vessel) {
    auto file = latchround::jsonFrom(json, where);
    if (!file)
        return tl::unexpected(file.error());
    JsonFaults faults(where);
    if (!hasSealedPart(*file))
        return tl::unexpected(Errors{{where, errors::exercise_not_sealed()}});
    SealedFile read;
    read.sealed = sealedPart((*file)["sealed"], faults);
    file->erase("sealed");
    auto front = exerciseFrom(file->dump(), where, vessel);
    Errors all = faults.take();
    if (!front)
        all.insert(all.end(), front.error().begin(), front.error().end());
    if (!all.empty())
        return tl::unexpected(std::move(all));
    read.front = std::move(*front);
    if (read.front != frontOf(read.front))
        return tl::unexpected(Errors{{where, errors::sealed_faults_in_open()}});
    return read;
}

} // namespace

bool isSealedExercise(std::string_view json) {
    return hasSealedPart(jsonIn(json));
}

Result<std::string> sealedExercise(const Exercise& exercise, std::string_view word) {
    if (charactersIn(word) < shortest_word)
        return tl::unexpected(
            Error{place::instructors_word(), errors::word_too_short(shortest_word)});
    Salt salt{};
    Nonce nonce{};
    WordKey key;
    if (sodium_init() < 0)
        return tl::unexpected(noMemory(exercise.id));
    randombytes_buf(salt.data(), salt.size());
    randombytes_buf(nonce.data(), nonce.size());
    if (!key.make(word, salt))
        return tl::unexpected(noMemory(exercise.id));
    const std::string whole = jsonFrom(exercise);
    std::vector<std::byte> box(whole.size() + crypto_secretbox_MACBYTES);
    crypto_secretbox_easy(uchars(box.data()), uchars(whole), whole.size(), uchars(nonce.data()),
                          key.data());
    OrderedJson file = orderedJsonIn(jsonFrom(frontOf(exercise)));
    file.erase("drawn");
    file["sealed"] = {
        {"form", form}, {"salt", hexOf(salt)}, {"nonce", hexOf(nonce)}, {"box", hexOf(box)}};
    return inLines(file, NotUtf8::Refused);
}

Checked<Exercise> frontOfSealed(std::string_view json, const std::string& where,
                                const Arrangement& vessel) {
    auto file = sealedFileFrom(json, where, vessel);
    if (!file)
        return tl::unexpected(file.error());
    return std::move(file->front);
}

Checked<Exercise> unsealedExercise(std::string_view json, const std::string& where,
                                   std::string_view word, const Arrangement& vessel) {
    const auto file = sealedFileFrom(json, where, vessel);
    if (!file)
        return tl::unexpected(file.error());
    WordKey key;
    if (!key.make(word, file->sealed.salt))
        return tl::unexpected(Errors{noMemory(where)});
    const std::string& box = file->sealed.box;
    std::string whole(box.size() - crypto_secretbox_MACBYTES, '\0');
    if (crypto_secretbox_open_easy(reinterpret_cast<unsigned char*>(whole.data()), uchars(box),
                                   box.size(), uchars(file->sealed.nonce.data()), key.data()) != 0)
        return tl::unexpected(Errors{{where, errors::word_does_not_open()}});
    auto exercise = exerciseFrom(whole, where, vessel);
    if (exercise && frontOf(*exercise) != file->front)
        return tl::unexpected(Errors{{where, errors::changed_after_sealing()}});
    return exercise;
}

} // namespace latchround::practice
