-- A volume taken from how the water answered the doses told, the last bottle whose answers it holds, and what stood on file before.
-- It counts only while the vessel's volume is still that one.
ALTER TABLE vessels ADD COLUMN learnt_volume_m3 DOUBLE PRECISION;

ALTER TABLE vessels ADD COLUMN learnt_until TEXT;

ALTER TABLE vessels ADD COLUMN volume_before_m3 DOUBLE PRECISION;

ALTER TABLE vessels ADD COLUMN volume_before_relative_sd DOUBLE PRECISION;
