-- How far holes were out. Nothing is deleted; what no longer counts is struck out with a reason.

CREATE TABLE measured_error (
  id BIGINT NOT NULL PRIMARY KEY,
  method VARCHAR(60) NOT NULL CONSTRAINT measured_error_method CHECK (method <> ''),
  x_nm BIGINT NOT NULL,
  y_nm BIGINT NOT NULL,
  measured DATE NOT NULL,
  member_id BIGINT CONSTRAINT measured_error_member REFERENCES member (id),
  machine VARCHAR(120) NOT NULL,
  note VARCHAR(500) NOT NULL,
  entered_ms BIGINT NOT NULL,
  struck_ms BIGINT,
  struck_by BIGINT CONSTRAINT measured_error_struck_by REFERENCES member (id),
  struck_why VARCHAR(500),
  CONSTRAINT measured_error_struck CHECK (
    (struck_ms IS NULL AND struck_by IS NULL AND struck_why IS NULL)
    OR (struck_ms IS NOT NULL AND struck_why IS NOT NULL AND struck_why <> ''))
);
