// Handing over, taking in and verifying as a shell sees it.
#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

#include "tests/whole/shell.h"

namespace latchround {
namespace {

using nlohmann::json;
using ::testing::HasSubstr;

class CliHandover : public Cli {
protected:
    json answer(const QStringList& arguments) const {
        const ShellOutput said = run(arguments);
        EXPECT_EQ(said.exit_code, 0) << said.err;
        EXPECT_EQ(said.err, "");
        return json::parse(said.out);
    }
    QString keyOf(const QString& path) const {
        return QString::fromStdString(answer({"handover", "key", path})["key"]);
    }
};

TEST_F(CliHandover, FromOneRegisterIntoANewOneAndTwiceIsOnce) {
    const QString giver = imported();
    const json given = answer({"handover", "export", giver, "--to", at("h.zip")});
    EXPECT_EQ(answer({"handover", "check", at("h.zip")})["facts"], given["facts"]);

    const ShellOutput unknown = run({"handover", "import", at("h.zip"), "--into", at("b.db")});
    EXPECT_EQ(unknown.exit_code, 2);
    EXPECT_EQ(lines(unknown.err), 1);
    EXPECT_THAT(unknown.err, HasSubstr(given["fingerprint"].get<std::string>()));
    EXPECT_FALSE(QFileInfo::exists(at("b.db"))) << "begun in vain";

    const json tried =
        answer({"handover", "import", at("h.zip"), "--into", at("b.db"), "--dry-run"});
    EXPECT_EQ(tried["key_is"], "asks");
    EXPECT_EQ(tried["new"]["facts"], given["facts"]);
    EXPECT_FALSE(QFileInfo::exists(at("b.db")));

    const QStringList take{"handover",     "import",     at("h.zip"), "--into", at("b.db"),
                           "--accept-key", keyOf(giver), "--person",  "M. Mate"};
    EXPECT_EQ(answer(take)["new"]["facts"], given["facts"]);
    const json again = answer({"handover", "import", at("h.zip"), "--into", at("b.db")});
    EXPECT_EQ(again["key_is"], "accepted");
    EXPECT_EQ(again["new"]["facts"], 0);
    EXPECT_EQ(run({"walkdown", giver}).out, run({"walkdown", at("b.db")}).out);
    const json verified = answer({"verify", at("b.db")});
    EXPECT_EQ(verified["facts"], given["facts"].get<int>() + 2) << "the mate, and the key accepted";
    EXPECT_EQ(verified["keys"].size(), 1u);
}

TEST_F(CliHandover, AnotherKeyThanThatOfTheFileIsNotAccepted) {
    const QString giver = imported();
    answer({"handover", "export", giver, "--to", at("h.zip")});
    const ShellOutput other =
        run({"handover", "import", at("h.zip"), "--into", at("b.db"), "--accept-key",
             QString(64, QLatin1Char('a')), "--person", "M. Mate"});
    EXPECT_EQ(other.exit_code, 2);
    EXPECT_THAT(other.err, HasSubstr("not the file's key"));
    const ShellOutput nobody = run(
        {"handover", "import", at("h.zip"), "--into", at("b.db"), "--accept-key", keyOf(giver)});
    EXPECT_THAT(nobody.err, HasSubstr("--person NAME"));
    EXPECT_FALSE(QFileInfo::exists(at("b.db")));
}

TEST_F(CliHandover, ADamagedFileIsRefusedInOneLine) {
    answer({"handover", "export", imported(), "--to", at("h.zip")});
    QByteArray bytes = bytesAt(at("h.zip"));
    bytes[bytes.size() / 2] = static_cast<char>(bytes[bytes.size() / 2] ^ 4);
    const ShellOutput said = run({"handover", "check", put("bad.zip", bytes)});
    EXPECT_EQ(said.exit_code, 2);
    EXPECT_EQ(lines(said.err), 1) << said.err;
    EXPECT_EQ(said.out, "");
}

TEST_F(CliHandover, SealedForOneRegisterOpensThere) {
    const QString giver = imported();
    const QString receiver = at("b.db");
    run({"register", "import", sample("register.csv"), "--into", receiver});
    answer({"handover", "export", giver, "--to", at("s.zip"), "--only-for", keyOf(receiver)});
    EXPECT_EQ(run({"handover", "check", at("s.zip")}).exit_code, 2);
    EXPECT_EQ(answer({"handover", "check", at("s.zip"), "--register", receiver})["key_is"], "asks");
    EXPECT_THAT(run({"handover", "check", at("s.zip"), "--register", giver}).err,
                HasSubstr("for another device only"));
}

} // namespace
} // namespace latchround
