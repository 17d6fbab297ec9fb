-- The registers of a fleet in one PostgreSQL database. Run once, inside one transaction, by
-- app/ashore/ashore_schema.cpp, which makes the schema "latchround" first and writes its version afterwards.
--
-- Part one: the tables of a vessel's register (register_*.sql, which say what the columns mean and which words they may
-- hold), each with the vessel's identification number in front of its key. Every row went through a register before it
-- came here, so the words of closed sets are not checked a second time. Flags are boolean, days are dates. Rows are
-- only ever added; triggers refuse every change.
-- Part two: which files were taken in, from which device, under which key. Only added as well.
-- Part three: what the program works out of the facts: items with their state, verdicts, due days, closing times. SQL
-- cannot grade a door. These tables are replaced whole for a vessel whenever facts of it come in, in the same
-- transaction; table "derived" says by which edition of the catalogue.
-- Part four: views to begin with: open_items, overdue_tests, repeat_defects, repeat_defects_by_kind,
-- door_closing_line, closing_drift.

CREATE TABLE schema_version (
    version integer PRIMARY KEY
);

-- Part one: the register.

CREATE TABLE arrangement (
    vessel text NOT NULL,
    id integer NOT NULL,
    adopted_utc_ms bigint NOT NULL,
    ship_offset_minutes integer NOT NULL,
    name text NOT NULL,
    number text NOT NULL,
    regime text NOT NULL,
    passengers integer NOT NULL,
    keel_laid date,
    sprinklers boolean NOT NULL,
    length_m double precision NOT NULL,
    adopted timestamptz GENERATED ALWAYS AS (to_timestamp(adopted_utc_ms / 1000.0)) STORED,
    PRIMARY KEY (vessel, id)
);

CREATE TABLE deck (
    vessel text NOT NULL,
    arrangement integer NOT NULL,
    seq integer NOT NULL,
    number text NOT NULL,
    name text NOT NULL,
    height_m double precision NOT NULL,
    PRIMARY KEY (vessel, arrangement, seq),
    UNIQUE (vessel, arrangement, number),
    FOREIGN KEY (vessel, arrangement) REFERENCES arrangement (vessel, id) DEFERRABLE INITIALLY DEFERRED
);

CREATE TABLE zone (
    vessel text NOT NULL,
    arrangement integer NOT NULL,
    seq integer NOT NULL,
    number text NOT NULL,
    aft_m double precision NOT NULL,
    forward_m double precision NOT NULL,
    area_m2 double precision,
    PRIMARY KEY (vessel, arrangement, seq),
    UNIQUE (vessel, arrangement, number),
    FOREIGN KEY (vessel, arrangement) REFERENCES arrangement (vessel, id) DEFERRABLE INITIALLY DEFERRED
);

CREATE TABLE boundary (
    vessel text NOT NULL,
    arrangement integer NOT NULL,
    seq integer NOT NULL,
    id text NOT NULL,
    place text NOT NULL,
    zone_aft text,
    zone_forward text,
    x_m double precision NOT NULL,
    required text,
    division text NOT NULL,
    space_one integer,
    space_other integer,
    PRIMARY KEY (vessel, arrangement, seq),
    UNIQUE (vessel, arrangement, id),
    FOREIGN KEY (vessel, arrangement) REFERENCES arrangement (vessel, id) DEFERRABLE INITIALLY DEFERRED,
    FOREIGN KEY (vessel, arrangement, zone_aft) REFERENCES zone (vessel, arrangement, number)
        DEFERRABLE INITIALLY DEFERRED,
    FOREIGN KEY (vessel, arrangement, zone_forward) REFERENCES zone (vessel, arrangement, number)
        DEFERRABLE INITIALLY DEFERRED
);

CREATE TABLE door_number (
    vessel text NOT NULL,
    number text NOT NULL,
    PRIMARY KEY (vessel, number)
);

