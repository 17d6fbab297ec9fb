-- After the walk: what becomes of a deficiency, how differences between tablets are settled, whose keys are accepted,
-- who signed what, and which reports were made.
INSERT INTO fact_kind (word, of_walkdown, of_door) VALUES
    ('deficiency-terms', 0, 0),
    ('rectification', 0, 0),
    ('ready-for-retest', 0, 0),
    ('withdrawal', 0, 0),
    ('difference-settled', 0, 0),
    ('key-accepted', 0, 0),
    ('walkdown-signed', 1, 0),
    ('report-made', 1, 0);

ALTER TABLE photograph ADD COLUMN shows TEXT REFERENCES fact (id) DEFERRABLE INITIALLY DEFERRED;
ALTER TABLE deficiency ADD COLUMN repeats TEXT REFERENCES deficiency (fact) DEFERRABLE INITIALLY DEFERRED;

-- The seed of the key this device signs with. One row, made when something is signed first; never handed over.
CREATE TABLE this_device_key (
    only_row INTEGER PRIMARY KEY CHECK (only_row = 1),
    seed BLOB NOT NULL CHECK (length(seed) = 32)
) STRICT;

CREATE TABLE deficiency_terms (
    fact TEXT PRIMARY KEY REFERENCES fact (id) DEFERRABLE INITIALLY DEFERRED,
    deficiency TEXT NOT NULL REFERENCES deficiency (fact) DEFERRABLE INITIALLY DEFERRED,
    severity TEXT CHECK (severity IN ('grave', 'serious', 'minor')),
    action TEXT CHECK (action IN ('10', '15', '16', '17', '18', '30')),
    ground_for_detention INTEGER CHECK (ground_for_detention IN (0, 1)),
    due TEXT CHECK (due IS NULL OR due IS date(due)),
    interim TEXT,
    assigned TEXT
) STRICT, WITHOUT ROWID;

CREATE TABLE rectification (
    fact TEXT PRIMARY KEY REFERENCES fact (id) DEFERRABLE INITIALLY DEFERRED,
    deficiency TEXT NOT NULL REFERENCES deficiency (fact) DEFERRABLE INITIALLY DEFERRED,
    what TEXT NOT NULL,
    by_name TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE ready_for_retest (
    fact TEXT PRIMARY KEY REFERENCES fact (id) DEFERRABLE INITIALLY DEFERRED,
    deficiency TEXT NOT NULL REFERENCES deficiency (fact) DEFERRABLE INITIALLY DEFERRED,
    remark TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE withdrawal (
    fact TEXT PRIMARY KEY REFERENCES fact (id) DEFERRABLE INITIALLY DEFERRED,
    deficiency TEXT NOT NULL REFERENCES deficiency (fact) DEFERRABLE INITIALLY DEFERRED,
    reason TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE difference_settled (
    fact TEXT PRIMARY KEY REFERENCES fact (id) DEFERRABLE INITIALLY DEFERRED,
    stands TEXT NOT NULL REFERENCES fact (id) DEFERRABLE INITIALLY DEFERRED,
    reason TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE difference_over (
    fact TEXT NOT NULL REFERENCES difference_settled (fact) DEFERRABLE INITIALLY DEFERRED,
    seq INTEGER NOT NULL,
    yields TEXT NOT NULL REFERENCES fact (id) DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY (fact, seq)
) STRICT, WITHOUT ROWID;

CREATE TABLE key_accepted (
    fact TEXT PRIMARY KEY REFERENCES fact (id) DEFERRABLE INITIALLY DEFERRED,
    key TEXT NOT NULL CHECK (length(key) = 64 AND key NOT GLOB '*[^0-9a-f]*'),
    of_device TEXT NOT NULL,
    remark TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE walkdown_signed (
    fact TEXT PRIMARY KEY REFERENCES fact (id) DEFERRABLE INITIALLY DEFERRED,
    capacity TEXT NOT NULL CHECK (capacity IN ('inspector', 'chief-officer')),
    facts_sha256 TEXT NOT NULL CHECK (length(facts_sha256) = 64 AND facts_sha256 NOT GLOB '*[^0-9a-f]*'),
    key TEXT NOT NULL CHECK (length(key) = 64 AND key NOT GLOB '*[^0-9a-f]*'),
    signature TEXT NOT NULL CHECK (length(signature) = 128 AND signature NOT GLOB '*[^0-9a-f]*')
) STRICT, WITHOUT ROWID;

CREATE TABLE report_made (
    fact TEXT PRIMARY KEY REFERENCES fact (id) DEFERRABLE INITIALLY DEFERRED,
    report TEXT NOT NULL CHECK (report IN ('survey', 'deficiency-list', 'work-list', 'door-record')),
    of_door TEXT NOT NULL,
    catalogue_edition TEXT NOT NULL,
    facts_sha256 TEXT NOT NULL CHECK (length(facts_sha256) = 64 AND facts_sha256 NOT GLOB '*[^0-9a-f]*'),
    document_sha256 TEXT NOT NULL CHECK (length(document_sha256) = 64 AND document_sha256 NOT GLOB '*[^0-9a-f]*')
) STRICT, WITHOUT ROWID;

-- What a signature or a report rests on: of each device the facts up to the last one.
CREATE TABLE fact_covered (
    fact TEXT NOT NULL REFERENCES fact (id) DEFERRABLE INITIALLY DEFERRED,
    seq INTEGER NOT NULL,
    device TEXT NOT NULL,
    last TEXT NOT NULL,
    facts INTEGER NOT NULL CHECK (facts > 0),
    PRIMARY KEY (fact, seq)
) STRICT, WITHOUT ROWID;

CREATE TRIGGER deficiency_terms_kind BEFORE INSERT ON deficiency_terms WHEN (SELECT kind FROM fact WHERE id = NEW.fact) IS NOT 'deficiency-terms'
    BEGIN SELECT RAISE(ABORT, 'the fact is of another kind'); END;
CREATE TRIGGER rectification_kind BEFORE INSERT ON rectification WHEN (SELECT kind FROM fact WHERE id = NEW.fact) IS NOT 'rectification'
    BEGIN SELECT RAISE(ABORT, 'the fact is of another kind'); END;
CREATE TRIGGER ready_for_retest_kind BEFORE INSERT ON ready_for_retest WHEN (SELECT kind FROM fact WHERE id = NEW.fact) IS NOT 'ready-for-retest'
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
CREATE TRIGGER this_device_key_stays BEFORE UPDATE ON this_device_key BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER this_device_key_kept BEFORE DELETE ON this_device_key BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;
CREATE TRIGGER deficiency_terms_stays BEFORE UPDATE ON deficiency_terms BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER deficiency_terms_kept BEFORE DELETE ON deficiency_terms BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;
CREATE TRIGGER rectification_stays BEFORE UPDATE ON rectification BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER rectification_kept BEFORE DELETE ON rectification BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;
CREATE TRIGGER ready_for_retest_stays BEFORE UPDATE ON ready_for_retest BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER ready_for_retest_kept BEFORE DELETE ON ready_for_retest BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;
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
CREATE TRIGGER difference_over_stays BEFORE UPDATE ON difference_over BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER difference_over_kept BEFORE DELETE ON difference_over BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;
CREATE TRIGGER fact_covered_stays BEFORE UPDATE ON fact_covered BEGIN SELECT RAISE(ABORT, 'rows are never changed'); END;
CREATE TRIGGER fact_covered_kept BEFORE DELETE ON fact_covered BEGIN SELECT RAISE(ABORT, 'rows are never deleted'); END;

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
);
