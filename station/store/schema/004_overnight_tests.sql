-- Overnight chlorine-demand tests while they go on, in their JSON form (brimline-overnight/1); `open` is 0
-- once the customer has been told or the test given up. A visit's last one has the greatest number.
CREATE TABLE overnight_tests (
  visit_id TEXT NOT NULL REFERENCES visits (id),
  number INTEGER NOT NULL,
  open INTEGER NOT NULL CHECK (open IN (0, 1)),
  content TEXT NOT NULL,
  PRIMARY KEY (visit_id, number)
);

CREATE INDEX overnight_tests_open ON overnight_tests (open);