CREATE TABLE door (
    vessel text NOT NULL,
    arrangement integer NOT NULL,
    seq integer NOT NULL,
    number text NOT NULL,
    deck text,
    x_m double precision NOT NULL,
    y_m double precision NOT NULL,
    boundary text,
    kind text NOT NULL,
    fire_class text NOT NULL,
    plate text NOT NULL,
    opening_m double precision NOT NULL,
    leaf_mass_kg double precision,
    power_operated boolean NOT NULL,
    hold_back boolean NOT NULL,
    alarm boolean NOT NULL,
    designed_to_reopen boolean NOT NULL,
    hose_port boolean NOT NULL,
    escape_route boolean NOT NULL,
    sill_in_frame boolean NOT NULL,
    latch boolean NOT NULL,
    watertight boolean NOT NULL,
    normally text NOT NULL,
    installed date,
    weathertight boolean NOT NULL,
    escape_trunk boolean NOT NULL,
    special_category boolean NOT NULL,
    faces_embarkation boolean NOT NULL,
    maker text NOT NULL,
    PRIMARY KEY (vessel, arrangement, seq),
    UNIQUE (vessel, arrangement, number),
    FOREIGN KEY (vessel, arrangement) REFERENCES arrangement (vessel, id) DEFERRABLE INITIALLY DEFERRED,
    FOREIGN KEY (vessel, number) REFERENCES door_number (vessel, number) DEFERRABLE INITIALLY DEFERRED,
    FOREIGN KEY (vessel, arrangement, deck) REFERENCES deck (vessel, arrangement, number) DEFERRABLE INITIALLY DEFERRED,
    FOREIGN KEY (vessel, arrangement, boundary) REFERENCES boundary (vessel, arrangement, id)
        DEFERRABLE INITIALLY DEFERRED
);

CREATE TABLE door_release_group (
    vessel text NOT NULL,
    arrangement integer NOT NULL,
    door_seq integer NOT NULL,
    seq integer NOT NULL,
    name text NOT NULL,
    PRIMARY KEY (vessel, arrangement, door_seq, seq),
    FOREIGN KEY (vessel, arrangement, door_seq) REFERENCES door (vessel, arrangement, seq) DEFERRABLE INITIALLY DEFERRED
);

CREATE TABLE fact (
    vessel text NOT NULL,
    id text NOT NULL,
    kind text NOT NULL,
    utc_ms bigint NOT NULL,
    ship_offset_minutes integer NOT NULL,
    person text NOT NULL,
    device text NOT NULL,
    supersedes text,
    walkdown text,
    door text,
    at timestamptz GENERATED ALWAYS AS (to_timestamp(utc_ms / 1000.0)) STORED, -- utc_ms as people read it
    PRIMARY KEY (vessel, id),
    FOREIGN KEY (vessel, supersedes) REFERENCES fact (vessel, id) DEFERRABLE INITIALLY DEFERRED,
    FOREIGN KEY (vessel, door) REFERENCES door_number (vessel, number) DEFERRABLE INITIALLY DEFERRED
);

CREATE TABLE person_joined (
    vessel text NOT NULL,
    fact text NOT NULL,
    name text NOT NULL,
    role text NOT NULL,
    PRIMARY KEY (vessel, fact),
    FOREIGN KEY (vessel, fact) REFERENCES fact (vessel, id) DEFERRABLE INITIALLY DEFERRED
);

CREATE TABLE walkdown_begun (
    vessel text NOT NULL,
    fact text NOT NULL,
    purpose text NOT NULL,
    scope text NOT NULL,
    heel_deg double precision NOT NULL,
    control_station text NOT NULL,
    channel text NOT NULL,
    start_word text NOT NULL,
    stop_word text NOT NULL,
    may_stop text NOT NULL,
    brief_read boolean NOT NULL,
    PRIMARY KEY (vessel, fact),
    FOREIGN KEY (vessel, fact) REFERENCES fact (vessel, id) DEFERRABLE INITIALLY DEFERRED
);

CREATE TABLE walkdown_team (
    vessel text NOT NULL,
    fact text NOT NULL,
    seq integer NOT NULL,
    name text NOT NULL,
    PRIMARY KEY (vessel, fact, seq),
    FOREIGN KEY (vessel, fact) REFERENCES walkdown_begun (vessel, fact) DEFERRABLE INITIALLY DEFERRED
);

CREATE TABLE walkdown_door (
    vessel text NOT NULL,
    fact text NOT NULL,
    seq integer NOT NULL,
    door text NOT NULL,
    PRIMARY KEY (vessel, fact, seq),
    FOREIGN KEY (vessel, fact) REFERENCES walkdown_begun (vessel, fact) DEFERRABLE INITIALLY DEFERRED,
    FOREIGN KEY (vessel, door) REFERENCES door_number (vessel, number) DEFERRABLE INITIALLY DEFERRED
);

