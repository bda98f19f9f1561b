-- Stock as a ledger: what is held, every movement of it, and who has what on loan.
-- Lengths are whole nanometres; moments are milliseconds since 1970-01-01T00:00Z.

CREATE TABLE place (
  id BIGINT NOT NULL PRIMARY KEY,
  path VARCHAR(300) NOT NULL CONSTRAINT place_path_once UNIQUE
);

CREATE TABLE member (
  id BIGINT NOT NULL PRIMARY KEY,
  name VARCHAR(120) NOT NULL CONSTRAINT member_name_once UNIQUE
);

-- A diameter, a length or a word that was not said is 0 or empty rather than NULL, because NULLs are
-- never equal and so would let the same goods stand on two lines.
CREATE TABLE stock_line (
  id BIGINT NOT NULL PRIMARY KEY,
  kind VARCHAR(12) NOT NULL CONSTRAINT stock_line_kind
    CHECK (kind IN ('FASTENER', 'DRILL', 'TAP', 'SUNDRY')),
  name VARCHAR(200) NOT NULL CONSTRAINT stock_line_name CHECK (name <> ''),
  thread VARCHAR(60) NOT NULL,
  style VARCHAR(40) NOT NULL,
  diameter_nm BIGINT NOT NULL CONSTRAINT stock_line_diameter CHECK (diameter_nm >= 0),
  length_nm BIGINT NOT NULL CONSTRAINT stock_line_length CHECK (length_nm >= 0),
  material VARCHAR(80) NOT NULL,
  place_id BIGINT NOT NULL CONSTRAINT stock_line_place REFERENCES place (id),
  fitness VARCHAR(4) NOT NULL CONSTRAINT stock_line_fitness CHECK (fitness IN ('GOOD', 'WORN')),
  quantity INTEGER NOT NULL CONSTRAINT stock_line_quantity CHECK (quantity >= 0),
  lent INTEGER NOT NULL,
  low_mark INTEGER CONSTRAINT stock_line_low_mark CHECK (low_mark >= 0),
  CONSTRAINT stock_line_lent CHECK (lent >= 0 AND lent <= quantity),
  CONSTRAINT stock_line_once
    UNIQUE (name, kind, thread, style, diameter_nm, length_nm, material, place_id, fitness)
);

CREATE TABLE movement (
  id BIGINT NOT NULL PRIMARY KEY,
  line_id BIGINT NOT NULL CONSTRAINT movement_line REFERENCES stock_line (id),
  kind VARCHAR(8) NOT NULL CONSTRAINT movement_kind
    CHECK (kind IN ('RECEIVED', 'TAKEN', 'RETURNED', 'COUNTED', 'SCRAPPED', 'UNDONE')),
  quantity INTEGER NOT NULL,
  moved_ms BIGINT NOT NULL,
  member_id BIGINT CONSTRAINT movement_member REFERENCES member (id),
  note VARCHAR(500) NOT NULL,
  undoes_id BIGINT CONSTRAINT movement_undone_once UNIQUE
    CONSTRAINT movement_undoes REFERENCES movement (id),
  CONSTRAINT movement_moves CHECK (quantity <> 0 OR kind = 'COUNTED'),
  CONSTRAINT movement_direction CHECK (
    (kind NOT IN ('RECEIVED', 'RETURNED') OR quantity > 0)
    AND (kind NOT IN ('TAKEN', 'SCRAPPED') OR quantity < 0)),
  CONSTRAINT movement_undoes_something CHECK (
    (kind = 'UNDONE' AND undoes_id IS NOT NULL) OR (kind <> 'UNDONE' AND undoes_id IS NULL))
);

CREATE TABLE loan (
  id BIGINT NOT NULL PRIMARY KEY,
  line_id BIGINT NOT NULL CONSTRAINT loan_line REFERENCES stock_line (id),
  member_id BIGINT NOT NULL CONSTRAINT loan_member REFERENCES member (id),
  quantity INTEGER NOT NULL CONSTRAINT loan_quantity CHECK (quantity > 0),
  lent_ms BIGINT NOT NULL,
  due DATE,
  returned_ms BIGINT,
  CONSTRAINT loan_order CHECK (returned_ms >= lent_ms)
);

-- One row, locked by whoever changes the stock: changes come one after another, keys rise in the
-- order in which changes were committed, and many rows can be entered in one batch.
CREATE TABLE last_key (
  id INTEGER NOT NULL PRIMARY KEY CONSTRAINT last_key_one_row CHECK (id = 1),
  place_id BIGINT NOT NULL,
  member_id BIGINT NOT NULL,
  line_id BIGINT NOT NULL,
  movement_id BIGINT NOT NULL,
  loan_id BIGINT NOT NULL
);

INSERT INTO last_key VALUES (1, 0, 0, 0, 0, 0);
