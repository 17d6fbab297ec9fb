#include "app/register/fact_rows_write.h"

#include "app/register/fact_tables.h"

namespace latchround {

namespace {

/// Values of a row that begins with the fact's id.
RowValues rowOfFact(const FactId& id) {
    constexpr std::size_t usual = 12;
    RowValues row;
    row.values.reserve(usual);
    row.values.push_back(sqlText(id));
    return row;
}

template <class Element>
Result<int> writePart(SqliteConnection& connection, const PartSql& sql, const FactId& id,
                      const std::vector<Element>& list) {
    Result<int> result = 0;
    for (std::size_t i = 0; i < list.size() && result; ++i) {
        RowValues row = rowOfFact(id);
        row.values.emplace_back(static_cast<std::int64_t>(i));
        eachColumnOfPart(list[i], row);
        result = connection.run(sql.insert, row.values);
    }
    return result;
}

template <Described Whole>
Result<int> writePart(SqliteConnection& connection, const PartSql& sql, const FactId& id,
                      const std::optional<Whole>& part) {
    if (!part)
        return 0;
    RowValues row = rowOfFact(id);
    eachColumnOfPart(*part, row);
    return connection.run(sql.insert, row.values);
}

template <class Body>
Result<int> writeBody(SqliteConnection& connection, const FactId& id, const Body& body) {
    const FactSql& sql = factSql<Body>();
    RowValues row = rowOfFact(id);
    eachColumn(body, row);
    Result<int> result = connection.run(sql.insert, row.values);
    auto next = sql.parts.begin();
    eachPart(body, [&](const char*, const auto& part) {
        if (result)
            result = writePart(connection, *next, id, part);
        ++next;
    });
    return result;
}

} // namespace

Result<Written> writeFact(SqliteConnection& connection, const Fact& fact) {
    const Stamp& stamp = fact.stamp;
    const FactReferences references = referencesOf(fact.body);
    const Result<int> header =
        connection.run("INSERT INTO fact (id, kind, utc_ms, ship_offset_minutes, person, device, "
                       "supersedes, walkdown, door)"
                       " VALUES (?,?,?,?,?,?,?,?,?) ON CONFLICT (id) DO NOTHING",
                       {sqlText(stamp.id), sqlText(factKindWords[fact.body.index()]),
                        Value(stamp.when.utc_ms), stamp.when.ship_offset_minutes,
                        sqlText(stamp.person), sqlText(stamp.device), columnValue(stamp.supersedes),
                        references.walkdown ? sqlText(*references.walkdown) : Value(),
                        references.door ? sqlText(*references.door) : Value()});
    if (!header)
        return tl::unexpected(header.error());
    if (*header == 0)
        return Written::AlreadyThere;
    const Result<int> body = std::visit(
        [&](const auto& one) { return writeBody(connection, stamp.id, one); }, fact.body);
    if (!body)
        return tl::unexpected(body.error());
    return Written::New;
}

} // namespace latchround