CREATE TABLE walkdown_ended (
    vessel text NOT NULL,
    fact text NOT NULL,
    remark text NOT NULL,
    PRIMARY KEY (vessel, fact),
    FOREIGN KEY (vessel, fact) REFERENCES fact (vessel, id) DEFERRABLE INITIALLY DEFERRED
);

CREATE TABLE observation (
    vessel text NOT NULL,
    fact text NOT NULL,
    requirement text NOT NULL,
    side text NOT NULL,
    answer text NOT NULL,
    PRIMARY KEY (vessel, fact),
    FOREIGN KEY (vessel, fact) REFERENCES fact (vessel, id) DEFERRABLE INITIALLY DEFERRED
);

CREATE TABLE plate_read (
    vessel text NOT NULL,
    fact text NOT NULL,
    state text NOT NULL,
    fire_class text,
    PRIMARY KEY (vessel, fact),
    FOREIGN KEY (vessel, fact) REFERENCES fact (vessel, id) DEFERRABLE INITIALLY DEFERRED
);

CREATE TABLE measured_value (
    vessel text NOT NULL,
    fact text NOT NULL,
    requirement text NOT NULL,
    value double precision NOT NULL,
    unit text NOT NULL,
    PRIMARY KEY (vessel, fact),
    FOREIGN KEY (vessel, fact) REFERENCES fact (vessel, id) DEFERRABLE INITIALLY DEFERRED
);

CREATE TABLE run_started (
    vessel text NOT NULL,
    fact text NOT NULL,
    run_kind text NOT NULL,
    release text NOT NULL,
    heel_deg double precision NOT NULL,
    release_group text,
    PRIMARY KEY (vessel, fact),
    FOREIGN KEY (vessel, fact) REFERENCES fact (vessel, id) DEFERRABLE INITIALLY DEFERRED
);

CREATE TABLE mark (
    vessel text NOT NULL,
    fact text NOT NULL,
    run text NOT NULL,
    mark text NOT NULL,
    event_ms bigint,
    steady_ns bigint,
    input_device text NOT NULL,
    by_hand_ns bigint,
    PRIMARY KEY (vessel, fact),
    FOREIGN KEY (vessel, fact) REFERENCES fact (vessel, id) DEFERRABLE INITIALLY DEFERRED,
    FOREIGN KEY (vessel, run) REFERENCES run_started (vessel, fact) DEFERRABLE INITIALLY DEFERRED
);

CREATE TABLE run_ended (
    vessel text NOT NULL,
    fact text NOT NULL,
    run text NOT NULL,
    outcome text NOT NULL,
    reason text NOT NULL,
    PRIMARY KEY (vessel, fact),
    FOREIGN KEY (vessel, fact) REFERENCES fact (vessel, id) DEFERRABLE INITIALLY DEFERRED,
    FOREIGN KEY (vessel, run) REFERENCES run_started (vessel, fact) DEFERRABLE INITIALLY DEFERRED
);

CREATE TABLE caution_answered (
    vessel text NOT NULL,
    fact text NOT NULL,
    question text NOT NULL,
    confirmed boolean NOT NULL,
    PRIMARY KEY (vessel, fact),
    FOREIGN KEY (vessel, fact) REFERENCES fact (vessel, id) DEFERRABLE INITIALLY DEFERRED
);

CREATE TABLE note (
    vessel text NOT NULL,
    fact text NOT NULL,
    text text NOT NULL,
    PRIMARY KEY (vessel, fact),
    FOREIGN KEY (vessel, fact) REFERENCES fact (vessel, id) DEFERRABLE INITIALLY DEFERRED
);

CREATE TABLE photograph (
    vessel text NOT NULL,
    fact text NOT NULL,
    sha256 text NOT NULL,
    media_type text NOT NULL,
    caption text NOT NULL,
    requirement text NOT NULL,
    shows text,
    PRIMARY KEY (vessel, fact),
    FOREIGN KEY (vessel, fact) REFERENCES fact (vessel, id) DEFERRABLE INITIALLY DEFERRED,
    FOREIGN KEY (vessel, shows) REFERENCES fact (vessel, id) DEFERRABLE INITIALLY DEFERRED
);

