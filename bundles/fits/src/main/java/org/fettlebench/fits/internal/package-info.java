/**
 * Answers seat questions by exact distances, and draws the answers; reached through the services
 * {@code Seats}, {@code SeatDrawings} and {@code HoleMethods}.
 */
package org.fettlebench.fits.internal;
