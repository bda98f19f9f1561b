-- Kit files as the text that was read.

CREATE TABLE kit_file (
  name VARCHAR(200) NOT NULL PRIMARY KEY,
  content ${longText} NOT NULL,
  kept_ms BIGINT NOT NULL
);
