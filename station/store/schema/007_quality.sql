-- Check standards of the instruments, and what was measured with them. Moments are ISO 8601 texts with the
-- offset of the shop.
-- As readings name them.
CREATE TABLE instruments (
  id TEXT NOT NULL PRIMARY KEY
);

CREATE TABLE check_standards (
  id TEXT NOT NULL PRIMARY KEY,
  instrument TEXT NOT NULL REFERENCES instruments (id),
  analyte TEXT NOT NULL,
  name TEXT NOT NULL,
  value DOUBLE PRECISION NOT NULL,
  sd DOUBLE PRECISION NOT NULL CHECK (sd > 0),
  every_days DOUBLE PRECISION NOT NULL CHECK (every_days > 0),
  since TEXT NOT NULL
);

-- Evidence: never changed, never removed. `at_s` is seconds of UTC since 1970.
CREATE TABLE check_measurements (
  id TEXT NOT NULL PRIMARY KEY,
  standard TEXT NOT NULL REFERENCES check_standards (id),
  at_s BIGINT NOT NULL,
  measured_at TEXT NOT NULL,
  value DOUBLE PRECISION NOT NULL,
  typed INTEGER NOT NULL CHECK (typed IN (0, 1)),
  lot TEXT NOT NULL
);

CREATE INDEX check_measurements_in_order ON check_measurements (at_s);

-- Evidence: who let a stopped analyte go on, and why.
CREATE TABLE check_clearances (
  id TEXT NOT NULL PRIMARY KEY,
  instrument TEXT NOT NULL REFERENCES instruments (id),
  analyte TEXT NOT NULL,
  at_s BIGINT NOT NULL,
  cleared_at TEXT NOT NULL,
  cleared_by TEXT NOT NULL CHECK (cleared_by <> ''),
  reason TEXT NOT NULL CHECK (reason <> '')
);

-- Evidence: the standards behind a lot's absorbance curve; `points` is a JSON array of [amount, absorbance].
CREATE TABLE lot_curves (
  id TEXT NOT NULL PRIMARY KEY,
  lot TEXT NOT NULL REFERENCES reagent_lots (lot),
  wavelength_nm DOUBLE PRECISION NOT NULL,
  at_s BIGINT NOT NULL,
  measured_at TEXT NOT NULL,
  points TEXT NOT NULL
);
