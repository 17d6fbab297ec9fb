-- Who built a door, so that those of one maker can be looked at together.
ALTER TABLE door ADD COLUMN maker TEXT NOT NULL DEFAULT ''; -- empty: not on record
