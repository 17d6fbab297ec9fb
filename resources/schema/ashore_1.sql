-- The registers of a fleet in one PostgreSQL database. Run once, inside one transaction, by
-- app/ashore/ashore_schema.cpp, which makes the schema "latchround" first and writes its version afterwards.
--
-- Part one: the tables of a vessel's register (register_*.sql, which say what the columns mean and which words they may
-- hold), each with the vessel's identification number in front of its key. The program makes them beforehand, from a
-- register itself (app/ashore/mirrored_tables.cpp), and their triggers afterwards; here stands what a register has not.
-- Every row went through a register before it came here, so the words of closed sets are not checked a second time.
-- Flags are boolean, days are dates. Rows are only ever added; triggers refuse every change. A table that a register
-- gets later is made by the program as well; a column that one of its tables gets is for the next step here to add.
-- Part two: which files were taken in, from which device, under which key. Only added as well.
-- Part three: what the program works out of the facts: items with their state, verdicts, due days, closing times. SQL
-- cannot grade a door. These tables are replaced whole for a vessel whenever facts of it come in, in the same
-- transaction; table "derived" says by which edition of the catalogue.
-- Part four: views to begin with: open_items, overdue_tests, repeat_defects, repeat_defects_by_kind,
-- door_closing_line, closing_drift.

CREATE TABLE ashore_form (
    version integer PRIMARY KEY
);

-- Part one: the register.

-- Moments as people read them.
ALTER TABLE arrangement ADD COLUMN adopted timestamptz
    GENERATED ALWAYS AS (to_timestamp(adopted_utc_ms / 1000.0)) STORED;
ALTER TABLE fact ADD COLUMN at timestamptz GENERATED ALWAYS AS (to_timestamp(utc_ms / 1000.0)) STORED;

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
    FOREACH only_added IN ARRAY ARRAY['ashore_form', 'photograph_bytes', 'device_key', 'file_taken'] LOOP
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
    state text NOT NULL, -- found, rectified, awaiting-retest, closed, withdrawn
    open boolean NOT NULL,
    severity text NOT NULL, -- critical, serious, minor
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
