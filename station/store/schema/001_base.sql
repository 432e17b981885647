-- A statement ends with a semicolon and an empty line. Column names are the field names of the JSON
-- form of a visit. Text keys are compared byte by byte.
CREATE TABLE customers (
  id TEXT NOT NULL PRIMARY KEY,
  name TEXT, phone TEXT, street TEXT, email TEXT, language TEXT, units TEXT
);

CREATE TABLE vessels (
  id TEXT NOT NULL PRIMARY KEY,
  customer_id TEXT REFERENCES customers (id),
  kind TEXT, "use" TEXT, place TEXT, in_ground INTEGER, surface TEXT,
  plaster_age_days DOUBLE PRECISION,
  volume_m3 DOUBLE PRECISION,
  volume_relative_sd DOUBLE PRECISION,
  sanitizer TEXT, previous_sanitizer TEXT,
  water_temperature_c DOUBLE PRECISION,
  turnover_h DOUBLE PRECISION
);

CREATE INDEX vessels_of_customer ON vessels (customer_id);

-- `at_s` is when the water was taken, else tested, else taken home, in seconds of UTC since 1970.
-- `circumstances` is the visit's JSON form without its readings and its plan: whose water it was and
-- what was known of the vessel on that day, which the rows above may have outgrown.
CREATE TABLE visits (
  id TEXT NOT NULL PRIMARY KEY,
  revision INTEGER NOT NULL,
  finished INTEGER NOT NULL CHECK (finished IN (0, 1)),
  at_s BIGINT,
  bottle TEXT,
  customer_id TEXT REFERENCES customers (id),
  vessel_id TEXT REFERENCES vessels (id),
  circumstances TEXT NOT NULL
);

CREATE INDEX visits_of_vessel ON visits (vessel_id, at_s);

CREATE INDEX visits_of_customer ON visits (customer_id, at_s);

CREATE INDEX visits_open ON visits (finished, at_s);

CREATE TABLE readings (
  visit_id TEXT NOT NULL REFERENCES visits (id),
  position INTEGER NOT NULL,
  analyte TEXT NOT NULL,
  value DOUBLE PRECISION NOT NULL,
  method TEXT,
  dilution DOUBLE PRECISION,
  clipped TEXT,
  repeat_of INTEGER,
  sd DOUBLE PRECISION,
  instrument TEXT,
  lot TEXT,
  PRIMARY KEY (visit_id, position)
);

-- The plan as it was told, in its JSON form.
CREATE TABLE plans (
  visit_id TEXT NOT NULL PRIMARY KEY REFERENCES visits (id),
  plan TEXT NOT NULL
);

-- What a visit was before it was revised: its whole JSON form. Never changed, never removed.
CREATE TABLE revisions (
  visit_id TEXT NOT NULL REFERENCES visits (id),
  revision INTEGER NOT NULL,
  superseded_at TEXT NOT NULL DEFAULT CURRENT_TIMESTAMP,
  content TEXT NOT NULL,
  PRIMARY KEY (visit_id, revision)
);

CREATE TABLE settings (
  name TEXT NOT NULL PRIMARY KEY,
  value TEXT NOT NULL
);
