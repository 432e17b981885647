-- The function is that of step 2.
CREATE TRIGGER check_measurements_stay BEFORE UPDATE OR DELETE ON check_measurements
FOR EACH ROW EXECUTE FUNCTION refuse_change();

CREATE TRIGGER check_measurements_are_kept BEFORE TRUNCATE ON check_measurements
FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();

CREATE TRIGGER check_clearances_stay BEFORE UPDATE OR DELETE ON check_clearances
FOR EACH ROW EXECUTE FUNCTION refuse_change();

CREATE TRIGGER check_clearances_are_kept BEFORE TRUNCATE ON check_clearances
FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();

CREATE TRIGGER lot_curves_stay BEFORE UPDATE OR DELETE ON lot_curves
FOR EACH ROW EXECUTE FUNCTION refuse_change();

CREATE TRIGGER lot_curves_are_kept BEFORE TRUNCATE ON lot_curves
FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
