#include "every_paper.h"

#include <gtest/gtest.h>

#include "app/exchange/facts_hash.h"
#include "app/report/made_report.h"
#include "app/report/paper_form.h"
#include "app/report/rule_book.h"
#include "core/evidence/basis.h"
#include "core/given.h"
#include "ui/words/phrase_words.h"

namespace latchround {

namespace {

constexpr Moment printing{1795601520000, 60}; // 2026-11-25T10:12:00Z
constexpr auto program = "Latchround 9.8.7";

QByteArray pdfIn(const Result<QByteArray>& made) {
    EXPECT_TRUE(made) << (made ? "" : ui::inOneLine(made.error()));
    return made.value_or(QByteArray());
}

} // namespace

SampleOfAll::SampleOfAll() {
    add(CouldNotTest{walkdown, "3-01", "", {"space locked, no key", "space-locked-no-key"}});
    add(RunStarted{walkdown, "5-31", RunKind::Closing, Release::LetGo, 0.3});
    const auto basis = basisOf(ledger, walkdown);
    WalkdownSigned by;
    by.walkdown = walkdown;
    by.covers = coverOf(basis);
    by.facts_sha256 = factsSha256(basis);
    by.key = std::string(64, 'a');
    add(by);
    add(Note{walkdown, "5-31", "Wedge removed"});
}

std::map<std::string, PrintedPaper> everyPaper(const SampleWalkdown& sample) {
    std::map<std::string, PrintedPaper> papers;
    WalkdownReport report{sample.arrangement,
                          sample.ledger,
                          sample.walkdown,
                          given::catalogue(),
                          printing,
                          program,
                          [&](std::string_view sha256) {
                              return sha256 == sample.photograph_sha256 ? sample.photograph_bytes
                                                                        : std::vector<std::byte>{};
                          },
                          false,
                          sample.ledger.people().front().id,
                          "5-32"};
    for (const auto& [kind, word] : reportKindWords) {
        const auto made = madeReport(report, kind);
        EXPECT_TRUE(made) << (made ? "" : ui::inOneLine(made.error()));
        if (made)
            papers[std::string(word)] = {made->document, made->fact.language};
    }
    papers["blank-form"] = {pdfIn(paperFormPdf({sample.arrangement,
                                                given::catalogue(),
                                                {"5-32", "5-31"},
                                                Purpose::Annual,
                                                printing,
                                                program})),
                            {}};
    papers["rule-book"] = {
        pdfIn(ruleBookPdf({given::catalogue(), nullptr, nullptr, printing, program, false})), {}};
    return papers;
}

QByteArray ruleBookOf(const SampleWalkdown& sample, bool of_door) {
    RuleBook book{given::catalogue(), &sample.arrangement, nullptr, printing, program, false};
    const Door* door = findDoor(sample.arrangement, "5-32");
    const GradedDoor graded = asRegistered(sample.arrangement, *door, given::catalogue());
    if (of_door)
        book.door = &graded;
    return pdfIn(ruleBookPdf(book));
}

} // namespace latchround
