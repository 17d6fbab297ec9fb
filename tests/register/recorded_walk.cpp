#include "tests/register/recorded_walk.h"

#include <algorithm>

#include <QFile>
#include <gtest/gtest.h>

#include "tests/register/raw_sqlite.h"
#include "ui/words/phrase_words.h"

namespace latchround {

namespace {

std::string askSqlite(const QString& file) {
    RawSqlite raw(file);
    if (const std::string sound = raw.single("PRAGMA integrity_check"); sound != "ok")
        return "integrity_check: " + sound;
    if (const std::string dangling = raw.single("PRAGMA foreign_key_check"); !dangling.empty())
        return "foreign_key_check: " + dangling;
    if (const std::string half = raw.single("SELECT id FROM fact_without_body"); !half.empty())
        return "no body for fact " + half;
    const std::string lists = raw.single(
        "SELECT count(*) FROM walkdown_begun WHERE 5 <> "
        "(SELECT count(*) FROM walkdown_begun_team AS t WHERE t.fact = walkdown_begun.fact) + "
        "(SELECT count(*) FROM walkdown_begun_doors AS d WHERE d.fact = walkdown_begun.fact)");
    if (lists != "0")
        return "a walkdown without its lists: " + lists;
    return {};
}

} // namespace

Result<> perform(Register& opened, const Action& action) {
    if (action.photograph.empty())
        return opened.record(action.facts);
    return opened.recordPhotograph(action.facts.front(), action.photograph);
}

Found lookInto(const QString& file, const std::vector<Action>& walk, const QString& vfs) {
    OpenOptions options;
    options.vfs = vfs;
    const auto opened = SqliteRegister::open(file, options);
    if (!opened)
        return {"does not open: " + ui::inOneLine(opened.error()), 0};
    if (const Result<> sound = (*opened)->examine(); !sound)
        return {ui::inOneLine(sound.error()), 0};
    if (std::string fault = askSqlite(file); !fault.empty())
        return {fault, 0};
    const auto facts = (*opened)->facts();
    if (!facts)
        return {ui::inOneLine(facts.error()), 0};
    Found found;
    auto at = facts->begin();
    for (const Action& action : walk) {
        if (at == facts->end())
            break;
        for (const Fact& fact : action.facts)
            if (at == facts->end() || *at++ != fact)
                return {"half of an action, or a gap, at fact " + fact.stamp.id, found.actions};
        if (!action.photograph.empty()) {
            const auto bytes = (*opened)->photograph(sha256Of(action.photograph));
            if (!bytes || *bytes != action.photograph)
                return {"a photograph without its bytes", found.actions};
        }
        ++found.actions;
    }
    if (at != facts->end())
        return {"a fact that nobody recorded", found.actions};
    return found;
}

void makeRegister(const QString& file, const QString& vfs) {
    OpenOptions options;
    options.vfs = vfs;
    const auto opened = SqliteRegister::open(file, options);
    ASSERT_TRUE(opened) << ui::inOneLine(opened.error());
    const Result<> adopted = (*opened)->adopt(sampleArrangement(), sampleMoment());
    ASSERT_TRUE(adopted) << ui::inOneLine(adopted.error());
}

void placeCopy(const QString& from, const QString& to) {
    for (const char* ending : {"", "-wal", "-shm", "-journal"})
        QFile::remove(to + QString::fromLatin1(ending));
    ASSERT_TRUE(QFile::copy(from, to));
}

} // namespace latchround
