// What a shell can try with a practice register: every command refuses it and writes nothing.
#include <QDir>
#include <gmock/gmock.h>

#include "app/exchange/fact_json.h"
#include "app/exchange/register_csv.h"
#include "app/practice/practice_vessel.h"
#include "tests/practice/practice_world.h"
#include "tests/whole/shell.h"

namespace latchround::test {
namespace {

using ::testing::HasSubstr;

class CliPracticeRegister : public Cli {
protected:
    CliPracticeRegister() {
        practisedRegister().reset();
        path = at("looks-like-a-vessel.db");
        EXPECT_TRUE(QFile::copy(practicePath(), path));
    }
    void expectRefused(const QStringList& arguments) const {
        const ShellOutput said = run(arguments);
        const std::string asked = arguments.join(QLatin1Char(' ')).toStdString();
        EXPECT_EQ(said.exit_code, 2) << asked;
        EXPECT_EQ(said.out, "") << asked;
        EXPECT_THAT(said.err, HasSubstr("nothing in it is a record of a vessel")) << asked;
        EXPECT_EQ(bytesOfFile(path), bytesOfFile(practicePath())) << asked;
    }

    DataFolder folder;
    QString path;
};

TEST_F(CliPracticeRegister, IsRefusedByEveryCommandThatReads) {
    expectRefused({"verify", path});
    expectRefused({"walkdown", path});
    expectRefused({"walkdown", path, "--json"});
    expectRefused({"items", path});
    expectRefused({"handover", "key", path});
    for (const char* kind : {"survey", "deficiency-list", "work-list", "blank-form"})
        expectRefused({"report", path, "--kind", kind, "--to", at("out.pdf")});
    expectRefused({"report", path, "--to", at("out.csv")});
    expectRefused({"register", "export", path, "--to", at("out.csv")});
    expectRefused({"handover", "export", path, "--to", at("out.zip")});
    for (const char* out : {"out.pdf", "out.csv", "out.zip"})
        EXPECT_FALSE(QFileInfo::exists(at(out))) << out;
}

TEST_F(CliPracticeRegister, TakesNothingIn) {
    const QString vessel = imported();
    ASSERT_EQ(run({"handover", "export", vessel, "--to", at("h.zip")}).exit_code, 0);
    expectRefused({"handover", "import", at("h.zip"), "--into", path});
    expectRefused({"handover", "check", at("h.zip"), "--register", path});
    expectRefused({"register", "import", sample("register.csv"), "--into", path});
    expectRefused({"register", "import", sample("register.csv"), "--into", path, "--history",
                   sample("history.jsonl")});
}

TEST_F(CliPracticeRegister, ItsVesselIsNoRegisterCsv) {
    const QString csv =
        put("practice.csv", QByteArray::fromStdString(csvFrom(practice::practiceVessel())));
    for (const QStringList& arguments :
         {QStringList{"register", "check", csv},
          QStringList{"register", "import", csv, "--into", at("new.db")},
          QStringList{"register", "import", csv, "--into", imported()}}) {
        const ShellOutput said = run(arguments);
        EXPECT_EQ(said.exit_code, 2);
        EXPECT_EQ(lines(said.err), 1) << said.err;
        EXPECT_THAT(said.err, HasSubstr("is reserved for the practice vessel"));
    }
    EXPECT_FALSE(QFileInfo::exists(at("new.db")));
}

TEST_F(CliPracticeRegister, ItsFactsAreNoHistoryOfAVessel) {
    QByteArray history;
    for (const Fact& fact : practisedFacts())
        history += QByteArray::fromStdString(jsonLineFrom(fact) + "\n");
    const ShellOutput said = run({"register", "import", sample("register.csv"), "--into",
                                  at("new.db"), "--history", put("facts.jsonl", history)});
    EXPECT_EQ(said.exit_code, 2);
    EXPECT_NE(said.err, "");
    EXPECT_FALSE(QFileInfo::exists(at("new.db")));
}

} // namespace
} // namespace latchround::test