CREATE TABLE deficiency (
    vessel text NOT NULL,
    fact text NOT NULL,
    requirement text NOT NULL,
    text text NOT NULL,
    repeats text,
    PRIMARY KEY (vessel, fact),
    FOREIGN KEY (vessel, fact) REFERENCES fact (vessel, id) DEFERRABLE INITIALLY DEFERRED,
    FOREIGN KEY (vessel, repeats) REFERENCES deficiency (vessel, fact) DEFERRABLE INITIALLY DEFERRED
);

CREATE TABLE could_not_test (
    vessel text NOT NULL,
    fact text NOT NULL,
    requirement text NOT NULL,
    reason text NOT NULL,
    PRIMARY KEY (vessel, fact),
    FOREIGN KEY (vessel, fact) REFERENCES fact (vessel, id) DEFERRABLE INITIALLY DEFERRED
);

CREATE TABLE judgement (
    vessel text NOT NULL,
    fact text NOT NULL,
    requirement text NOT NULL,
    satisfactory boolean NOT NULL,
    reason text NOT NULL,
    PRIMARY KEY (vessel, fact),
    FOREIGN KEY (vessel, fact) REFERENCES fact (vessel, id) DEFERRABLE INITIALLY DEFERRED
);

CREATE TABLE taken_back (
    vessel text NOT NULL,
    fact text NOT NULL,
    reason text NOT NULL,
    PRIMARY KEY (vessel, fact),
    FOREIGN KEY (vessel, fact) REFERENCES fact (vessel, id) DEFERRABLE INITIALLY DEFERRED
);

CREATE TABLE undone (
    vessel text NOT NULL,
    fact text NOT NULL,
    PRIMARY KEY (vessel, fact),
    FOREIGN KEY (vessel, fact) REFERENCES fact (vessel, id) DEFERRABLE INITIALLY DEFERRED
);

CREATE TABLE thumb_drill (
    vessel text NOT NULL,
    fact text NOT NULL,
    PRIMARY KEY (vessel, fact),
    FOREIGN KEY (vessel, fact) REFERENCES fact (vessel, id) DEFERRABLE INITIALLY DEFERRED
);

CREATE TABLE thumb_trial (
    vessel text NOT NULL,
    fact text NOT NULL,
    seq integer NOT NULL,
    cue text NOT NULL,
    delay_s double precision NOT NULL,
    PRIMARY KEY (vessel, fact, seq),
    FOREIGN KEY (vessel, fact) REFERENCES thumb_drill (vessel, fact) DEFERRABLE INITIALLY DEFERRED
);

CREATE TABLE decision_limits (
    vessel text NOT NULL,
    fact text NOT NULL,
    satisfactory_from double precision NOT NULL,
    unsatisfactory_to double precision NOT NULL,
    reason text NOT NULL,
    PRIMARY KEY (vessel, fact),
    FOREIGN KEY (vessel, fact) REFERENCES fact (vessel, id) DEFERRABLE INITIALLY DEFERRED
);

CREATE TABLE upkeep_done (
    vessel text NOT NULL,
    fact text NOT NULL,
    upkeep text NOT NULL,
    remark text NOT NULL,
    PRIMARY KEY (vessel, fact),
    FOREIGN KEY (vessel, fact) REFERENCES fact (vessel, id) DEFERRABLE INITIALLY DEFERRED
);

CREATE TABLE certificate_seen (
    vessel text NOT NULL,
    fact text NOT NULL,
    valid_until date NOT NULL,
    PRIMARY KEY (vessel, fact),
    FOREIGN KEY (vessel, fact) REFERENCES fact (vessel, id) DEFERRABLE INITIALLY DEFERRED
);

CREATE TABLE walkdown_sample (
    vessel text NOT NULL,
    fact text NOT NULL,
    of_doors integer NOT NULL,
    at_most integer NOT NULL,
    confidence_ppm integer NOT NULL,
    lot integer NOT NULL,
    PRIMARY KEY (vessel, fact),
    FOREIGN KEY (vessel, fact) REFERENCES walkdown_begun (vessel, fact) DEFERRABLE INITIALLY DEFERRED
);

