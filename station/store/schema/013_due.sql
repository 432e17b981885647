-- When the vessel's next bottle is due, by the plan told or else after a month; seconds of UTC since 1970.
ALTER TABLE visits ADD COLUMN due_s BIGINT;

UPDATE visits SET due_s = at_s + 2592000 WHERE at_s IS NOT NULL;

CREATE INDEX visits_due ON visits (due_s);
