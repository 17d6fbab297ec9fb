#include "app/register/fact_rows_write.h"

#include "core/evidence/references.h"

namespace latchround {

namespace {

/// Writes the body of one fact; one overload a kind. The id comes from the stamp.
class BodyWriter {
public:
    BodyWriter(SqliteConnection& connection, const FactId& id)
        : m_connection(connection)
        , m_id(sqlText(id)) {}

    Result<int> operator()(const PersonJoined& body) const {
        return m_connection.run("INSERT INTO person_joined (fact, name, role) VALUES (?,?,?)",
                                {m_id, sqlText(body.name), sqlText(body.role)});
    }
    Result<int> operator()(const WalkdownBegun& body) const {
        Result<int> result = m_connection.run(
            "INSERT INTO walkdown_begun (fact, purpose, scope, heel_deg, control_station, channel,"
            " start_word, stop_word, may_stop, brief_read) VALUES (?,?,?,?,?,?,?,?,?,?)",
            {m_id, sqlText(word(body.purpose)), sqlText(body.scope), body.heel_deg,
             sqlText(body.control_station), sqlText(body.channel), sqlText(body.start_word),
             sqlText(body.stop_word), sqlText(body.may_stop), sqlFlag(body.brief_read)});
        if (result)
            result = list("INSERT INTO walkdown_team (fact, seq, name) VALUES (?,?,?)", body.team);
        if (result)
            result = list("INSERT INTO walkdown_door (fact, seq, door) VALUES (?,?,?)", body.doors);
        if (result && body.sample)
            result = m_connection.run(
                "INSERT INTO walkdown_sample (fact, of_doors, at_most, confidence_ppm, lot)"
                " VALUES (?,?,?,?,?)",
                {m_id, body.sample->of_doors, body.sample->at_most, body.sample->confidence_ppm,
                 body.sample->lot});
        return result;
    }
    Result<int> operator()(const WalkdownEnded& body) const {
        return m_connection.run("INSERT INTO walkdown_ended (fact, remark) VALUES (?,?)",
                                {m_id, sqlText(body.remark)});
    }
    Result<int> operator()(const Observation& body) const {
        return m_connection.run(
            "INSERT INTO observation (fact, requirement, side, answer) VALUES (?,?,?,?)",
            {m_id, sqlText(body.requirement), sqlText(word(body.side)),
             sqlText(word(body.answer))});
    }
    Result<int> operator()(const PlateRead& body) const {
        return m_connection.run("INSERT INTO plate_read (fact, state, fire_class) VALUES (?,?,?)",
                                {m_id, sqlText(word(body.state)), sqlWordOrNull(body.fire_class)});
    }
    Result<int> operator()(const MeasuredValue& body) const {
        return m_connection.run(
            "INSERT INTO measured_value (fact, requirement, value, unit) VALUES (?,?,?,?)",
            {m_id, sqlText(body.requirement), body.value, sqlText(body.unit)});
    }
    Result<int> operator()(const RunStarted& body) const {
        return m_connection.run(
            "INSERT INTO run_started (fact, run_kind, release, heel_deg, release_group)"
            " VALUES (?,?,?,?,?)",
            {m_id, sqlText(word(body.kind)), sqlText(word(body.release)), body.heel_deg,
             sqlTextOrNull(body.release_group)});
    }
    Result<int> operator()(const Mark& body) const {
        return m_connection.run(
            "INSERT INTO mark (fact, run, mark, event_ms, steady_ns, input_device, by_hand_ns)"
            " VALUES (?,?,?,?,?,?,?)",
            {m_id, sqlText(body.run), sqlText(word(body.kind)), sqlWholeOrNull(body.event_ms),
             sqlWholeOrNull(body.steady_ns), sqlText(word(body.device)),
             sqlWholeOrNull(body.by_hand_ns)});
    }
    Result<int> operator()(const RunEnded& body) const {
        return m_connection.run(
            "INSERT INTO run_ended (fact, run, outcome, reason) VALUES (?,?,?,?)",
            {m_id, sqlText(body.run), sqlText(word(body.outcome)), sqlText(body.reason)});
    }
    Result<int> operator()(const CautionAnswered& body) const {
        return m_connection.run(
            "INSERT INTO caution_answered (fact, question, confirmed) VALUES (?,?,?)",
            {m_id, sqlText(body.question), sqlFlag(body.confirmed)});
    }
    Result<int> operator()(const Note& body) const {
        return m_connection.run("INSERT INTO note (fact, text) VALUES (?,?)",
                                {m_id, sqlText(body.text)});
    }
    Result<int> operator()(const Photograph& body) const {
        return m_connection.run(
            "INSERT INTO photograph (fact, sha256, media_type, caption, requirement, shows)"
            " VALUES (?,?,?,?,?,?)",
            {m_id, sqlText(body.sha256), sqlText(body.media_type), sqlText(body.caption),
             sqlText(body.requirement), sqlTextOrNull(body.shows)});
    }
    Result<int> operator()(const Deficiency& body) const {
        return m_connection.run(
            "INSERT INTO deficiency (fact, requirement, text, repeats) VALUES (?,?,?,?)",
            {m_id, sqlText(body.requirement), sqlText(body.text), sqlTextOrNull(body.repeats)});
    }
    Result<int> operator()(const CouldNotTest& body) const {
        return m_connection.run(
            "INSERT INTO could_not_test (fact, requirement, reason) VALUES (?,?,?)",
            {m_id, sqlText(body.requirement), sqlText(body.reason)});
    }
    Result<int> operator()(const Judgement& body) const {
        return m_connection.run(
            "INSERT INTO judgement (fact, requirement, satisfactory, reason) VALUES (?,?,?,?)",
            {m_id, sqlText(body.requirement), sqlFlag(body.satisfactory), sqlText(body.reason)});
    }
    Result<int> operator()(const ThumbDrill& body) const {
        Result<int> result = m_connection.run("INSERT INTO thumb_drill (fact) VALUES (?)", {m_id});
        for (std::size_t i = 0; i < body.trials.size() && result; ++i)
            result = m_connection.run(
                "INSERT INTO thumb_trial (fact, seq, cue, delay_s) VALUES (?,?,?,?)",
                {m_id, sqlWhole(static_cast<std::int64_t>(i)), sqlText(word(body.trials[i].cue)),
                 body.trials[i].delay_s});
        return result;
    }
    Result<int> operator()(const DecisionLimits& body) const {
        return m_connection.run(
            "INSERT INTO decision_limits (fact, satisfactory_from,"
            " unsatisfactory_to, reason) VALUES (?,?,?,?)",
            {m_id, body.satisfactory_from, body.unsatisfactory_to, sqlText(body.reason)});
    }
    Result<int> operator()(const UpkeepDone& body) const {
        return m_connection.run("INSERT INTO upkeep_done (fact, upkeep, remark) VALUES (?,?,?)",
                                {m_id, sqlText(body.upkeep), sqlText(body.remark)});
    }
    Result<int> operator()(const CertificateSeen& body) const {
        return m_connection.run("INSERT INTO certificate_seen (fact, valid_until) VALUES (?,?)",
                                {m_id, sqlText(isoText(body.valid_until))});
    }
    Result<int> operator()(const DeficiencyTerms& body) const {
        return m_connection.run(
            "INSERT INTO deficiency_terms (fact, deficiency, severity, action,"
            " ground_for_detention, due, interim, assigned) VALUES (?,?,?,?,?,?,?,?)",
            {m_id, sqlText(body.deficiency), sqlWordOrNull(body.severity),
             sqlWordOrNull(body.action),
             body.ground_for_detention ? sqlFlag(*body.ground_for_detention) : Value(),
             body.due ? sqlText(isoText(*body.due)) : Value(), sqlTextOrNull(body.interim),
             sqlTextOrNull(body.assigned)});
    }
    Result<int> operator()(const Rectification& body) const {
        return m_connection.run(
            "INSERT INTO rectification (fact, deficiency, what, by_name) VALUES (?,?,?,?)",
            {m_id, sqlText(body.deficiency), sqlText(body.what), sqlText(body.by)});
    }
    Result<int> operator()(const ReadyForRetest& body) const {
        return m_connection.run(
            "INSERT INTO ready_for_retest (fact, deficiency, remark) VALUES (?,?,?)",
            {m_id, sqlText(body.deficiency), sqlText(body.remark)});
    }
    Result<int> operator()(const Withdrawal& body) const {
        return m_connection.run("INSERT INTO withdrawal (fact, deficiency, reason) VALUES (?,?,?)",
                                {m_id, sqlText(body.deficiency), sqlText(body.reason)});
    }
    Result<int> operator()(const DifferenceSettled& body) const {
        Result<int> result =
            m_connection.run("INSERT INTO difference_settled (fact, stands, reason) VALUES (?,?,?)",
                             {m_id, sqlText(body.stands), sqlText(body.reason)});
        if (result)
            result =
                list("INSERT INTO difference_over (fact, seq, yields) VALUES (?,?,?)", body.over);
        return result;
    }
    Result<int> operator()(const KeyAccepted& body) const {
        return m_connection.run(
            "INSERT INTO key_accepted (fact, key, of_device, remark) VALUES (?,?,?,?)",
            {m_id, sqlText(body.key), sqlText(body.of_device), sqlText(body.remark)});
    }
    Result<int> operator()(const WalkdownSigned& body) const {
        Result<int> result = m_connection.run(
            "INSERT INTO walkdown_signed (fact, capacity, facts_sha256, key, signature)"
            " VALUES (?,?,?,?,?)",
            {m_id, sqlText(word(body.capacity)), sqlText(body.facts_sha256), sqlText(body.key),
             sqlText(body.signature)});
        return result ? covered(body.covers) : result;
    }
    Result<int> operator()(const ReportMade& body) const {
        Result<int> result = m_connection.run(
            "INSERT INTO report_made (fact, report, of_door, catalogue_edition, facts_sha256,"
            " document_sha256) VALUES (?,?,?,?,?,?)",
            {m_id, sqlText(word(body.report)), sqlText(body.of_door),
             sqlText(body.catalogue_edition), sqlText(body.facts_sha256),
             sqlText(body.document_sha256)});
        return result ? covered(body.covers) : result;
    }
    Result<int> operator()(const Undone&) const {
        return m_connection.run("INSERT INTO undone (fact) VALUES (?)", {m_id});
    }
    Result<int> operator()(const TakenBack& body) const {
        return m_connection.run("INSERT INTO taken_back (fact, reason) VALUES (?,?)",
                                {m_id, sqlText(body.reason)});
    }

private:
    Result<int> covered(const std::vector<Covered>& parts) const {
        Result<int> result = 0;
        for (std::size_t i = 0; i < parts.size() && result; ++i)
            result = m_connection.run(
                "INSERT INTO fact_covered (fact, seq, device, last, facts) VALUES (?,?,?,?,?)",
                {m_id, sqlWhole(static_cast<std::int64_t>(i)), sqlText(parts[i].device),
                 sqlText(parts[i].last), parts[i].facts});
        return result;
    }
    Result<int> list(std::string_view sql, const std::vector<std::string>& entries) const {
        Result<int> result = 0;
        for (std::size_t i = 0; i < entries.size() && result; ++i)
            result = m_connection.run(
                sql, {m_id, sqlWhole(static_cast<std::int64_t>(i)), sqlText(entries[i])});
        return result;
    }

    SqliteConnection& m_connection;
    Value m_id;
};

} // namespace

Result<Written> writeFact(SqliteConnection& connection, const Fact& fact) {
    const Stamp& stamp = fact.stamp;
    const FactReferences references = referencesOf(fact.body);
    const Result<int> header = connection.run(
        "INSERT INTO fact (id, kind, utc_ms, ship_offset_minutes, person, device, "
        "supersedes, walkdown, door)"
        " VALUES (?,?,?,?,?,?,?,?,?) ON CONFLICT (id) DO NOTHING",
        {sqlText(stamp.id), sqlText(factKindWords[fact.body.index()]), sqlWhole(stamp.when.utc_ms),
         stamp.when.ship_offset_minutes, sqlText(stamp.person), sqlText(stamp.device),
         sqlTextOrNull(stamp.supersedes),
         references.walkdown ? sqlText(*references.walkdown) : Value(),
         references.door ? sqlText(*references.door) : Value()});
    if (!header)
        return tl::unexpected(header.error());
    if (*header == 0)
        return Written::AlreadyThere;
    const Result<int> body = std::visit(BodyWriter(connection, stamp.id), fact.body);
    if (!body)
        return tl::unexpected(body.error());
    return Written::New;
}

} // namespace latchround