CREATE TABLE deficiency_terms (
    vessel text NOT NULL,
    fact text NOT NULL,
    deficiency text NOT NULL,
    severity text,
    action text,
    ground_for_detention boolean,
    due date,
    interim text,
    assigned text,
    PRIMARY KEY (vessel, fact),
    FOREIGN KEY (vessel, fact) REFERENCES fact (vessel, id) DEFERRABLE INITIALLY DEFERRED,
    FOREIGN KEY (vessel, deficiency) REFERENCES deficiency (vessel, fact) DEFERRABLE INITIALLY DEFERRED
);

CREATE TABLE rectification (
    vessel text NOT NULL,
    fact text NOT NULL,
    deficiency text NOT NULL,
    what text NOT NULL,
    by_name text NOT NULL,
    PRIMARY KEY (vessel, fact),
    FOREIGN KEY (vessel, fact) REFERENCES fact (vessel, id) DEFERRABLE INITIALLY DEFERRED,
    FOREIGN KEY (vessel, deficiency) REFERENCES deficiency (vessel, fact) DEFERRABLE INITIALLY DEFERRED
);

CREATE TABLE ready_for_retest (
    vessel text NOT NULL,
    fact text NOT NULL,
    deficiency text NOT NULL,
    remark text NOT NULL,
    PRIMARY KEY (vessel, fact),
    FOREIGN KEY (vessel, fact) REFERENCES fact (vessel, id) DEFERRABLE INITIALLY DEFERRED,
    FOREIGN KEY (vessel, deficiency) REFERENCES deficiency (vessel, fact) DEFERRABLE INITIALLY DEFERRED
);

CREATE TABLE withdrawal (
    vessel text NOT NULL,
    fact text NOT NULL,
    deficiency text NOT NULL,
    reason text NOT NULL,
    PRIMARY KEY (vessel, fact),
    FOREIGN KEY (vessel, fact) REFERENCES fact (vessel, id) DEFERRABLE INITIALLY DEFERRED,
    FOREIGN KEY (vessel, deficiency) REFERENCES deficiency (vessel, fact) DEFERRABLE INITIALLY DEFERRED
);

CREATE TABLE difference_settled (
    vessel text NOT NULL,
    fact text NOT NULL,
    stands text NOT NULL,
    reason text NOT NULL,
    PRIMARY KEY (vessel, fact),
    FOREIGN KEY (vessel, fact) REFERENCES fact (vessel, id) DEFERRABLE INITIALLY DEFERRED,
    FOREIGN KEY (vessel, stands) REFERENCES fact (vessel, id) DEFERRABLE INITIALLY DEFERRED
);

CREATE TABLE difference_over (
    vessel text NOT NULL,
    fact text NOT NULL,
    seq integer NOT NULL,
    yields text NOT NULL,
    PRIMARY KEY (vessel, fact, seq),
    FOREIGN KEY (vessel, fact) REFERENCES difference_settled (vessel, fact) DEFERRABLE INITIALLY DEFERRED,
    FOREIGN KEY (vessel, yields) REFERENCES fact (vessel, id) DEFERRABLE INITIALLY DEFERRED
);

CREATE TABLE key_accepted (
    vessel text NOT NULL,
    fact text NOT NULL,
    key text NOT NULL,
    of_device text NOT NULL,
    remark text NOT NULL,
    PRIMARY KEY (vessel, fact),
    FOREIGN KEY (vessel, fact) REFERENCES fact (vessel, id) DEFERRABLE INITIALLY DEFERRED
);

CREATE TABLE walkdown_signed (
    vessel text NOT NULL,
    fact text NOT NULL,
    capacity text NOT NULL,
    facts_sha256 text NOT NULL,
    key text NOT NULL,
    signature text NOT NULL,
    PRIMARY KEY (vessel, fact),
    FOREIGN KEY (vessel, fact) REFERENCES fact (vessel, id) DEFERRABLE INITIALLY DEFERRED
);

CREATE TABLE report_made (
    vessel text NOT NULL,
    fact text NOT NULL,
    report text NOT NULL,
    of_door text NOT NULL,
    catalogue_edition text NOT NULL,
    facts_sha256 text NOT NULL,
    document_sha256 text NOT NULL,
    PRIMARY KEY (vessel, fact),
    FOREIGN KEY (vessel, fact) REFERENCES fact (vessel, id) DEFERRABLE INITIALLY DEFERRED
);

