-- What a customer's words begin with: their first one, two and three letters, and "=" before each whole word. A
-- server that looks for customers of several common beginnings joins lists of them instead of walking through
-- all customers of one. `name` is the first word of theirs, to put them in order by.
CREATE TABLE customer_tokens (
  customer_id TEXT NOT NULL PRIMARY KEY REFERENCES customers (id) ON DELETE CASCADE,
  name TEXT COLLATE "C" NOT NULL,
  tokens TEXT[] NOT NULL
);

CREATE FUNCTION renew_tokens() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  INSERT INTO customer_tokens (customer_id, name, tokens)
    SELECT c.customer_id, COALESCE(MIN(w.word) FILTER (WHERE w.place = 0), ''), COALESCE(array_agg(DISTINCT t.token) FILTER (WHERE t.token IS NOT NULL), '{}')
    FROM (SELECT DISTINCT customer_id FROM changed) c
    JOIN customers ON customers.id = c.customer_id
    LEFT JOIN customer_words w ON w.customer_id = c.customer_id
    LEFT JOIN LATERAL (VALUES ('=' || w.word), (left(w.word, 1)), (left(w.word, 2)), (left(w.word, 3))) t (token)
      ON TRUE
    GROUP BY c.customer_id
  ON CONFLICT (customer_id) DO UPDATE SET name = excluded.name, tokens = excluded.tokens;
  RETURN NULL;
END
$$;

CREATE TRIGGER words_are_added AFTER INSERT ON customer_words REFERENCING NEW TABLE AS changed
FOR EACH STATEMENT EXECUTE FUNCTION renew_tokens();

CREATE TRIGGER words_are_taken AFTER DELETE ON customer_words REFERENCING OLD TABLE AS changed
FOR EACH STATEMENT EXECUTE FUNCTION renew_tokens();

INSERT INTO customer_tokens (customer_id, name, tokens)
  SELECT w.customer_id, COALESCE(MIN(w.word) FILTER (WHERE w.place = 0), ''), array_agg(DISTINCT t.token)
  FROM customer_words w
  CROSS JOIN LATERAL (VALUES ('=' || w.word), (left(w.word, 1)), (left(w.word, 2)), (left(w.word, 3))) t (token)
  GROUP BY w.customer_id;

CREATE INDEX tokens_of_customers ON customer_tokens USING gin (tokens) WITH (fastupdate = off);
