-- Version 1 of a vessel register: the whole schema. Run once, inside one transaction, by app/register/migrations.
-- A register holds one vessel. Rows are only ever added; the triggers at the end refuse every change and deletion.
-- Texts of closed sets are the words of core (core/evidence/fact_words.h, core/vessel/*.h).

-- The tablet this file lives on. One row, made with the file.
CREATE TABLE this_device (
    only_row INTEGER PRIMARY KEY CHECK (only_row = 1),
    id TEXT NOT NULL CHECK (id <> '')
) STRICT;

-- Every door number that any issue of the arrangement has known. Facts hang on the number, not on an issue.
CREATE TABLE door_number (
    number TEXT PRIMARY KEY CHECK (number <> '')
) STRICT, WITHOUT ROWID;

-- Issues of the arrangement. The latest (highest id) counts; earlier ones stay on record.
-- NULL where core has an empty text that refers to nothing.
CREATE TABLE arrangement (
    id INTEGER PRIMARY KEY,
    adopted_utc_ms INTEGER NOT NULL,
    ship_offset_minutes INTEGER NOT NULL CHECK (ship_offset_minutes BETWEEN -720 AND 840),
    name TEXT NOT NULL,
    number TEXT NOT NULL,
    regime TEXT NOT NULL CHECK (regime IN ('solas-passenger', 'us-h', 'us-k', 'other')),
    passengers INTEGER NOT NULL,
    keel_laid TEXT CHECK (keel_laid IS NULL OR keel_laid IS date(keel_laid)),
    sprinklers INTEGER NOT NULL CHECK (sprinklers IN (0, 1)),
    length_m REAL NOT NULL
) STRICT;

CREATE TABLE deck (
    arrangement INTEGER NOT NULL REFERENCES arrangement (id),
    seq INTEGER NOT NULL,
    number TEXT NOT NULL,
    name TEXT NOT NULL,
    height_m REAL NOT NULL,
    PRIMARY KEY (arrangement, seq),
    UNIQUE (arrangement, number)
) STRICT, WITHOUT ROWID;

CREATE TABLE zone (
    arrangement INTEGER NOT NULL REFERENCES arrangement (id),
    seq INTEGER NOT NULL,
    number TEXT NOT NULL,
    aft_m REAL NOT NULL,
    forward_m REAL NOT NULL,
    PRIMARY KEY (arrangement, seq),
    UNIQUE (arrangement, number)
) STRICT, WITHOUT ROWID;

CREATE TABLE boundary (
    arrangement INTEGER NOT NULL REFERENCES arrangement (id),
    seq INTEGER NOT NULL,
    id TEXT NOT NULL,
    place TEXT NOT NULL CHECK (place IN ('zone-bulkhead', 'stairway', 'galley', 'machinery',
                                         'special-category', 'cabin', 'exterior', 'other')),
    zone_aft TEXT,
    zone_forward TEXT,
    x_m REAL NOT NULL,
    required TEXT CHECK (required IN ('A-60', 'A-30', 'A-15', 'A-0', 'B-15', 'B-0', 'C')),
    PRIMARY KEY (arrangement, seq),
    UNIQUE (arrangement, id),
    FOREIGN KEY (arrangement, zone_aft) REFERENCES zone (arrangement, number),
    FOREIGN KEY (arrangement, zone_forward) REFERENCES zone (arrangement, number)
) STRICT, WITHOUT ROWID;

CREATE TABLE door (
    arrangement INTEGER NOT NULL REFERENCES arrangement (id),
    seq INTEGER NOT NULL,
    number TEXT NOT NULL REFERENCES door_number (number),
    deck TEXT,
    x_m REAL NOT NULL,
    y_m REAL NOT NULL,
    boundary TEXT,
    kind TEXT NOT NULL CHECK (kind IN ('single', 'double', 'sliding', 'double-swing')),
    fire_class TEXT NOT NULL
        CHECK (fire_class IN ('A-60', 'A-30', 'A-15', 'A-0', 'B-15', 'B-0', 'C')),
    plate TEXT NOT NULL,
    opening_m REAL NOT NULL,
    leaf_mass_kg REAL,
    power_operated INTEGER NOT NULL CHECK (power_operated IN (0, 1)),
    hold_back INTEGER NOT NULL CHECK (hold_back IN (0, 1)),
    alarm INTEGER NOT NULL CHECK (alarm IN (0, 1)),
    designed_to_reopen INTEGER NOT NULL CHECK (designed_to_reopen IN (0, 1)),
    hose_port INTEGER NOT NULL CHECK (hose_port IN (0, 1)),
    escape_route INTEGER NOT NULL CHECK (escape_route IN (0, 1)),
    sill_in_frame INTEGER NOT NULL CHECK (sill_in_frame IN (0, 1)),
    latch INTEGER NOT NULL CHECK (latch IN (0, 1)),
    watertight INTEGER NOT NULL CHECK (watertight IN (0, 1)),
    normally TEXT NOT NULL CHECK (normally IN ('open', 'closed', 'locked')),
    installed TEXT CHECK (installed IS NULL OR installed IS date(installed)),
    PRIMARY KEY (arrangement, seq),
    UNIQUE (arrangement, number),
    FOREIGN KEY (arrangement, deck) REFERENCES deck (arrangement, number),
    FOREIGN KEY (arrangement, boundary) REFERENCES boundary (arrangement, id)
) STRICT, WITHOUT ROWID;

CREATE TABLE door_release_group (
    arrangement INTEGER NOT NULL,
    door_seq INTEGER NOT NULL,
    seq INTEGER NOT NULL,
    name TEXT NOT NULL,
    PRIMARY KEY (arrangement, door_seq, seq),
    FOREIGN KEY (arrangement, door_seq) REFERENCES door (arrangement, seq)
) STRICT, WITHOUT ROWID;

-- The stamp of a fact and what it is about; the rest is in the one table named for its kind.
-- References are deferred: facts merged from another tablet may come in any order inside one transaction.
CREATE TABLE fact (
    id TEXT PRIMARY KEY CHECK (id <> ''),
    kind TEXT NOT NULL CHECK (kind IN (
        'person-joined', 'walkdown-begun', 'walkdown-ended', 'observation', 'plate-read',
        'measured-value', 'run-started', 'mark', 'run-ended', 'caution-answered', 'note',
        'photograph', 'deficiency', 'could-not-test', 'judgement', 'taken-back')),
    utc_ms INTEGER NOT NULL,
    ship_offset_minutes INTEGER NOT NULL CHECK (ship_offset_minutes BETWEEN -720 AND 840),
    person TEXT NOT NULL REFERENCES person_joined (fact) DEFERRABLE INITIALLY DEFERRED,
    device TEXT NOT NULL,
    supersedes TEXT REFERENCES fact (id) DEFERRABLE INITIALLY DEFERRED,
    walkdown TEXT REFERENCES walkdown_begun (fact) DEFERRABLE INITIALLY DEFERRED,
    door TEXT REFERENCES door_number (number) DEFERRABLE INITIALLY DEFERRED,
    CHECK ((walkdown IS NULL) = (kind IN (
        'person-joined', 'walkdown-begun', 'mark', 'run-ended', 'taken-back'))),
    CHECK ((door IS NULL) = (kind IN (
        'person-joined', 'walkdown-begun', 'walkdown-ended', 'mark', 'run-ended', 'taken-back')))
) STRICT, WITHOUT ROWID;

CREATE TABLE person_joined (
    fact TEXT PRIMARY KEY REFERENCES fact (id) DEFERRABLE INITIALLY DEFERRED,
    name TEXT NOT NULL,
    role TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE walkdown_begun (
    fact TEXT PRIMARY KEY REFERENCES fact (id) DEFERRABLE INITIALLY DEFERRED,
    purpose TEXT NOT NULL CHECK (purpose IN (
        'annual', 'quarterly', 'after-repair', 'port-state', 'drill', 'other')),
    scope TEXT NOT NULL,
    heel_deg REAL NOT NULL,
    control_station TEXT NOT NULL,
    channel TEXT NOT NULL,
    start_word TEXT NOT NULL,
    stop_word TEXT NOT NULL,
    may_stop TEXT NOT NULL,
    brief_read INTEGER NOT NULL CHECK (brief_read IN (0, 1))
) STRICT, WITHOUT ROWID;

CREATE TABLE walkdown_team (
    fact TEXT NOT NULL REFERENCES walkdown_begun (fact) DEFERRABLE INITIALLY DEFERRED,
    seq INTEGER NOT NULL,
    name TEXT NOT NULL,
    PRIMARY KEY (fact, seq)
) STRICT, WITHOUT ROWID;

CREATE TABLE walkdown_door (
    fact TEXT NOT NULL REFERENCES walkdown_begun (fact) DEFERRABLE INITIALLY DEFERRED,
    seq INTEGER NOT NULL,
    door TEXT NOT NULL REFERENCES door_number (number) DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY (fact, seq)
) STRICT, WITHOUT ROWID;

CREATE TABLE walkdown_ended (
    fact TEXT PRIMARY KEY REFERENCES fact (id) DEFERRABLE INITIALLY DEFERRED,
    remark TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE observation (
    fact TEXT PRIMARY KEY REFERENCES fact (id) DEFERRABLE INITIALLY DEFERRED,
    requirement TEXT NOT NULL,
    side TEXT NOT NULL CHECK (side IN ('none', 'one', 'two')),
    answer TEXT NOT NULL CHECK (answer IN ('yes', 'no', 'n/a'))
) STRICT, WITHOUT ROWID;

CREATE TABLE plate_read (
    fact TEXT PRIMARY KEY REFERENCES fact (id) DEFERRABLE INITIALLY DEFERRED,
    state TEXT NOT NULL CHECK (state IN ('read', 'none', 'illegible')),
    fire_class TEXT CHECK (fire_class IN ('A-60', 'A-30', 'A-15', 'A-0', 'B-15', 'B-0', 'C')),
    CHECK (state <> 'read' OR fire_class IS NOT NULL)
) STRICT, WITHOUT ROWID;

CREATE TABLE measured_value (
    fact TEXT PRIMARY KEY REFERENCES fact (id) DEFERRABLE INITIALLY DEFERRED,
    requirement TEXT NOT NULL,
    value REAL NOT NULL,
    unit TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE run_started (
    fact TEXT PRIMARY KEY REFERENCES fact (id) DEFERRABLE INITIALLY DEFERRED,
    run_kind TEXT NOT NULL CHECK (run_kind IN ('closing', 'contact')),
    release TEXT NOT NULL CHECK (release IN ('remote', 'local-1', 'local-2', 'let-go')),
    heel_deg REAL NOT NULL,
    release_group TEXT
) STRICT, WITHOUT ROWID;

CREATE TABLE mark (
    fact TEXT PRIMARY KEY REFERENCES fact (id) DEFERRABLE INITIALLY DEFERRED,
    run TEXT NOT NULL REFERENCES run_started (fact) DEFERRABLE INITIALLY DEFERRED,
    mark TEXT NOT NULL CHECK (mark IN ('alarm-on', 'moves', 'half-way', 'shut', 'alarm-off',
                                       'first-home', 'second-home', 'touched', 'stopped')),
    event_ms INTEGER CHECK (event_ms BETWEEN 0 AND 4294967295),
    steady_ns INTEGER,
    input_device TEXT NOT NULL CHECK (input_device IN ('mouse', 'touch', 'key', 'hand')),
    by_hand_ns INTEGER
) STRICT, WITHOUT ROWID;

CREATE TABLE run_ended (
    fact TEXT PRIMARY KEY REFERENCES fact (id) DEFERRABLE INITIALLY DEFERRED,
    run TEXT NOT NULL REFERENCES run_started (fact) DEFERRABLE INITIALLY DEFERRED,
    outcome TEXT NOT NULL CHECK (outcome IN ('complete', 'spoiled', 'stopped')),
    reason TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE caution_answered (
    fact TEXT PRIMARY KEY REFERENCES fact (id) DEFERRABLE INITIALLY DEFERRED,
    question TEXT NOT NULL,
    confirmed INTEGER NOT NULL CHECK (confirmed IN (0, 1))
) STRICT, WITHOUT ROWID;

CREATE TABLE note (
    fact TEXT PRIMARY KEY REFERENCES fact (id) DEFERRABLE INITIALLY DEFERRED,
    text TEXT NOT NULL
) STRICT, WITHOUT ROWID;

-- The bytes may arrive after the fact (facts from another tablet), so the hash is no foreign key.
CREATE TABLE photograph (
    fact TEXT PRIMARY KEY REFERENCES fact (id) DEFERRABLE INITIALLY DEFERRED,
    sha256 TEXT NOT NULL CHECK (length(sha256) = 64 AND sha256 NOT GLOB '*[^0-9a-f]*'),
    media_type TEXT NOT NULL,
    caption TEXT NOT NULL,
    requirement TEXT NOT NULL
) STRICT, WITHOUT ROWID;

-- With a rowid: large values in a table without one would bloat its inner pages.
CREATE TABLE photograph_bytes (
    sha256 TEXT PRIMARY KEY NOT NULL,
    bytes BLOB NOT NULL
) STRICT;

CREATE TABLE deficiency (
    fact TEXT PRIMARY KEY REFERENCES fact (id) DEFERRABLE INITIALLY DEFERRED,
    requirement TEXT NOT NULL,
    text TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE could_not_test (
    fact TEXT PRIMARY KEY REFERENCES fact (id) DEFERRABLE INITIALLY DEFERRED,
    requirement TEXT NOT NULL,
    reason TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE judgement (
    fact TEXT PRIMARY KEY REFERENCES fact (id) DEFERRABLE INITIALLY DEFERRED,
    requirement TEXT NOT NULL,
    satisfactory INTEGER NOT NULL CHECK (satisfactory IN (0, 1)),
    reason TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE taken_back (
    fact TEXT PRIMARY KEY REFERENCES fact (id) DEFERRABLE INITIALLY DEFERRED,
    reason TEXT NOT NULL
) STRICT, WITHOUT ROWID;

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
);

-- A body belongs to a fact of its own kind.
CREATE TRIGGER person_joined_kind BEFORE INSERT ON person_joined WHEN (SELECT kind FROM fact WHERE id = NEW.fact) IS NOT 'person-joined'
    BEGIN SELECT RAISE(ABORT, 'the fact is of another kind'); END;
CREATE TRIGGER walkdown_begun_kind BEFORE INSERT ON walkdown_begun WHEN (SELECT kind FROM fact WHERE id = NEW.fact) IS NOT 'walkdown-begun'
    BEGIN SELECT RAISE(ABORT, 'the fact is of another kind'); END;
CREATE TRIGGER walkdown_ended_kind BEFORE INSERT ON walkdown_ended WHEN (SELECT kind FROM fact WHERE id = NEW.fact) IS NOT 'walkdown-ended'
    BEGIN SELECT RAISE(ABORT, 'the fact is of another kind'); END;
CREATE TRIGGER observation_kind BEFORE INSERT ON observation WHEN (SELECT kind FROM fact WHERE id = NEW.fact) IS NOT 'observation'
    BEGIN SELECT RAISE(ABORT, 'the fact is of another kind'); END;
CREATE TRIGGER plate_read_kind BEFORE INSERT ON plate_read WHEN (SELECT kind FROM fact WHERE id = NEW.fact) IS NOT 'plate-read'
    BEGIN SELECT RAISE(ABORT, 'the fact is of another kind'); END;
CREATE TRIGGER measured_value_kind BEFORE INSERT ON measured_value WHEN (SELECT kind FROM fact WHERE id = NEW.fact) IS NOT 'measured-value'
    BEGIN SELECT RAISE(ABORT, 'the fact is of another kind'); END;
CREATE TRIGGER run_started_kind BEFORE INSERT ON run_started WHEN (SELECT kind FROM fact WHERE id = NEW.fact) IS NOT 'run-started'
    BEGIN SELECT RAISE(ABORT, 'the fact is of another kind'); END;
CREATE TRIGGER mark_kind BEFORE INSERT ON mark WHEN (SELECT kind FROM fact WHERE id = NEW.fact) IS NOT 'mark'
    BEGIN SELECT RAISE(ABORT, 'the fact is of another kind'); END;
CREATE TRIGGER run_ended_kind BEFORE INSERT ON run_ended WHEN (SELECT kind FROM fact WHERE id = NEW.fact) IS NOT 'run-ended'
    BEGIN SELECT RAISE(ABORT, 'the fact is of another kind'); END;
CREATE TRIGGER caution_answered_kind BEFORE INSERT ON caution_answered WHEN (SELECT kind FROM fact WHERE id = NEW.fact) IS NOT 'caution-answered'
    BEGIN SELECT RAISE(ABORT, 'the fact is of another kind'); END;
CREATE TRIGGER note_kind BEFORE INSERT ON note WHEN (SELECT kind FROM fact WHERE id = NEW.fact) IS NOT 'note'
    BEGIN SELECT RAISE(ABORT, 'the fact is of another kind'); END;
CREATE TRIGGER photograph_kind BEFORE INSERT ON photograph WHEN (SELECT kind FROM fact WHERE id = NEW.fact) IS NOT 'photograph'
    BEGIN SELECT RAISE(ABORT, 'the fact is of another kind'); END;
CREATE TRIGGER deficiency_kind BEFORE INSERT ON deficiency WHEN (SELECT kind FROM fact WHERE id = NEW.fact) IS NOT 'deficiency'
    BEGIN SELECT RAISE(ABORT, 'the fact is of another kind'); END;
CREATE TRIGGER could_not_test_kind BEFORE INSERT ON could_not_test WHEN (SELECT kind FROM fact WHERE id = NEW.fact) IS NOT 'could-not-test'
    BEGIN SELECT RAISE(ABORT, 'the fact is of another kind'); END;
CREATE TRIGGER judgement_kind BEFORE INSERT ON judgement WHEN (SELECT kind FROM fact WHERE id = NEW.fact) IS NOT 'judgement'
    BEGIN SELECT RAISE(ABORT, 'the fact is of another kind'); END;
CREATE TRIGGER taken_back_kind BEFORE INSERT ON taken_back WHEN (SELECT kind FROM fact WHERE id = NEW.fact) IS NOT 'taken-back'
    BEGIN SELECT RAISE(ABORT, 'the fact is of another kind'); END;

-- What is recorded stays as it was recorded.
CREATE TRIGGER this_device_stays BEFORE UPDATE ON this_device BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER this_device_kept BEFORE DELETE ON this_device BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;
CREATE TRIGGER door_number_stays BEFORE UPDATE ON door_number BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER door_number_kept BEFORE DELETE ON door_number BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;
CREATE TRIGGER arrangement_stays BEFORE UPDATE ON arrangement BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER arrangement_kept BEFORE DELETE ON arrangement BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;
CREATE TRIGGER deck_stays BEFORE UPDATE ON deck BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER deck_kept BEFORE DELETE ON deck BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;
CREATE TRIGGER zone_stays BEFORE UPDATE ON zone BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER zone_kept BEFORE DELETE ON zone BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;
CREATE TRIGGER boundary_stays BEFORE UPDATE ON boundary BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER boundary_kept BEFORE DELETE ON boundary BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;
CREATE TRIGGER door_stays BEFORE UPDATE ON door BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER door_kept BEFORE DELETE ON door BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;
CREATE TRIGGER door_release_group_stays BEFORE UPDATE ON door_release_group BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER door_release_group_kept BEFORE DELETE ON door_release_group BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;
CREATE TRIGGER fact_stays BEFORE UPDATE ON fact BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER fact_kept BEFORE DELETE ON fact BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;
CREATE TRIGGER person_joined_stays BEFORE UPDATE ON person_joined BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER person_joined_kept BEFORE DELETE ON person_joined BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;
CREATE TRIGGER walkdown_begun_stays BEFORE UPDATE ON walkdown_begun BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER walkdown_begun_kept BEFORE DELETE ON walkdown_begun BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;
CREATE TRIGGER walkdown_ended_stays BEFORE UPDATE ON walkdown_ended BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER walkdown_ended_kept BEFORE DELETE ON walkdown_ended BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;
CREATE TRIGGER observation_stays BEFORE UPDATE ON observation BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER observation_kept BEFORE DELETE ON observation BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;
CREATE TRIGGER plate_read_stays BEFORE UPDATE ON plate_read BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER plate_read_kept BEFORE DELETE ON plate_read BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;
CREATE TRIGGER measured_value_stays BEFORE UPDATE ON measured_value BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER measured_value_kept BEFORE DELETE ON measured_value BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;
CREATE TRIGGER run_started_stays BEFORE UPDATE ON run_started BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER run_started_kept BEFORE DELETE ON run_started BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;
CREATE TRIGGER mark_stays BEFORE UPDATE ON mark BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER mark_kept BEFORE DELETE ON mark BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;
CREATE TRIGGER run_ended_stays BEFORE UPDATE ON run_ended BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER run_ended_kept BEFORE DELETE ON run_ended BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;
CREATE TRIGGER caution_answered_stays BEFORE UPDATE ON caution_answered BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER caution_answered_kept BEFORE DELETE ON caution_answered BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;
CREATE TRIGGER note_stays BEFORE UPDATE ON note BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER note_kept BEFORE DELETE ON note BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;
CREATE TRIGGER photograph_stays BEFORE UPDATE ON photograph BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER photograph_kept BEFORE DELETE ON photograph BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;
CREATE TRIGGER deficiency_stays BEFORE UPDATE ON deficiency BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER deficiency_kept BEFORE DELETE ON deficiency BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;
CREATE TRIGGER could_not_test_stays BEFORE UPDATE ON could_not_test BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER could_not_test_kept BEFORE DELETE ON could_not_test BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;
CREATE TRIGGER judgement_stays BEFORE UPDATE ON judgement BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER judgement_kept BEFORE DELETE ON judgement BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;
CREATE TRIGGER taken_back_stays BEFORE UPDATE ON taken_back BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER taken_back_kept BEFORE DELETE ON taken_back BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;
CREATE TRIGGER walkdown_team_stays BEFORE UPDATE ON walkdown_team BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER walkdown_team_kept BEFORE DELETE ON walkdown_team BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;
CREATE TRIGGER walkdown_door_stays BEFORE UPDATE ON walkdown_door BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER walkdown_door_kept BEFORE DELETE ON walkdown_door BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;
CREATE TRIGGER photograph_bytes_stays BEFORE UPDATE ON photograph_bytes BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER photograph_bytes_kept BEFORE DELETE ON photograph_bytes BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;
