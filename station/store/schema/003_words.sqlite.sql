-- Folded words of a customer; `place` 0 is the name, 1 anything else.
CREATE TABLE customer_words (
  word TEXT NOT NULL,
  place INTEGER NOT NULL,
  customer_id TEXT NOT NULL REFERENCES customers (id),
  PRIMARY KEY (word, place, customer_id)
) WITHOUT ROWID;

CREATE INDEX words_of_customer ON customer_words (customer_id, word);
