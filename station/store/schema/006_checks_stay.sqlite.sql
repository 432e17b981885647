CREATE TRIGGER checks_stay BEFORE UPDATE ON instrument_checks
BEGIN
  SELECT RAISE(ABORT, 'a check of an instrument is never changed');
END;

CREATE TRIGGER checks_are_kept BEFORE DELETE ON instrument_checks
BEGIN
  SELECT RAISE(ABORT, 'a check of an instrument is never removed');
END;