CREATE TABLE fact_covered (
    vessel text NOT NULL,
    fact text NOT NULL,
    seq integer NOT NULL,
    device text NOT NULL,
    last text NOT NULL,
    facts integer NOT NULL,
    PRIMARY KEY (vessel, fact, seq),
    FOREIGN KEY (vessel, fact) REFERENCES fact (vessel, id) DEFERRABLE INITIALLY DEFERRED
);

ALTER TABLE fact ADD FOREIGN KEY (vessel, person) REFERENCES person_joined (vessel, fact)
    DEFERRABLE INITIALLY DEFERRED;
ALTER TABLE fact ADD FOREIGN KEY (vessel, walkdown) REFERENCES walkdown_begun (vessel, fact)
    DEFERRABLE INITIALLY DEFERRED;

-- With the facts or after them, as the files bring them.
CREATE TABLE photograph_bytes (
    vessel text NOT NULL,
    sha256 text NOT NULL,
    bytes bytea NOT NULL,
    PRIMARY KEY (vessel, sha256)
);

CREATE INDEX fact_by_door ON fact (vessel, door, walkdown);

-- Part two: what was taken in.

-- The keys under which each device has handed over. The first is believed as it comes; another one has to be named by
-- whoever takes the file in.
CREATE TABLE device_key (
    vessel text NOT NULL,
    device text NOT NULL,
    key text NOT NULL,
    named boolean NOT NULL, -- false: the first of this device, believed as it came
    seen timestamptz NOT NULL DEFAULT now(),
    PRIMARY KEY (vessel, device, key)
);

CREATE TABLE file_taken (
    sha256 text PRIMARY KEY, -- of the file
    vessel text NOT NULL,
    device text NOT NULL,
    key text NOT NULL,
    given timestamptz NOT NULL, -- when the device gave it, by its own clock
    program text NOT NULL,
    facts integer NOT NULL,
    new_facts integer NOT NULL,
    new_issues integer NOT NULL,
    new_photographs integer NOT NULL,
    taken timestamptz NOT NULL DEFAULT now(),
    FOREIGN KEY (vessel, device, key) REFERENCES device_key (vessel, device, key)
);

CREATE FUNCTION refuse_change() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
    RAISE EXCEPTION 'rows of % are never changed or deleted', TG_TABLE_NAME;
END $$;

DO $$
DECLARE
    only_added text;
BEGIN
    FOR only_added IN SELECT tablename FROM pg_tables WHERE schemaname = current_schema() LOOP
        EXECUTE format('CREATE TRIGGER only_added BEFORE UPDATE OR DELETE OR TRUNCATE ON %I '
                       'FOR EACH STATEMENT EXECUTE FUNCTION refuse_change()', only_added);
    END LOOP;
END $$;

-- A body belongs to a fact of its own kind.
CREATE FUNCTION refuse_other_kind() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
    IF EXISTS (SELECT FROM fresh LEFT JOIN latchround.fact ON fact.vessel = fresh.vessel AND fact.id = fresh.fact
               WHERE fact.kind IS DISTINCT FROM replace(TG_TABLE_NAME, '_', '-')) THEN
        RAISE EXCEPTION 'the fact is of another kind than %', TG_TABLE_NAME;
    END IF;
    RETURN NULL;
END $$;

DO $$
DECLARE
    body text;
BEGIN
    FOREACH body IN ARRAY ARRAY[
        'person_joined', 'walkdown_begun', 'walkdown_ended', 'observation', 'plate_read', 'measured_value',
        'run_started', 'mark', 'run_ended', 'caution_answered', 'note', 'photograph', 'deficiency',
        'could_not_test', 'judgement', 'taken_back', 'thumb_drill', 'decision_limits', 'upkeep_done',
        'certificate_seen', 'deficiency_terms', 'rectification', 'ready_for_retest', 'withdrawal',
        'difference_settled', 'key_accepted', 'walkdown_signed', 'report_made', 'undone'] LOOP
        EXECUTE format('CREATE TRIGGER of_its_kind AFTER INSERT ON %I REFERENCING NEW TABLE AS fresh '
                       'FOR EACH STATEMENT EXECUTE FUNCTION refuse_other_kind()', body);
    END LOOP;
END $$;

-- Part three: worked out by the program.

