#include "tests/ashore/ashore_text.h"

#include <QSqlRecord>
#include <gtest/gtest.h>

#include "app/ashore/ashore_schema.h"
#include "app/ashore/vessel_rows.h"
#include "app/exchange/fact_json.h"
#include "ui/words/phrase_words.h"

namespace latchround::test {

std::unique_ptr<PostgresConnection> connected(const DatabaseUrl& url) {
    auto connection = PostgresConnection::connect(url);
    if (!connection)
        throw std::runtime_error(ui::inOneLine(connection.error()));
    const Result<> done = (*connection)->script("SET search_path TO latchround");
    EXPECT_TRUE(done);
    return std::move(*connection);
}

std::vector<std::string> rowsOf(PostgresConnection& ashore, const std::string& sql) {
    std::vector<std::string> rows;
    const Result<> done = ashore.each(sql, {}, [&](const QSqlQuery& row) {
        std::string text;
        for (int i = 0; i < row.record().count(); ++i)
            text += (i > 0 ? "\t" : "") + row.value(i).toString().toStdString();
        rows.push_back(std::move(text));
    });
    EXPECT_TRUE(done) << ui::inOneLine(done.error());
    return rows;
}

std::string everythingIn(PostgresConnection& ashore) {
    std::string all;
    for (const std::string& table :
         rowsOf(ashore, "SELECT tablename FROM pg_tables WHERE schemaname = 'latchround'"
                        " ORDER BY tablename")) {
        all += "== " + table + "\n";
        for (const std::string& row :
             rowsOf(ashore, "SELECT to_jsonb(t) - '{made,seen,taken}'::text[] FROM " + table +
                                " AS t ORDER BY 1"))
            all += row + "\n";
    }
    return all;
}

FromAshore vesselFrom(PostgresConnection& ashore, const std::string& number) {
    auto mirror = VesselMirror::make();
    EXPECT_TRUE(mirror);
    EXPECT_TRUE(mirror->begin());
    const Result<> done = loadVessel(ashore, number, *mirror);
    EXPECT_TRUE(done) << ui::inOneLine(done.error());
    return {mirror->arrangement().value(), mirror->ledger().value()};
}

std::string linesOf(const Ledger& ledger) {
    std::string lines;
    for (const auto& [id, fact] : ledger.facts())
        lines += jsonLineFrom(fact) + "\n";
    return lines;
}

} // namespace latchround::test
