-- Folded words of a customer; `place` 0 is the name, 1 anything else. Compared byte by byte, so that
-- the words with one beginning stand together whatever the server's language.
CREATE TABLE customer_words (
  word TEXT COLLATE "C" NOT NULL,
  place INTEGER NOT NULL,
  customer_id TEXT NOT NULL REFERENCES customers (id),
  PRIMARY KEY (word, place, customer_id)
);

CREATE INDEX words_of_customer ON customer_words (customer_id, word);
