-- Readings that came from an instrument and belong to no bottle, numbered as they came. `reading` is one of brimline-visit/1; `settled`
-- is the visit it went to, or empty where it was set aside, and nothing until somebody has said.
CREATE TABLE orphan_readings (
  id TEXT NOT NULL PRIMARY KEY,
  number INTEGER NOT NULL UNIQUE,
  heard_at TEXT NOT NULL,
  sample TEXT,
  reading TEXT NOT NULL,
  settled TEXT
);

CREATE INDEX orphan_readings_open ON orphan_readings (settled);
