// The vessel register as the rest of the program sees it: one vessel, its arrangement, and its
// facts. Whatever implements it promises: when record() or adopt() has returned without an
// error, all of it is on disk and survives a crash of the program and, if the storage honours
// flush requests, loss of power; when it returns an error, none of it is.
#pragma once

#include <cstddef>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/error/error.h"
#include "core/evidence/fact.h"
#include "core/vessel/arrangement.h"

namespace latchround {

class Register {
public:
    Register() = default;
    Register(const Register&) = delete;
    Register& operator=(const Register&) = delete;
    virtual ~Register() = default;

    /// The arrangement adopted last; an empty one (no name, no doors) before the first.
    virtual Result<Arrangement> arrangement() const = 0;

    /// Takes a new issue of the arrangement; earlier issues stay on record. Refuses one that drops
    /// a door about which facts are recorded.
    virtual Result<> adopt(const Arrangement& arrangement, Moment when) = 0;

    /// All facts in the order of their ids.
    virtual Result<std::vector<Fact>> facts() const = 0;

    /// Adds facts, all in one transaction or none, in any order. A fact that is already there, byte
    /// for byte, is left as it is; another with the same id is refused; so is what refers to a fact
    /// or a door that is not there, and what may not be recorded now (core/evidence/admission.h).
    virtual Result<> record(std::span<const Fact> facts) = 0;

    /// What stood in the way where record(), recordPhotograph() or adopt() complained last. Busy:
    /// somebody else was writing just then, and the same may be saved a moment later. Refused: it
    /// is not allowed, nor will it be later. Fault: the disk, the file, anything else.
    enum class Obstacle { Fault, Busy, Refused };
    virtual Obstacle obstacle() const { return Obstacle::Fault; }

    /// Adds a Photograph fact together with its bytes, in one transaction. The hash must be that of
    /// the bytes.
    virtual Result<> recordPhotograph(const Fact& photograph, std::span<const std::byte> bytes) = 0;

    /// The bytes of a photograph by their SHA-256 (hex); complains where they are not here.
    virtual Result<std::vector<std::byte>> photograph(std::string_view sha256) const = 0;

    /// After a fault: closes and opens the register again, so that the next record() starts clean.
    virtual Result<> reopen() = 0;

    /// Who else writes in this register: then record() and adopt() are refused, and facts() brings
    /// what the other adds. Empty: nobody.
    virtual const Phrase& otherWriter() const {
        static const Phrase nobody;
        return nobody;
    }

    /// This device's own id, made once and kept with the register.
    virtual std::string device() const = 0;
};

} // namespace latchround
