-- Staff of the shop. `pin_hash` is Argon2id's own text form (RFC 9106); `failures` are wrong PINs in a row, and
-- none is looked at before `wait_until_s` (seconds of UTC since 1970).
CREATE TABLE staff (
  id TEXT NOT NULL PRIMARY KEY,
  name TEXT NOT NULL CHECK (name <> ''),
  role TEXT NOT NULL CHECK (role IN ('clerk', 'keeper')),
  pin_hash TEXT NOT NULL,
  gone INTEGER NOT NULL CHECK (gone IN (0, 1)),
  failures INTEGER NOT NULL,
  wait_until_s BIGINT
);

-- Who changed what, when, from what to what, and why; what a person is called or where they live is never written
-- here. Never changed, never removed.
CREATE TABLE audit_trail (
  number BIGINT NOT NULL PRIMARY KEY,
  at_s BIGINT NOT NULL,
  at TEXT NOT NULL,
  who TEXT NOT NULL,
  what TEXT NOT NULL,
  subject TEXT NOT NULL,
  field TEXT,
  before TEXT,
  after TEXT,
  reason TEXT
);

CREATE INDEX audit_trail_of ON audit_trail (subject, number);

CREATE TRIGGER audit_trail_stays BEFORE UPDATE ON audit_trail
BEGIN
  SELECT RAISE(ABORT, 'the audit trail is never changed');
END;

CREATE TRIGGER audit_trail_is_kept BEFORE DELETE ON audit_trail
BEGIN
  SELECT RAISE(ABORT, 'the audit trail is never removed');
END;

-- Work that counters did while they could not reach the store, and that is in it: by its own id, once.
CREATE TABLE done_work (
  id TEXT NOT NULL PRIMARY KEY,
  at_s BIGINT NOT NULL
);

-- In a counter's own journal: work that the shared store has not got yet, in its order, in JSON; `refusal` says why
-- that store would not take it, until somebody has chosen.
CREATE TABLE waiting_work (
  number BIGINT NOT NULL PRIMARY KEY,
  id TEXT NOT NULL UNIQUE,
  kind TEXT NOT NULL,
  subject TEXT NOT NULL,
  content TEXT NOT NULL,
  who TEXT NOT NULL,
  at TEXT NOT NULL,
  refusal TEXT
);

CREATE INDEX waiting_work_of ON waiting_work (subject);

-- A customer's name goes out of the revisions when the customer is erased, and only then: there is a row here
-- while that is done.
CREATE TABLE erasing (
  customer_id TEXT NOT NULL PRIMARY KEY
);

DROP TRIGGER revisions_stay;

CREATE TRIGGER revisions_stay BEFORE UPDATE ON revisions
WHEN (SELECT COUNT(*) FROM erasing) = 0
BEGIN
  SELECT RAISE(ABORT, 'the audit trail is never changed');
END;
