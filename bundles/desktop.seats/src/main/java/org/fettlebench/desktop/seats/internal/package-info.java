/** The page on which a seat is drawn and measured; the only way in is the component SeatPage. */
package org.fettlebench.desktop.seats.internal;
