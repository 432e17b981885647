CREATE TRIGGER revisions_stay BEFORE UPDATE ON revisions
BEGIN
  SELECT RAISE(ABORT, 'the audit trail is never changed');
END;

CREATE TRIGGER revisions_are_kept BEFORE DELETE ON revisions
BEGIN
  SELECT RAISE(ABORT, 'the audit trail is never removed');
END;
