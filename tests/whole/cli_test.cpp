// latchround-cli as a shell sees it: the built program, its two streams and its exit code.
#include <sys/file.h>

#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

#include "tests/whole/shell.h"

namespace latchround {

namespace {

using ::testing::HasSubstr;
using ::testing::Not;
using ::testing::StartsWith;

} // namespace

TEST_F(Cli, ChecksARegisterFileAndCountsItsDoors) {
    const ShellOutput said = run({"register", "check", sample("register.csv")});
    EXPECT_EQ(said.exit_code, 0) << said.err;
    const auto answer = nlohmann::json::parse(said.out);
    EXPECT_EQ(answer["doors"], 9);
    EXPECT_EQ(answer["vessel"], "Ternwick Lass");
    EXPECT_EQ(said.err, "");
}

TEST_F(Cli, NamesEveryFaultOfARegisterFileOnALineOfItsOwn) {
    QByteArray csv = bytesAt(sample("register.csv"));
    csv.replace("door,1-01,1,", "door,1-01,77,")
        .replace(",engine room,single,", ",nowhere,single,");
    const ShellOutput said = run({"register", "check", put("bad.csv", csv)});
    EXPECT_EQ(said.exit_code, 2);
    EXPECT_EQ(said.out, "");
    EXPECT_EQ(lines(said.err), 2) << said.err;
    EXPECT_THAT(said.err, StartsWith(at("bad.csv").toStdString() + " line "));
}

TEST_F(Cli, RefusesRubbishWithoutACrash) {
    const QString rubbish = put("rubbish", QByteArray("\x00\xff\xfe{[\"", 7).repeated(50));
    for (const QStringList& arguments :
         {QStringList{"register", "check", rubbish}, QStringList{"grade", rubbish},
          QStringList{"walkdown", rubbish}, QStringList{"register", "export", rubbish, "--to", "-"},
          QStringList{"report", rubbish, "--to", at("x.pdf")},
          QStringList{"register", "check", at("missing.csv")},
          QStringList{"--catalogue", rubbish, "grade", rubbish}}) {
        const ShellOutput said = run(arguments);
        EXPECT_EQ(said.exit_code, 2) << arguments.join(' ').toStdString();
        EXPECT_GE(lines(said.err), 1);
        EXPECT_THAT(said.err, Not(HasSubstr("terminate called")));
        EXPECT_EQ(said.out, "");
    }
    EXPECT_FALSE(QFileInfo::exists(at("x.pdf")));
}

TEST_F(Cli, ExplainsAWrongCommandLineInOneLine) {
    for (const QStringList& arguments :
         {QStringList{}, QStringList{"open"}, QStringList{"register"}, QStringList{"grade"},
          QStringList{"walkdown", "x", "--colour"}}) {
        const ShellOutput said = run(arguments);
        EXPECT_EQ(said.exit_code, 2);
        EXPECT_EQ(lines(said.err), 1) << said.err;
    }
    EXPECT_EQ(run({"--help"}).exit_code, 0);
    EXPECT_THAT(run({"--version"}).out, StartsWith("latchround-cli "));
}

TEST_F(Cli, ImportsAndExportsTheSameRegister) {
    const QString path = imported();
    const ShellOutput said = run({"register", "export", path, "--to", "-"});
    EXPECT_EQ(said.exit_code, 0) << said.err;
    EXPECT_EQ(said.out, bytesAt(sample("register.csv")).toStdString());
    EXPECT_EQ(run({"register", "export", path, "--to", at("out.csv")}).exit_code, 0);
    EXPECT_EQ(bytesAt(at("out.csv")), bytesAt(sample("register.csv")));
}

TEST_F(Cli, DryRunMakesNoRegister) {
    const ShellOutput said = run({"register", "import", sample("register.csv"), "--into",
                                  at("new.db"), "--history", sample("history.jsonl"), "--dry-run"});
    EXPECT_EQ(said.exit_code, 0) << said.err;
    const auto answer = nlohmann::json::parse(said.out);
    EXPECT_EQ(answer["dry_run"], true);
    EXPECT_EQ(answer["facts"], bytesAt(sample("history.jsonl")).count('\n'));
    EXPECT_FALSE(QFileInfo::exists(at("new.db")));
}

TEST_F(Cli, DryRunAsksTheRegisterWhetherTheFactsFit) {
    const QString path = imported();
    const QByteArray before = run({"register", "export", path, "--to", "-"}).out.c_str();
    const QByteArray history = bytesAt(sample("history.jsonl"));
    const QString orphan =
        put("orphan.jsonl", history.mid(history.lastIndexOf("\n{") + 1)
                                .replace("\"walkdown\":\"0", "\"walkdown\":\"1"));
    for (const QString& into : {path, at("new.db")}) {
        const ShellOutput said = run({"register", "import", sample("register.csv"), "--into", into,
                                      "--history", orphan, "--dry-run"});
        EXPECT_EQ(said.exit_code, 2);
        EXPECT_EQ(lines(said.err), 1) << said.err;
    }
    EXPECT_FALSE(QFileInfo::exists(at("new.db")));
    EXPECT_EQ(run({"register", "export", path, "--to", "-"}).out, before.toStdString());
}

TEST_F(Cli, ARefusedHistoryLeavesTheArrangementAsItWas) {
    const QString path = imported();
    QByteArray changed = bytesAt(sample("register.csv"));
    changed.replace("Ternwick Lass", "Ternwick Lad");
    const QString csv = put("changed.csv", changed);
    const QByteArray history = bytesAt(sample("history.jsonl"));
    const QString orphan = put("orphan.jsonl", history.mid(history.lastIndexOf("\n{") + 1)
                                                   .replace("\"walkdown\":\"0", "\"walkdown\":\"1")
                                                   .replace("\"id\":\"0", "\"id\":\"1"));
    EXPECT_EQ(run({"register", "import", csv, "--into", path, "--history", orphan}).exit_code, 2);
    EXPECT_THAT(run({"register", "export", path, "--to", "-"}).out, HasSubstr("Ternwick Lass"));
    EXPECT_EQ(run({"register", "import", csv, "--into", path}).exit_code, 0);
    EXPECT_THAT(run({"register", "export", path, "--to", "-"}).out, HasSubstr("Ternwick Lad"));
}

/// A log without its register: entries that somebody may still want.
TEST_F(Cli, LeavesAloneWhatLayThereBefore) {
    const QString vessel = imported();
    ASSERT_EQ(run({"handover", "export", vessel, "--to", at("h.zip")}).exit_code, 0);
    const QString log = put("gone.db-wal", "entries");
    for (const QStringList& command :
         {QStringList{"register", "import", sample("register.csv"), "--into", at("gone.db")},
          QStringList{"register", "import", sample("register.csv"), "--into", at("gone.db"),
                      "--dry-run"},
          QStringList{"handover", "import", at("h.zip"), "--into", at("gone.db")}}) {
        const ShellOutput said = run(command);
        EXPECT_EQ(said.exit_code, 2);
        EXPECT_THAT(said.err, HasSubstr("gone.db-wal"));
        EXPECT_EQ(bytesAt(log), "entries");
        EXPECT_FALSE(QFileInfo::exists(at("gone.db")));
    }
}

TEST_F(Cli, WritesNothingWhereAnotherProgramWrites) {
    const QString vessel = imported();
    ASSERT_EQ(run({"handover", "export", vessel, "--to", at("h.zip")}).exit_code, 0);
    const QByteArray before = bytesAt(vessel);
    QFile lock(vessel + ".writer"); // as the desktop holds it
    ASSERT_TRUE(lock.open(QIODevice::ReadWrite));
    ASSERT_EQ(::flock(lock.handle(), LOCK_EX | LOCK_NB), 0);
    lock.write("process 4711 on bridge\n");
    lock.flush();
    for (const QStringList& command :
         {QStringList{"register", "import", sample("register.csv"), "--into", vessel},
          QStringList{"handover", "import", at("h.zip"), "--into", vessel}}) {
        const ShellOutput said = run(command);
        EXPECT_EQ(said.exit_code, 2) << command.join(' ').toStdString();
        EXPECT_THAT(said.err, HasSubstr("process 4711 on bridge"));
        EXPECT_EQ(lines(said.err), 1) << said.err;
    }
    EXPECT_EQ(run({"register", "export", vessel, "--to", "-"}).exit_code, 0) << "it may be read";
    EXPECT_EQ(bytesAt(vessel), before);
    EXPECT_EQ(bytesAt(lock.fileName()), "process 4711 on bridge\n");
}

TEST_F(Cli, LeavesNoHalfRegisterBehindARefusedImport) {
    QByteArray history = bytesAt(sample("history.jsonl"));
    const QString broken = put("broken.jsonl", history + "{\"id\":\n");
    const ShellOutput unreadable = run({"register", "import", sample("register.csv"), "--into",
                                        at("new.db"), "--history", broken});
    EXPECT_EQ(unreadable.exit_code, 2);
    EXPECT_THAT(unreadable.err,
                HasSubstr("broken.jsonl line " + std::to_string(history.count('\n') + 1)));
    EXPECT_FALSE(QFileInfo::exists(at("new.db")));

    // Facts that speak of a walkdown nobody began are readable, and refused by the register.
    const QString headless = put("headless.jsonl", history.mid(history.lastIndexOf("\n{") + 1));
    const ShellOutput refused = run({"register", "import", sample("register.csv"), "--into",
                                     at("new.db"), "--history", headless});
    EXPECT_EQ(refused.exit_code, 2);
    EXPECT_EQ(lines(refused.err), 1) << refused.err;
    for (const char* name : {"new.db", "new.db-wal", "new.db-shm"})
        EXPECT_FALSE(QFileInfo::exists(at(name))) << name;
}

TEST_F(Cli, ALookAtARegisterThatIsNotThereBeginsNone) {
    EXPECT_EQ(run({"walkdown", at("none.db")}).exit_code, 2);
    EXPECT_EQ(run({"report", at("none.db"), "--to", at("x.pdf")}).exit_code, 2);
    EXPECT_FALSE(QFileInfo::exists(at("none.db")));
}

TEST_F(Cli, ShowsTheLatestWalkdownAsATable) {
    const ShellOutput said = run({"walkdown", imported()});
    EXPECT_EQ(said.exit_code, 0) << said.err;
    EXPECT_THAT(said.out, HasSubstr("Ternwick Lass, annual walkdown"));
    EXPECT_THAT(said.out, HasSubstr("6 of 9 doors done"));
    EXPECT_THAT(said.out, HasSubstr("Doors that need attention:"));
    EXPECT_THAT(said.out, HasSubstr("SOLAS 1974 chapter II-2"));
    for (const char* door : {"1-01", "2-03", "3-02"})
        EXPECT_THAT(said.out, HasSubstr(std::string("\n") + door + " "));
}

TEST_F(Cli, GivesAWalkdownAsJsonAndByItsId) {
    const QString path = imported();
    const auto latest = nlohmann::json::parse(run({"walkdown", path, "--json"}).out);
    EXPECT_EQ(latest["doors"].size(), 9u);
    EXPECT_EQ(latest["walkdown"]["doors"], 9);
    const std::string first = "01926b28-f7e0-7e2a-8538-4abc7ca55cbf";
    const auto older = nlohmann::json::parse(
        run({"walkdown", path, "--json", "--walkdown", QString::fromStdString(first)}).out);
    EXPECT_EQ(older["walkdown"]["id"], first);
    EXPECT_NE(latest["walkdown"]["id"], first);
    const ShellOutput unknown = run({"walkdown", path, "--walkdown", "nothing"});
    EXPECT_EQ(unknown.exit_code, 2);
    EXPECT_THAT(unknown.err, HasSubstr("'nothing'"));
}

TEST_F(Cli, PrintsAReport) {
    const ShellOutput said = run({"report", imported(), "--to", at("report.pdf")});
    EXPECT_EQ(said.exit_code, 0) << said.err;
    EXPECT_EQ(nlohmann::json::parse(said.out)["doors"], 9);
    const QByteArray pdf = bytesAt(at("report.pdf"));
    EXPECT_TRUE(pdf.startsWith("%PDF-"));
    EXPECT_TRUE(pdf.trimmed().endsWith("%%EOF"));
}

TEST_F(Cli, ComplainsWhereTheReportCannotBeWritten) {
    const ShellOutput said = run({"report", imported(), "--to", at("no/such/folder/report.pdf")});
    EXPECT_EQ(said.exit_code, 2);
    EXPECT_EQ(lines(said.err), 1) << said.err;
}

TEST_F(Cli, GradesAFile) {
    const QString file = put("grade.json", R"({"vessel":{"regime":"solas-passenger",
        "passengers":400,"built":"2012-05-01",
        "sprinklers":true},"doors":[{"id":"D1","kind":"single","place":"zone-bulkhead",
        "class":"A-60"}]})");
    const ShellOutput said = run({"grade", file});
    EXPECT_EQ(said.exit_code, 0) << said.err;
    EXPECT_EQ(nlohmann::json::parse(said.out)["doors"][0]["id"], "D1");
}

TEST_F(Cli, UsesTheCatalogueItIsGiven) {
    const QString own =
        put("own.json", R"({"edition":"Own list of today","deference":"None.","issuer":"We",
        "rows":[{"id":"painted","words":"Painted","question":"Painted?","check":"seen",
        "cite":"own","status":"usage","severity":"minor","step":"look"}]})");
    const auto answer =
        nlohmann::json::parse(run({"walkdown", imported(), "--json", "--catalogue", own}).out);
    EXPECT_EQ(answer["catalogue"]["edition"], "Own list of today");
    EXPECT_EQ(answer["doors"][0]["rows"].size(), 1u);
}

} // namespace latchround
