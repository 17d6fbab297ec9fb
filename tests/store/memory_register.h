// A register that lives in memory and keeps every promise of core/store/register.h but the disk's,
// as tests/store/contract_test.cpp asks of both kinds. It can be made to fail.
#pragma once

#include <functional>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "core/error/register_errors.h"
#include "core/evidence/ledger.h"
#include "core/phrase/places.h"
#include "core/store/register.h"

namespace latchround {

/// As a register says it whose disk is full.
inline const Error disk_full{place::this_register(), errors::not_saved(errors::disk_full())};

class MemoryRegister : public Register {
public:
    explicit MemoryRegister(Arrangement arrangement = {})
        : m_arrangement(std::move(arrangement)) {
        keepDoors();
    }

    /// While set, record(), recordPhotograph() and reopen() complain with it and keep nothing.
    std::optional<Error> failure;
    Obstacle failure_is = Obstacle::Fault; ///< what obstacle() says of it
    std::function<void()> while_recording; ///< called by each record() before it does anything
    /// Every record() that was taken in: one inner list is one transaction.
    std::vector<std::vector<Fact>> transactions;
    int reopened = 0;
    Phrase other_writer; ///< while set, nothing is recorded here

    /// Puts a fact there as if it had been recorded long ago; whatever it is.
    void put(Fact fact);
    std::vector<Fact> all() const { return *facts(); }

    Result<Arrangement> arrangement() const override { return m_arrangement; }
    Result<> adopt(const Arrangement& arrangement, Moment when) override;
    Result<std::vector<Fact>> facts() const override;
    Result<> record(std::span<const Fact> facts) override;
    Result<> recordPhotograph(const Fact& photograph, std::span<const std::byte> bytes) override;
    Result<std::vector<std::byte>> photograph(std::string_view sha256) const override;
    Obstacle obstacle() const override { return failure ? failure_is : Obstacle::Refused; }
    Result<> reopen() override;
    const Phrase& otherWriter() const override { return other_writer; }
    std::string device() const override { return "tablet-test"; }

private:
    void keepDoors();
    std::optional<Error> refusal(std::span<const Fact> facts) const;

    Arrangement m_arrangement;
    std::set<std::string> m_doors; ///< that any issue has known
    Ledger m_ledger;
    std::map<std::string, std::vector<std::byte>, std::less<>> m_photographs;
};

} // namespace latchround
