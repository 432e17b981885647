-- How many tests a reagent's pack holds, where it is known; and visits by their time, for the owner's week.
ALTER TABLE reagent_lots ADD COLUMN tests INTEGER;

CREATE INDEX visits_by_time ON visits (at_s);

CREATE INDEX readings_of_lot ON readings (lot) WHERE lot IS NOT NULL;
