-- A kind of fact for undo: what it names counts as if it had never been recorded, until this is undone in its turn.
INSERT INTO fact_kind (word, of_walkdown, of_door) VALUES ('undone', 0, 0);

CREATE TABLE undone (
    fact TEXT PRIMARY KEY REFERENCES fact (id) DEFERRABLE INITIALLY DEFERRED
) STRICT, WITHOUT ROWID;

CREATE TRIGGER undone_kind BEFORE INSERT ON undone WHEN (SELECT kind FROM fact WHERE id = NEW.fact) IS NOT 'undone'
    BEGIN SELECT RAISE(ABORT, 'the fact is of another kind'); END;
CREATE TRIGGER undone_stays BEFORE UPDATE ON undone BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER undone_kept BEFORE DELETE ON undone BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;

DROP VIEW fact_without_body;
-- Facts whose body is missing. Empty unless something other than this program wrote the file.
CREATE VIEW fact_without_body AS
SELECT id, kind FROM fact WHERE id NOT IN (
    SELECT fact FROM person_joined
    UNION ALL SELECT fact FROM walkdown_begun
    UNION ALL SELECT fact FROM walkdown_ended
    UNION ALL SELECT fact FROM observation
    UNION ALL SELECT fact FROM plate_read
    UNION ALL SELECT fact FROM measured_value
    UNION ALL SELECT fact FROM run_started
    UNION ALL SELECT fact FROM mark
    UNION ALL SELECT fact FROM run_ended
    UNION ALL SELECT fact FROM caution_answered
    UNION ALL SELECT fact FROM note
    UNION ALL SELECT fact FROM photograph
    UNION ALL SELECT fact FROM deficiency
    UNION ALL SELECT fact FROM could_not_test
    UNION ALL SELECT fact FROM judgement
    UNION ALL SELECT fact FROM taken_back
    UNION ALL SELECT fact FROM thumb_drill
    UNION ALL SELECT fact FROM decision_limits
    UNION ALL SELECT fact FROM upkeep_done
    UNION ALL SELECT fact FROM certificate_seen
    UNION ALL SELECT fact FROM deficiency_terms
    UNION ALL SELECT fact FROM rectification
    UNION ALL SELECT fact FROM ready_for_retest
    UNION ALL SELECT fact FROM withdrawal
    UNION ALL SELECT fact FROM difference_settled
    UNION ALL SELECT fact FROM key_accepted
    UNION ALL SELECT fact FROM walkdown_signed
    UNION ALL SELECT fact FROM report_made
    UNION ALL SELECT fact FROM undone
);
