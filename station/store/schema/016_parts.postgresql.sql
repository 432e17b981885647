-- The endings of each word of a customer's, of three letters and more: found by any part of a word, as the
-- words themselves are found by their beginnings.
CREATE TABLE customer_endings (
  ending TEXT COLLATE "C" NOT NULL,
  customer_id TEXT NOT NULL,
  PRIMARY KEY (ending, customer_id)
);

INSERT INTO customer_endings (ending, customer_id)
  SELECT DISTINCT substr(word, n), customer_id FROM customer_words, LATERAL generate_series(2, length(word) - 2) n;

CREATE FUNCTION bring_endings() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  INSERT INTO customer_endings (ending, customer_id)
    SELECT substr(word, n), customer_id FROM changed, LATERAL generate_series(2, length(word) - 2) n
  ON CONFLICT (ending, customer_id) DO NOTHING;
  RETURN NULL;
END
$$;

CREATE TRIGGER words_bring_endings AFTER INSERT ON customer_words REFERENCING NEW TABLE AS changed
FOR EACH STATEMENT EXECUTE FUNCTION bring_endings();

-- All words of a customer go at once and come again.
CREATE FUNCTION take_endings() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  DELETE FROM customer_endings e USING changed c, LATERAL generate_series(2, length(c.word) - 2) n
    WHERE e.customer_id = c.customer_id AND e.ending = substr(c.word, n);
  RETURN NULL;
END
$$;

CREATE TRIGGER words_take_endings AFTER DELETE ON customer_words REFERENCING OLD TABLE AS changed
FOR EACH STATEMENT EXECUTE FUNCTION take_endings();

CREATE INDEX visits_of_bottle ON visits (bottle) WHERE bottle IS NOT NULL;
