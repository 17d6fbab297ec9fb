-- Kinds of fact become rows, so that a new kind is a row and a table; four new kinds: the thumb drill, the limits of
-- decision, upkeep done, the certificate seen. A walkdown may take in a sample. The table of facts is made anew around
-- the same rows; what refers to them is checked when they are back.
CREATE TABLE fact_kind (
    word TEXT PRIMARY KEY,
    of_walkdown INTEGER NOT NULL CHECK (of_walkdown IN (0, 1)),
    of_door INTEGER NOT NULL CHECK (of_door IN (0, 1))
) STRICT, WITHOUT ROWID;

INSERT INTO fact_kind (word, of_walkdown, of_door) VALUES
    ('person-joined', 0, 0), ('walkdown-begun', 0, 0), ('walkdown-ended', 1, 0), ('observation', 1, 1),
    ('plate-read', 1, 1), ('measured-value', 1, 1), ('run-started', 1, 1), ('mark', 0, 0), ('run-ended', 0, 0),
    ('caution-answered', 1, 1), ('note', 1, 1), ('photograph', 1, 1), ('deficiency', 1, 1), ('could-not-test', 1, 1),
    ('judgement', 1, 1), ('taken-back', 0, 0), ('thumb-drill', 0, 0), ('decision-limits', 0, 0),
    ('upkeep-done', 0, 0), ('certificate-seen', 0, 0);

DROP VIEW fact_without_body;
CREATE TABLE fact_kept AS SELECT * FROM fact;
DROP TABLE fact;

CREATE TABLE fact (
    id TEXT PRIMARY KEY CHECK (id <> ''),
    kind TEXT NOT NULL REFERENCES fact_kind (word),
    utc_ms INTEGER NOT NULL,
    ship_offset_minutes INTEGER NOT NULL CHECK (ship_offset_minutes BETWEEN -720 AND 840),
    person TEXT NOT NULL REFERENCES person_joined (fact) DEFERRABLE INITIALLY DEFERRED,
    device TEXT NOT NULL,
    supersedes TEXT REFERENCES fact (id) DEFERRABLE INITIALLY DEFERRED,
    walkdown TEXT REFERENCES walkdown_begun (fact) DEFERRABLE INITIALLY DEFERRED,
    door TEXT REFERENCES door_number (number) DEFERRABLE INITIALLY DEFERRED
) STRICT, WITHOUT ROWID;

INSERT INTO fact (id, kind, utc_ms, ship_offset_minutes, person, device, supersedes, walkdown, door)
    SELECT id, kind, utc_ms, ship_offset_minutes, person, device, supersedes, walkdown, door FROM fact_kept;
DROP TABLE fact_kept;

CREATE TRIGGER fact_stays BEFORE UPDATE ON fact BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER fact_kept BEFORE DELETE ON fact BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;
CREATE TRIGGER fact_hangs_on BEFORE INSERT ON fact
    WHEN EXISTS (SELECT 1 FROM fact_kind WHERE word = NEW.kind
                 AND (of_walkdown = (NEW.walkdown IS NULL) OR of_door = (NEW.door IS NULL)))
    BEGIN SELECT RAISE(ABORT, 'a fact of this kind hangs on a walkdown or door, or does not'); END;

CREATE TABLE thumb_drill (
    fact TEXT PRIMARY KEY REFERENCES fact (id) DEFERRABLE INITIALLY DEFERRED
) STRICT, WITHOUT ROWID;

CREATE TABLE thumb_trial (
    fact TEXT NOT NULL REFERENCES thumb_drill (fact) DEFERRABLE INITIALLY DEFERRED,
    seq INTEGER NOT NULL,
    cue TEXT NOT NULL CHECK (cue IN ('alarm-heard', 'leaf-starts', 'leaf-stops')),
    delay_s REAL NOT NULL,
    PRIMARY KEY (fact, seq)
) STRICT, WITHOUT ROWID;

