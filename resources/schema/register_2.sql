-- What the fire tables ask to know of a boundary, and the doors that some rows exempt.
ALTER TABLE zone ADD COLUMN area_m2 REAL CHECK (area_m2 IS NULL OR area_m2 > 0);
ALTER TABLE boundary ADD COLUMN division TEXT NOT NULL DEFAULT 'bulkhead' CHECK (division IN ('bulkhead', 'deck'));
ALTER TABLE boundary ADD COLUMN space_one INTEGER CHECK (space_one BETWEEN 1 AND 14);
ALTER TABLE boundary ADD COLUMN space_other INTEGER CHECK (space_other BETWEEN 1 AND 14);
ALTER TABLE door ADD COLUMN weathertight INTEGER NOT NULL DEFAULT 0 CHECK (weathertight IN (0, 1));
ALTER TABLE door ADD COLUMN escape_trunk INTEGER NOT NULL DEFAULT 0 CHECK (escape_trunk IN (0, 1));
ALTER TABLE door ADD COLUMN special_category INTEGER NOT NULL DEFAULT 0 CHECK (special_category IN (0, 1));
ALTER TABLE door ADD COLUMN faces_embarkation INTEGER NOT NULL DEFAULT 0
    CHECK (faces_embarkation IN (0, 1));
