-- Two cards of one person made one: `id` is gone into `into_id`. What either card held and what moved is kept, so
-- that they can be taken apart again. No card and no visit names `id` from then on.
CREATE TABLE joined_customers (
  id TEXT NOT NULL PRIMARY KEY,
  into_id TEXT NOT NULL,
  content TEXT NOT NULL
);

CREATE INDEX joined_into ON joined_customers (into_id);

-- Cards that look alike and are two people all the same; `id` is the lesser of the two.
CREATE TABLE told_apart (
  id TEXT NOT NULL,
  other_id TEXT NOT NULL,
  PRIMARY KEY (id, other_id)
);