CREATE TABLE decision_limits (
    fact TEXT PRIMARY KEY REFERENCES fact (id) DEFERRABLE INITIALLY DEFERRED,
    satisfactory_from REAL NOT NULL CHECK (satisfactory_from > 0.5 AND satisfactory_from < 1),
    unsatisfactory_to REAL NOT NULL CHECK (unsatisfactory_to > 0 AND unsatisfactory_to < 0.5),
    reason TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE upkeep_done (
    fact TEXT PRIMARY KEY REFERENCES fact (id) DEFERRABLE INITIALLY DEFERRED,
    upkeep TEXT NOT NULL CHECK (upkeep <> ''),
    remark TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE certificate_seen (
    fact TEXT PRIMARY KEY REFERENCES fact (id) DEFERRABLE INITIALLY DEFERRED,
    valid_until TEXT NOT NULL CHECK (valid_until IS date(valid_until))
) STRICT, WITHOUT ROWID;

-- What a walkdown that takes in a sample is to prove; no row where it takes in every door of its scope.
CREATE TABLE walkdown_sample (
    fact TEXT PRIMARY KEY REFERENCES walkdown_begun (fact) DEFERRABLE INITIALLY DEFERRED,
    of_doors INTEGER NOT NULL CHECK (of_doors > 0),
    at_most INTEGER NOT NULL CHECK (at_most >= 0),
    confidence_ppm INTEGER NOT NULL CHECK (confidence_ppm BETWEEN 1 AND 999999),
    lot INTEGER NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TRIGGER upkeep_done_kind BEFORE INSERT ON upkeep_done WHEN (SELECT kind FROM fact WHERE id = NEW.fact) IS NOT 'upkeep-done'
    BEGIN SELECT RAISE(ABORT, 'the fact is of another kind'); END;
CREATE TRIGGER certificate_seen_kind BEFORE INSERT ON certificate_seen WHEN (SELECT kind FROM fact WHERE id = NEW.fact) IS NOT 'certificate-seen'
    BEGIN SELECT RAISE(ABORT, 'the fact is of another kind'); END;
CREATE TRIGGER thumb_drill_kind BEFORE INSERT ON thumb_drill WHEN (SELECT kind FROM fact WHERE id = NEW.fact) IS NOT 'thumb-drill'
    BEGIN SELECT RAISE(ABORT, 'the fact is of another kind'); END;
CREATE TRIGGER decision_limits_kind BEFORE INSERT ON decision_limits WHEN (SELECT kind FROM fact WHERE id = NEW.fact) IS NOT 'decision-limits'
    BEGIN SELECT RAISE(ABORT, 'the fact is of another kind'); END;
CREATE TRIGGER fact_kind_stays BEFORE UPDATE ON fact_kind BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER fact_kind_kept BEFORE DELETE ON fact_kind BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;
CREATE TRIGGER thumb_drill_stays BEFORE UPDATE ON thumb_drill BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER thumb_drill_kept BEFORE DELETE ON thumb_drill BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;
CREATE TRIGGER thumb_trial_stays BEFORE UPDATE ON thumb_trial BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER thumb_trial_kept BEFORE DELETE ON thumb_trial BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;
CREATE TRIGGER decision_limits_stays BEFORE UPDATE ON decision_limits BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER decision_limits_kept BEFORE DELETE ON decision_limits BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;
CREATE TRIGGER upkeep_done_stays BEFORE UPDATE ON upkeep_done BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER upkeep_done_kept BEFORE DELETE ON upkeep_done BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;
CREATE TRIGGER certificate_seen_stays BEFORE UPDATE ON certificate_seen BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER certificate_seen_kept BEFORE DELETE ON certificate_seen BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;
CREATE TRIGGER walkdown_sample_stays BEFORE UPDATE ON walkdown_sample BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER walkdown_sample_kept BEFORE DELETE ON walkdown_sample BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;

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
);