CREATE TABLE derived (
    vessel text PRIMARY KEY,
    name text NOT NULL, -- by the arrangement in force
    catalogue_edition text NOT NULL,
    flag text NOT NULL, -- whose own rules stood over the catalogue; empty: nobody's
    made timestamptz NOT NULL DEFAULT now()
);

-- The doors of the arrangement in force.
CREATE TABLE door_in_force (
    vessel text NOT NULL,
    door text NOT NULL,
    seq integer NOT NULL,
    deck text,
    boundary text,
    place text, -- kind of the boundary
    zone_aft text,
    zone_forward text,
    kind text NOT NULL,
    fire_class text NOT NULL,
    installed date,
    maker text NOT NULL, -- empty: not on record
    PRIMARY KEY (vessel, door)
);

-- Every deficiency that was ever written up, with what became of it.
CREATE TABLE item (
    vessel text NOT NULL,
    id text NOT NULL, -- of the deficiency that was found first
    seq integer NOT NULL,
    door text NOT NULL,
    requirement text NOT NULL, -- empty: the door as a whole
    asked text, -- the requirement in words
    cite text,
    found_words text NOT NULL,
    state text NOT NULL, -- found, rectified, ready-for-retest, closed, withdrawn
    open boolean NOT NULL,
    severity text NOT NULL, -- grave, serious, minor
    action text, -- of port State control
    ground_for_detention boolean,
    due date,
    interim text NOT NULL, -- what is done while the door is out; empty: nothing recorded
    assigned text NOT NULL, -- empty: nobody
    found date NOT NULL, -- first, by ship's time
    found_last date NOT NULL,
    times_found integer NOT NULL, -- while it was open
    repeat_of text, -- an earlier item of the same defect
    rectified date, -- last
    PRIMARY KEY (vessel, id)
);

-- The walkdown that began last, door by door and row by row.
CREATE TABLE newest_door_verdict (
    vessel text NOT NULL,
    door text NOT NULL,
    walkdown text NOT NULL,
    purpose text NOT NULL,
    begun date NOT NULL,
    verdict text NOT NULL,
    PRIMARY KEY (vessel, door)
);

CREATE TABLE newest_row_verdict (
    vessel text NOT NULL,
    door text NOT NULL,
    requirement text NOT NULL,
    asked text NOT NULL,
    verdict text NOT NULL,
    reason text NOT NULL,
    value double precision, -- the figure, in `unit`
    u double precision, -- its standard uncertainty
    unit text,
    PRIMARY KEY (vessel, door, requirement)
);

-- What has to be done every so often, and the certificate. A row for each door where it concerns doors.
CREATE TABLE due_day (
    vessel text NOT NULL,
    upkeep text NOT NULL, -- 'certificate' for the passenger ship safety certificate
    door text NOT NULL, -- empty: no door in particular
    words text NOT NULL,
    last date, -- done last
    due date, -- NULL: never done
    PRIMARY KEY (vessel, upkeep, door)
);

-- Closing time or rate of one door on one walkdown: the mean of its complete upright runs.
CREATE TABLE closing (
    vessel text NOT NULL,
    door text NOT NULL,
    seq integer NOT NULL,
    requirement text NOT NULL,
    day date NOT NULL,
    value double precision NOT NULL, -- in `unit`
    u double precision NOT NULL, -- standard uncertainty
    unit text NOT NULL,
    outside boolean NOT NULL, -- the limits
    after_repair boolean NOT NULL,
    present_line boolean NOT NULL, -- since the last repair; earlier ones say nothing about the years to come
    PRIMARY KEY (vessel, door, seq)
);

-- Part four: views.

CREATE VIEW open_items AS
SELECT item.vessel, derived.name, item.door, d.deck, d.boundary, d.place, d.kind, d.fire_class,
       item.requirement, item.asked, item.found_words, item.state, item.severity, item.action,
       item.ground_for_detention, item.due, coalesce(item.due < current_date, false) AS overdue,
       item.interim, item.assigned,
       item.found, current_date - item.found AS age_days, item.times_found, item.id, derived.catalogue_edition
FROM item JOIN derived USING (vessel) LEFT JOIN door_in_force AS d USING (vessel, door)
WHERE item.open
ORDER BY item.vessel, item.seq;

