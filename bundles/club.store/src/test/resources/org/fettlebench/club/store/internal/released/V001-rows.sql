-- What a club had in its store at schema version 1. Kept for ever: every later version must open it.
INSERT INTO place VALUES (1, 'Cabinet / Drawer 3');
INSERT INTO member VALUES (1, 'Ann Turner');
INSERT INTO stock_line VALUES (1, 'DRILL', '5/32 in', '', '', 3968750, 0, '', 1, 'GOOD', 3, 1, 2);
INSERT INTO stock_line VALUES (2, 'FASTENER', '2 BA screw', '2 BA', 'hexagon', 0, 12700000, 'steel', 1, 'WORN', 6, 0, NULL);
INSERT INTO movement VALUES (1, 1, 'RECEIVED', 3, 1700000000123, 1, 'bought', NULL);
INSERT INTO movement VALUES (2, 2, 'RECEIVED', 8, 1700000000456, NULL, '', NULL);
INSERT INTO movement VALUES (3, 2, 'TAKEN', -2, 1700000001000, 1, '', NULL);
INSERT INTO movement VALUES (4, 2, 'UNDONE', 2, 1700000002000, 1, 'undoes movement 3', 3);
INSERT INTO movement VALUES (5, 2, 'SCRAPPED', -2, 1700000003000, NULL, 'bent', NULL);
INSERT INTO loan VALUES (1, 1, 1, 1, 1700000004000, '2030-12-03', NULL);
UPDATE last_key SET place_id = 1, member_id = 1, line_id = 2, movement_id = 5, loan_id = 1;
