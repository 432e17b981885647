-- Reagent lots, and the checks of the instruments against their standards. Times are ISO 8601 text; `gone` is 1
-- once the lot has been used up or thrown away: old readings still name it.
CREATE TABLE reagent_lots (
  lot TEXT NOT NULL PRIMARY KEY,
  analyte TEXT,
  expires TEXT,
  opened TEXT,
  warmest_c DOUBLE PRECISION,
  beside_chlorine INTEGER NOT NULL CHECK (beside_chlorine IN (0, 1)),
  gone INTEGER NOT NULL CHECK (gone IN (0, 1))
);

CREATE TABLE instrument_checks (
  instrument TEXT NOT NULL,
  number INTEGER NOT NULL,
  analyte TEXT,
  at TEXT NOT NULL,
  passed INTEGER NOT NULL CHECK (passed IN (0, 1)),
  PRIMARY KEY (instrument, number)
);
