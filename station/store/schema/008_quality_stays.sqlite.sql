CREATE TRIGGER check_measurements_stay BEFORE UPDATE ON check_measurements
BEGIN
  SELECT RAISE(ABORT, 'what was measured and cleared is never changed');
END;

CREATE TRIGGER check_measurements_are_kept BEFORE DELETE ON check_measurements
BEGIN
  SELECT RAISE(ABORT, 'what was measured and cleared is never removed');
END;

CREATE TRIGGER check_clearances_stay BEFORE UPDATE ON check_clearances
BEGIN
  SELECT RAISE(ABORT, 'what was measured and cleared is never changed');
END;

CREATE TRIGGER check_clearances_are_kept BEFORE DELETE ON check_clearances
BEGIN
  SELECT RAISE(ABORT, 'what was measured and cleared is never removed');
END;

CREATE TRIGGER lot_curves_stay BEFORE UPDATE ON lot_curves
BEGIN
  SELECT RAISE(ABORT, 'what was measured and cleared is never changed');
END;

CREATE TRIGGER lot_curves_are_kept BEFORE DELETE ON lot_curves
BEGIN
  SELECT RAISE(ABORT, 'what was measured and cleared is never removed');
END;