-- `due` NULL: never done.
CREATE VIEW overdue_tests AS
SELECT due_day.vessel, derived.name, due_day.door, due_day.upkeep, due_day.words, due_day.last, due_day.due,
       current_date - due_day.due AS days_over, derived.catalogue_edition
FROM due_day JOIN derived USING (vessel)
WHERE due_day.due IS NULL OR due_day.due < current_date
ORDER BY due_day.due NULLS FIRST, due_day.vessel, due_day.upkeep, due_day.door;

-- The same row of the same door written up more than once; what was withdrawn does not count.
CREATE VIEW repeat_defects AS
SELECT item.vessel, derived.name, item.door, item.requirement, min(item.asked) AS asked, d.kind, d.fire_class,
       sum(item.times_found) AS times_found, min(item.found) AS first_found, max(item.found_last) AS last_found,
       bool_or(item.open) AS open
FROM item JOIN derived USING (vessel) LEFT JOIN door_in_force AS d USING (vessel, door)
WHERE item.state <> 'withdrawn'
GROUP BY item.vessel, derived.name, item.door, item.requirement, d.kind, d.fire_class
HAVING sum(item.times_found) > 1
ORDER BY times_found DESC, item.vessel, item.door;

-- Across the fleet: the same row of the same kind and class of door.
CREATE VIEW repeat_defects_by_kind AS
SELECT d.kind, d.fire_class, item.requirement, min(item.asked) AS asked, sum(item.times_found) AS times_found,
       count(DISTINCT (item.vessel, item.door)) AS doors, count(DISTINCT item.vessel) AS vessels
FROM item JOIN door_in_force AS d USING (vessel, door)
WHERE item.state <> 'withdrawn'
GROUP BY d.kind, d.fire_class, item.requirement
HAVING sum(item.times_found) > 1
ORDER BY times_found DESC, d.kind, d.fire_class, item.requirement;

-- Across the fleet: the same row of the same maker's doors of a kind.
CREATE VIEW repeat_defects_by_maker AS
SELECT d.maker, d.kind, item.requirement, min(item.asked) AS asked, sum(item.times_found) AS times_found,
       count(DISTINCT (item.vessel, item.door)) AS doors, count(DISTINCT item.vessel) AS vessels
FROM item JOIN door_in_force AS d USING (vessel, door)
WHERE item.state <> 'withdrawn'
GROUP BY d.maker, d.kind, item.requirement
HAVING sum(item.times_found) > 1
ORDER BY times_found DESC, d.maker, d.kind, item.requirement;

-- A straight line by least squares through the times of each door since its last repair; three points at least.
CREATE VIEW door_closing_line AS
SELECT vessel, door, requirement, unit, regr_slope(value, (day - first_day) / 365.25::double precision) AS per_year,
       count(*) AS points, min(day) AS first_day, max(day) AS last_day
FROM (SELECT *, min(day) OVER (PARTITION BY vessel, door) AS first_day FROM closing WHERE present_line) AS present
GROUP BY vessel, door, requirement, unit
HAVING count(*) >= 3 AND min(day) < max(day);

-- The drift that one maker's doors of a kind and class share, in `unit` per year: one slope through the points of all
-- of them, each door measured from its own mean, so that a slow door beside a quick one is no drift.
CREATE VIEW closing_drift AS
SELECT d.maker, d.kind, d.fire_class, p.requirement, p.unit,
       regr_slope(p.value_from_mean, p.year_from_mean) AS per_year,
       count(DISTINCT (p.vessel, p.door)) AS doors, count(DISTINCT p.vessel) AS vessels, count(*) AS points
FROM (SELECT vessel, door, requirement, unit,
             value - avg(value) OVER of_door AS value_from_mean,
             (day - first_day - avg(day - first_day) OVER of_door) / 365.25::double precision AS year_from_mean
      FROM (SELECT *, min(day) OVER (PARTITION BY vessel, door) AS first_day FROM closing WHERE present_line) AS present
      WINDOW of_door AS (PARTITION BY vessel, door)) AS p
     JOIN door_closing_line USING (vessel, door) JOIN door_in_force AS d USING (vessel, door)
GROUP BY d.maker, d.kind, d.fire_class, p.requirement, p.unit
ORDER BY d.maker, d.kind, d.fire_class, p.requirement;
