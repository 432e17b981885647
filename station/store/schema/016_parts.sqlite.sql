-- The endings of each word of a customer's, of three letters and more: found by any part of a word, as the
-- words themselves are found by their beginnings. `letters` counts them.
CREATE TABLE letters (n INTEGER NOT NULL PRIMARY KEY);

WITH RECURSIVE counted (n) AS (SELECT 2 UNION ALL SELECT n + 1 FROM counted WHERE n < 60)
  INSERT INTO letters (n) SELECT n FROM counted;

CREATE TABLE customer_endings (
  ending TEXT NOT NULL,
  customer_id TEXT NOT NULL,
  PRIMARY KEY (ending, customer_id)
) WITHOUT ROWID;

INSERT OR IGNORE INTO customer_endings (ending, customer_id)
  SELECT substr(word, n), customer_id FROM customer_words JOIN letters ON n <= length(word) - 2;

CREATE TRIGGER words_bring_endings AFTER INSERT ON customer_words
BEGIN
  INSERT OR IGNORE INTO customer_endings (ending, customer_id)
    SELECT substr(NEW.word, n), NEW.customer_id FROM letters WHERE n <= length(NEW.word) - 2;
END;

-- All words of a customer go at once and come again.
CREATE TRIGGER words_take_endings AFTER DELETE ON customer_words
BEGIN
  DELETE FROM customer_endings WHERE customer_id = OLD.customer_id
    AND ending IN (SELECT substr(OLD.word, n) FROM letters WHERE n <= length(OLD.word) - 2);
END;

CREATE INDEX visits_of_bottle ON visits (bottle) WHERE bottle IS NOT NULL;
