-- Version 2: doors by their maker.
ALTER TABLE door ADD COLUMN maker text NOT NULL DEFAULT ''; -- empty: not on record
ALTER TABLE door_in_force ADD COLUMN maker text NOT NULL DEFAULT '';

-- Across the fleet: the same row of the same maker's doors of a kind.
CREATE VIEW repeat_defects_by_maker AS
SELECT d.maker, d.kind, item.requirement, min(item.asked) AS asked, sum(item.times_found) AS times_found,
       count(DISTINCT (item.vessel, item.door)) AS doors, count(DISTINCT item.vessel) AS vessels
FROM item JOIN door_in_force AS d USING (vessel, door)
WHERE item.state <> 'withdrawn'
GROUP BY d.maker, d.kind, item.requirement
HAVING sum(item.times_found) > 1
ORDER BY times_found DESC, d.maker, d.kind, item.requirement;

-- The drift that one maker's doors of a kind and class share, in `unit` per year: one slope through the points of all
-- of them, each door measured from its own mean, so that a slow door beside a quick one is no drift.
DROP VIEW closing_drift;
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
