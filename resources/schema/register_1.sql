-- The whole schema of a vessel register. Run once, inside one transaction, by app/register/migrations.
-- A register holds one vessel. Rows are only ever added; the triggers at the end refuse every change and deletion.
-- Texts of closed sets are the words of core (core/evidence/fact_words.h, core/vessel/*.h).
-- Columns bear the keys of core/evidence/fact_fields.h, as in JSON, and of core/vessel/arrangement_fields.h, as in CSV; a
-- list, or a part with fields of its own, is a table named for its table and its key.

-- The tablet this file lives on. One row, made with the file.
CREATE TABLE this_device (
    only_row INTEGER PRIMARY KEY CHECK (only_row = 1),
    id TEXT NOT NULL CHECK (id <> '')
) STRICT;

-- The seed of the key this device signs with. One row, made when something is signed first; never handed over.
CREATE TABLE this_device_key (
    only_row INTEGER PRIMARY KEY CHECK (only_row = 1),
    seed BLOB NOT NULL CHECK (length(seed) = 32)
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
    regime TEXT NOT NULL CHECK (regime IN ('solas-passenger', 'us-h', 'us-k', 'canada-convention', 'canada', 'canada-day', 'eu-inland', 'large-yacht', 'other')),
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
    area_m2 REAL CHECK (area_m2 IS NULL OR area_m2 > 0),
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
    division TEXT NOT NULL CHECK (division IN ('bulkhead', 'deck')),
    -- Of the fire tables, on either side.
    spaces_one INTEGER CHECK (spaces_one BETWEEN 1 AND 14),
    spaces_other INTEGER CHECK (spaces_other BETWEEN 1 AND 14),
    PRIMARY KEY (arrangement, seq),
    UNIQUE (arrangement, id),
    FOREIGN KEY (arrangement, zone_aft) REFERENCES zone (arrangement, number),
    FOREIGN KEY (arrangement, zone_forward) REFERENCES zone (arrangement, number)
) STRICT, WITHOUT ROWID;

-- NULL where the register does not say whether a part is fitted.
CREATE TABLE door (
    arrangement INTEGER NOT NULL REFERENCES arrangement (id),
    seq INTEGER NOT NULL,
    number TEXT NOT NULL REFERENCES door_number (number),
    deck TEXT,
    x_m REAL NOT NULL,
    y_m REAL NOT NULL,
    boundary TEXT,
    kind TEXT NOT NULL CHECK (kind IN ('single', 'double', 'sliding', 'double-swing')),
    class TEXT NOT NULL CHECK (class IN ('A-60', 'A-30', 'A-15', 'A-0', 'B-15', 'B-0', 'C')),
    plate TEXT NOT NULL,
    opening_m REAL NOT NULL,
    leaf_mass_kg REAL,
    power_operated INTEGER CHECK (power_operated IN (0, 1)),
    hold_back INTEGER CHECK (hold_back IN (0, 1)),
    alarm INTEGER CHECK (alarm IN (0, 1)),
    designed_to_reopen INTEGER CHECK (designed_to_reopen IN (0, 1)),
    hose_port INTEGER CHECK (hose_port IN (0, 1)),
    escape_route INTEGER CHECK (escape_route IN (0, 1)),
    sill_in_frame INTEGER CHECK (sill_in_frame IN (0, 1)),
    latch INTEGER CHECK (latch IN (0, 1)),
    watertight INTEGER CHECK (watertight IN (0, 1)),
    normally TEXT NOT NULL CHECK (normally IN ('open', 'closed', 'locked')),
    installed TEXT CHECK (installed IS NULL OR installed IS date(installed)),
    weathertight INTEGER CHECK (weathertight IN (0, 1)),
    escape_trunk INTEGER CHECK (escape_trunk IN (0, 1)),
    special_category INTEGER CHECK (special_category IN (0, 1)),
    faces_embarkation INTEGER CHECK (faces_embarkation IN (0, 1)),
    maker TEXT NOT NULL, -- empty: not on record
    PRIMARY KEY (arrangement, seq),
    UNIQUE (arrangement, number),
    FOREIGN KEY (arrangement, deck) REFERENCES deck (arrangement, number),
    FOREIGN KEY (arrangement, boundary) REFERENCES boundary (arrangement, id)
) STRICT, WITHOUT ROWID;

CREATE TABLE door_release_groups (
    arrangement INTEGER NOT NULL,
    door_seq INTEGER NOT NULL,
    seq INTEGER NOT NULL,
    value TEXT NOT NULL,
    PRIMARY KEY (arrangement, door_seq, seq),
    FOREIGN KEY (arrangement, door_seq) REFERENCES door (arrangement, seq)
) STRICT, WITHOUT ROWID;

-- What kinds of fact there are: a new one is a row and a table.
CREATE TABLE fact_kind (
    word TEXT PRIMARY KEY,
    of_walkdown INTEGER NOT NULL CHECK (of_walkdown IN (0, 1)),
    of_door INTEGER NOT NULL CHECK (of_door IN (0, 1))
) STRICT, WITHOUT ROWID;

INSERT INTO fact_kind (word, of_walkdown, of_door) VALUES
    ('person-joined', 0, 0), ('walkdown-begun', 0, 0), ('walkdown-ended', 1, 0), ('observation', 1, 1),
    ('plate-read', 1, 1), ('measured-value', 1, 1), ('run-started', 1, 1), ('mark', 0, 0),
    ('run-ended', 0, 0), ('caution-answered', 1, 1), ('note', 1, 1), ('photograph', 1, 1),
    ('deficiency', 1, 1), ('could-not-test', 1, 1), ('judgement', 1, 1), ('taken-back', 0, 0),
    ('thumb-drill', 0, 0), ('decision-limits', 0, 0), ('upkeep-done', 0, 0), ('certificate-seen', 0, 0),
    ('deficiency-terms', 0, 0), ('rectification', 0, 0), ('awaiting-retest', 0, 0), ('withdrawal', 0, 0),
    ('difference-settled', 0, 0), ('key-accepted', 0, 0), ('walkdown-signed', 1, 0), ('report-made', 1, 0),
    ('undone', 0, 0);

-- The stamp of a fact and what it is about; the rest is in the one table named for its kind.
-- References are deferred: facts merged from another tablet may come in any order inside one transaction.
-- `<column>_phrase` is the id of the phrase by which the words of that column were picked, NULL of own words.
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

CREATE TABLE person_joined (
    fact TEXT PRIMARY KEY REFERENCES fact (id) DEFERRABLE INITIALLY DEFERRED,
    name TEXT NOT NULL,
    role TEXT NOT NULL,
    role_phrase TEXT
) STRICT, WITHOUT ROWID;

CREATE TABLE walkdown_begun (
    fact TEXT PRIMARY KEY REFERENCES fact (id) DEFERRABLE INITIALLY DEFERRED,
    purpose TEXT NOT NULL CHECK (purpose IN (
        'annual', 'quarterly', 'after-repair', 'port-state', 'door-campaign', 'blackout', 'drill',
        'other')),
    scope TEXT NOT NULL,
    scope_phrase TEXT,
    heel_deg REAL NOT NULL,
    control_station TEXT NOT NULL,
    control_station_phrase TEXT,
    channel TEXT NOT NULL,
    channel_phrase TEXT,
    start_word TEXT NOT NULL,
    stop_word TEXT NOT NULL,
    may_stop TEXT NOT NULL,
    may_stop_phrase TEXT,
    brief_read INTEGER NOT NULL CHECK (brief_read IN (0, 1))
) STRICT, WITHOUT ROWID;

CREATE TABLE walkdown_begun_team (
    fact TEXT NOT NULL REFERENCES walkdown_begun (fact) DEFERRABLE INITIALLY DEFERRED,
    seq INTEGER NOT NULL,
    value TEXT NOT NULL,
    PRIMARY KEY (fact, seq)
) STRICT, WITHOUT ROWID;

CREATE TABLE walkdown_begun_doors (
    fact TEXT NOT NULL REFERENCES walkdown_begun (fact) DEFERRABLE INITIALLY DEFERRED,
    seq INTEGER NOT NULL,
    value TEXT NOT NULL REFERENCES door_number (number) DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY (fact, seq)
) STRICT, WITHOUT ROWID;

-- What a walkdown that takes in a sample is to prove; no row where it takes in every door of its scope.
CREATE TABLE walkdown_begun_sample (
    fact TEXT PRIMARY KEY REFERENCES walkdown_begun (fact) DEFERRABLE INITIALLY DEFERRED,
    of_doors INTEGER NOT NULL CHECK (of_doors > 0),
    at_most INTEGER NOT NULL CHECK (at_most >= 0),
    confidence_ppm INTEGER NOT NULL CHECK (confidence_ppm BETWEEN 1 AND 999999),
    random_seed INTEGER NOT NULL
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
    unit TEXT NOT NULL,
    step REAL
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
    outcome TEXT NOT NULL CHECK (outcome IN ('complete', 'void', 'stopped')),
    reason TEXT NOT NULL,
    reason_phrase TEXT
) STRICT, WITHOUT ROWID;

CREATE TABLE caution_answered (
    fact TEXT PRIMARY KEY REFERENCES fact (id) DEFERRABLE INITIALLY DEFERRED,
    question TEXT NOT NULL,
    confirmed INTEGER NOT NULL CHECK (confirmed IN (0, 1))
) STRICT, WITHOUT ROWID;

CREATE TABLE note (
    fact TEXT PRIMARY KEY REFERENCES fact (id) DEFERRABLE INITIALLY DEFERRED,
    text TEXT NOT NULL,
    text_phrase TEXT
) STRICT, WITHOUT ROWID;

-- The bytes may arrive after the fact (facts from another tablet), so the hash is no foreign key.
CREATE TABLE photograph (
    fact TEXT PRIMARY KEY REFERENCES fact (id) DEFERRABLE INITIALLY DEFERRED,
    sha256 TEXT NOT NULL CHECK (length(sha256) = 64 AND sha256 NOT GLOB '*[^0-9a-f]*'),
    media_type TEXT NOT NULL,
    caption TEXT NOT NULL,
    caption_phrase TEXT,
    requirement TEXT NOT NULL,
    shows TEXT REFERENCES fact (id) DEFERRABLE INITIALLY DEFERRED
) STRICT, WITHOUT ROWID;

-- With a rowid: large values in a table without one would bloat its inner pages.
CREATE TABLE photograph_bytes (
    sha256 TEXT PRIMARY KEY NOT NULL,
    bytes BLOB NOT NULL
) STRICT;

CREATE TABLE deficiency (
    fact TEXT PRIMARY KEY REFERENCES fact (id) DEFERRABLE INITIALLY DEFERRED,
    requirement TEXT NOT NULL,
    text TEXT NOT NULL,
    text_phrase TEXT,
    repeats TEXT REFERENCES deficiency (fact) DEFERRABLE INITIALLY DEFERRED
) STRICT, WITHOUT ROWID;

CREATE TABLE could_not_test (
    fact TEXT PRIMARY KEY REFERENCES fact (id) DEFERRABLE INITIALLY DEFERRED,
    requirement TEXT NOT NULL,
    reason TEXT NOT NULL,
    reason_phrase TEXT
) STRICT, WITHOUT ROWID;

CREATE TABLE judgement (
    fact TEXT PRIMARY KEY REFERENCES fact (id) DEFERRABLE INITIALLY DEFERRED,
    requirement TEXT NOT NULL,
    satisfactory INTEGER NOT NULL CHECK (satisfactory IN (0, 1)),
    reason TEXT NOT NULL,
    reason_phrase TEXT
) STRICT, WITHOUT ROWID;

CREATE TABLE taken_back (
    fact TEXT PRIMARY KEY REFERENCES fact (id) DEFERRABLE INITIALLY DEFERRED,
    reason TEXT NOT NULL,
    reason_phrase TEXT
) STRICT, WITHOUT ROWID;

CREATE TABLE thumb_drill (
    fact TEXT PRIMARY KEY REFERENCES fact (id) DEFERRABLE INITIALLY DEFERRED
) STRICT, WITHOUT ROWID;

CREATE TABLE thumb_drill_trials (
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
    reason TEXT NOT NULL,
    reason_phrase TEXT
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

CREATE TABLE deficiency_terms (
    fact TEXT PRIMARY KEY REFERENCES fact (id) DEFERRABLE INITIALLY DEFERRED,
    deficiency TEXT NOT NULL REFERENCES deficiency (fact) DEFERRABLE INITIALLY DEFERRED,
    severity TEXT CHECK (severity IN ('critical', 'serious', 'minor')),
    action TEXT CHECK (action IN ('10', '15', '16', '17', '18', '30')),
    ground_for_detention INTEGER CHECK (ground_for_detention IN (0, 1)),
    due TEXT CHECK (due IS NULL OR due IS date(due)),
    interim TEXT,
    interim_phrase TEXT,
    assigned TEXT
) STRICT, WITHOUT ROWID;

CREATE TABLE rectification (
    fact TEXT PRIMARY KEY REFERENCES fact (id) DEFERRABLE INITIALLY DEFERRED,
    deficiency TEXT NOT NULL REFERENCES deficiency (fact) DEFERRABLE INITIALLY DEFERRED,
    what TEXT NOT NULL,
    what_phrase TEXT,
    "by" TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE awaiting_retest (
    fact TEXT PRIMARY KEY REFERENCES fact (id) DEFERRABLE INITIALLY DEFERRED,
    deficiency TEXT NOT NULL REFERENCES deficiency (fact) DEFERRABLE INITIALLY DEFERRED,
    remark TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE withdrawal (
    fact TEXT PRIMARY KEY REFERENCES fact (id) DEFERRABLE INITIALLY DEFERRED,
    deficiency TEXT NOT NULL REFERENCES deficiency (fact) DEFERRABLE INITIALLY DEFERRED,
    reason TEXT NOT NULL,
    reason_phrase TEXT
) STRICT, WITHOUT ROWID;

CREATE TABLE difference_settled (
    fact TEXT PRIMARY KEY REFERENCES fact (id) DEFERRABLE INITIALLY DEFERRED,
    stands TEXT NOT NULL REFERENCES fact (id) DEFERRABLE INITIALLY DEFERRED,
    reason TEXT NOT NULL,
    reason_phrase TEXT
) STRICT, WITHOUT ROWID;

CREATE TABLE difference_settled_over (
    fact TEXT NOT NULL REFERENCES difference_settled (fact) DEFERRABLE INITIALLY DEFERRED,
    seq INTEGER NOT NULL,
    value TEXT NOT NULL REFERENCES fact (id) DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY (fact, seq)
) STRICT, WITHOUT ROWID;

CREATE TABLE key_accepted (
    fact TEXT PRIMARY KEY REFERENCES fact (id) DEFERRABLE INITIALLY DEFERRED,
    key TEXT NOT NULL CHECK (length(key) = 64 AND key NOT GLOB '*[^0-9a-f]*'),
    of_device TEXT NOT NULL,
    remark TEXT NOT NULL,
    remark_phrase TEXT
) STRICT, WITHOUT ROWID;

CREATE TABLE walkdown_signed (
    fact TEXT PRIMARY KEY REFERENCES fact (id) DEFERRABLE INITIALLY DEFERRED,
    capacity TEXT NOT NULL CHECK (capacity IN ('inspector', 'chief-officer')),
    facts_sha256 TEXT NOT NULL CHECK (length(facts_sha256) = 64 AND facts_sha256 NOT GLOB '*[^0-9a-f]*'),
    key TEXT NOT NULL CHECK (length(key) = 64 AND key NOT GLOB '*[^0-9a-f]*'),
    signature TEXT NOT NULL CHECK (length(signature) = 128 AND signature NOT GLOB '*[^0-9a-f]*')
) STRICT, WITHOUT ROWID;

-- What it rests on: of each device the facts up to the last one.
CREATE TABLE walkdown_signed_covers (
    fact TEXT NOT NULL REFERENCES walkdown_signed (fact) DEFERRABLE INITIALLY DEFERRED,
    seq INTEGER NOT NULL,
    device TEXT NOT NULL,
    last TEXT NOT NULL,
    facts INTEGER NOT NULL CHECK (facts > 0),
    PRIMARY KEY (fact, seq)
) STRICT, WITHOUT ROWID;

CREATE TABLE report_made (
    fact TEXT PRIMARY KEY REFERENCES fact (id) DEFERRABLE INITIALLY DEFERRED,
    report TEXT NOT NULL CHECK (report IN ('survey', 'deficiency-list', 'work-list', 'door-record')),
    of_door TEXT NOT NULL,
    catalogue_edition TEXT NOT NULL,
    facts_sha256 TEXT NOT NULL CHECK (length(facts_sha256) = 64 AND facts_sha256 NOT GLOB '*[^0-9a-f]*'),
    document_sha256 TEXT NOT NULL CHECK (length(document_sha256) = 64 AND document_sha256 NOT GLOB '*[^0-9a-f]*'),
    catalogue_sha256 TEXT NOT NULL CHECK (length(catalogue_sha256) IN (0, 64) AND catalogue_sha256 NOT GLOB '*[^0-9a-f]*'),
    language TEXT NOT NULL CHECK (language GLOB '[a-z][a-z]*')
) STRICT, WITHOUT ROWID;

CREATE TABLE report_made_covers (
    fact TEXT NOT NULL REFERENCES report_made (fact) DEFERRABLE INITIALLY DEFERRED,
    seq INTEGER NOT NULL,
    device TEXT NOT NULL,
    last TEXT NOT NULL,
    facts INTEGER NOT NULL CHECK (facts > 0),
    PRIMARY KEY (fact, seq)
) STRICT, WITHOUT ROWID;

-- What it names counts as if it had never been recorded, until this is undone in its turn.
CREATE TABLE undone (
    fact TEXT PRIMARY KEY REFERENCES fact (id) DEFERRABLE INITIALLY DEFERRED
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
    UNION ALL SELECT fact FROM thumb_drill
    UNION ALL SELECT fact FROM decision_limits
    UNION ALL SELECT fact FROM upkeep_done
    UNION ALL SELECT fact FROM certificate_seen
    UNION ALL SELECT fact FROM deficiency_terms
    UNION ALL SELECT fact FROM rectification
    UNION ALL SELECT fact FROM awaiting_retest
    UNION ALL SELECT fact FROM withdrawal
    UNION ALL SELECT fact FROM difference_settled
    UNION ALL SELECT fact FROM key_accepted
    UNION ALL SELECT fact FROM walkdown_signed
    UNION ALL SELECT fact FROM report_made
    UNION ALL SELECT fact FROM undone
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
CREATE TRIGGER upkeep_done_kind BEFORE INSERT ON upkeep_done WHEN (SELECT kind FROM fact WHERE id = NEW.fact) IS NOT 'upkeep-done'
    BEGIN SELECT RAISE(ABORT, 'the fact is of another kind'); END;
CREATE TRIGGER certificate_seen_kind BEFORE INSERT ON certificate_seen WHEN (SELECT kind FROM fact WHERE id = NEW.fact) IS NOT 'certificate-seen'
    BEGIN SELECT RAISE(ABORT, 'the fact is of another kind'); END;
CREATE TRIGGER thumb_drill_kind BEFORE INSERT ON thumb_drill WHEN (SELECT kind FROM fact WHERE id = NEW.fact) IS NOT 'thumb-drill'
    BEGIN SELECT RAISE(ABORT, 'the fact is of another kind'); END;
CREATE TRIGGER decision_limits_kind BEFORE INSERT ON decision_limits WHEN (SELECT kind FROM fact WHERE id = NEW.fact) IS NOT 'decision-limits'
    BEGIN SELECT RAISE(ABORT, 'the fact is of another kind'); END;
CREATE TRIGGER deficiency_terms_kind BEFORE INSERT ON deficiency_terms WHEN (SELECT kind FROM fact WHERE id = NEW.fact) IS NOT 'deficiency-terms'
    BEGIN SELECT RAISE(ABORT, 'the fact is of another kind'); END;
CREATE TRIGGER rectification_kind BEFORE INSERT ON rectification WHEN (SELECT kind FROM fact WHERE id = NEW.fact) IS NOT 'rectification'
    BEGIN SELECT RAISE(ABORT, 'the fact is of another kind'); END;
CREATE TRIGGER awaiting_retest_kind BEFORE INSERT ON awaiting_retest WHEN (SELECT kind FROM fact WHERE id = NEW.fact) IS NOT 'awaiting-retest'
    BEGIN SELECT RAISE(ABORT, 'the fact is of another kind'); END;
CREATE TRIGGER withdrawal_kind BEFORE INSERT ON withdrawal WHEN (SELECT kind FROM fact WHERE id = NEW.fact) IS NOT 'withdrawal'
    BEGIN SELECT RAISE(ABORT, 'the fact is of another kind'); END;
CREATE TRIGGER difference_settled_kind BEFORE INSERT ON difference_settled WHEN (SELECT kind FROM fact WHERE id = NEW.fact) IS NOT 'difference-settled'
    BEGIN SELECT RAISE(ABORT, 'the fact is of another kind'); END;
CREATE TRIGGER key_accepted_kind BEFORE INSERT ON key_accepted WHEN (SELECT kind FROM fact WHERE id = NEW.fact) IS NOT 'key-accepted'
    BEGIN SELECT RAISE(ABORT, 'the fact is of another kind'); END;
CREATE TRIGGER walkdown_signed_kind BEFORE INSERT ON walkdown_signed WHEN (SELECT kind FROM fact WHERE id = NEW.fact) IS NOT 'walkdown-signed'
    BEGIN SELECT RAISE(ABORT, 'the fact is of another kind'); END;
CREATE TRIGGER report_made_kind BEFORE INSERT ON report_made WHEN (SELECT kind FROM fact WHERE id = NEW.fact) IS NOT 'report-made'
    BEGIN SELECT RAISE(ABORT, 'the fact is of another kind'); END;
CREATE TRIGGER undone_kind BEFORE INSERT ON undone WHEN (SELECT kind FROM fact WHERE id = NEW.fact) IS NOT 'undone'
    BEGIN SELECT RAISE(ABORT, 'the fact is of another kind'); END;

-- And hangs on what its kind hangs on.
CREATE TRIGGER fact_hangs_on BEFORE INSERT ON fact
    WHEN EXISTS (SELECT 1 FROM fact_kind WHERE word = NEW.kind
                 AND (of_walkdown = (NEW.walkdown IS NULL) OR of_door = (NEW.door IS NULL)))
    BEGIN SELECT RAISE(ABORT, 'a fact of this kind hangs on a walkdown or door, or does not'); END;

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
CREATE TRIGGER door_release_groups_stays BEFORE UPDATE ON door_release_groups BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER door_release_groups_kept BEFORE DELETE ON door_release_groups BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;
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
CREATE TRIGGER walkdown_begun_team_stays BEFORE UPDATE ON walkdown_begun_team BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER walkdown_begun_team_kept BEFORE DELETE ON walkdown_begun_team BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;
CREATE TRIGGER walkdown_begun_doors_stays BEFORE UPDATE ON walkdown_begun_doors BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER walkdown_begun_doors_kept BEFORE DELETE ON walkdown_begun_doors BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;
CREATE TRIGGER photograph_bytes_stays BEFORE UPDATE ON photograph_bytes BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER photograph_bytes_kept BEFORE DELETE ON photograph_bytes BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;
CREATE TRIGGER fact_kind_stays BEFORE UPDATE ON fact_kind BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER fact_kind_kept BEFORE DELETE ON fact_kind BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;
CREATE TRIGGER thumb_drill_stays BEFORE UPDATE ON thumb_drill BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER thumb_drill_kept BEFORE DELETE ON thumb_drill BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;
CREATE TRIGGER thumb_drill_trials_stays BEFORE UPDATE ON thumb_drill_trials BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER thumb_drill_trials_kept BEFORE DELETE ON thumb_drill_trials BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;
CREATE TRIGGER decision_limits_stays BEFORE UPDATE ON decision_limits BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER decision_limits_kept BEFORE DELETE ON decision_limits BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;
CREATE TRIGGER upkeep_done_stays BEFORE UPDATE ON upkeep_done BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER upkeep_done_kept BEFORE DELETE ON upkeep_done BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;
CREATE TRIGGER certificate_seen_stays BEFORE UPDATE ON certificate_seen BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER certificate_seen_kept BEFORE DELETE ON certificate_seen BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;
CREATE TRIGGER walkdown_begun_sample_stays BEFORE UPDATE ON walkdown_begun_sample BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER walkdown_begun_sample_kept BEFORE DELETE ON walkdown_begun_sample BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;
CREATE TRIGGER this_device_key_stays BEFORE UPDATE ON this_device_key BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER this_device_key_kept BEFORE DELETE ON this_device_key BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;
CREATE TRIGGER deficiency_terms_stays BEFORE UPDATE ON deficiency_terms BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER deficiency_terms_kept BEFORE DELETE ON deficiency_terms BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;
CREATE TRIGGER rectification_stays BEFORE UPDATE ON rectification BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER rectification_kept BEFORE DELETE ON rectification BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;
CREATE TRIGGER awaiting_retest_stays BEFORE UPDATE ON awaiting_retest BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER awaiting_retest_kept BEFORE DELETE ON awaiting_retest BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;
CREATE TRIGGER withdrawal_stays BEFORE UPDATE ON withdrawal BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER withdrawal_kept BEFORE DELETE ON withdrawal BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;
CREATE TRIGGER difference_settled_stays BEFORE UPDATE ON difference_settled BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER difference_settled_kept BEFORE DELETE ON difference_settled BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;
CREATE TRIGGER key_accepted_stays BEFORE UPDATE ON key_accepted BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER key_accepted_kept BEFORE DELETE ON key_accepted BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;
CREATE TRIGGER walkdown_signed_stays BEFORE UPDATE ON walkdown_signed BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER walkdown_signed_kept BEFORE DELETE ON walkdown_signed BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;
CREATE TRIGGER report_made_stays BEFORE UPDATE ON report_made BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER report_made_kept BEFORE DELETE ON report_made BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;
CREATE TRIGGER difference_settled_over_stays BEFORE UPDATE ON difference_settled_over BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER difference_settled_over_kept BEFORE DELETE ON difference_settled_over BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;
CREATE TRIGGER walkdown_signed_covers_stays BEFORE UPDATE ON walkdown_signed_covers BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER walkdown_signed_covers_kept BEFORE DELETE ON walkdown_signed_covers BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;
CREATE TRIGGER report_made_covers_stays BEFORE UPDATE ON report_made_covers BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER report_made_covers_kept BEFORE DELETE ON report_made_covers BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;
CREATE TRIGGER undone_stays BEFORE UPDATE ON undone BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER undone_kept BEFORE DELETE ON undone BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;
