CREATE FUNCTION refuse_change() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  RAISE EXCEPTION 'the audit trail is never changed or removed';
END
$$;

CREATE TRIGGER revisions_stay BEFORE UPDATE OR DELETE ON revisions
FOR EACH ROW EXECUTE FUNCTION refuse_change();

CREATE TRIGGER revisions_are_kept BEFORE TRUNCATE ON revisions
FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
