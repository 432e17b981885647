CREATE TRIGGER checks_stay BEFORE UPDATE OR DELETE ON instrument_checks
FOR EACH ROW EXECUTE FUNCTION refuse_change();

CREATE TRIGGER checks_are_kept BEFORE TRUNCATE ON instrument_checks
FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
