/**
 * What a club keeps: its stock, who has what on loan, its kit files, and how far its holes were
 * out. Answers "what have we, how many, where, who took it, and how well do we drill?"
 *
 * <p>Three services, {@link org.fettlebench.club.Stock}, {@link org.fettlebench.club.KitShelf} and
 * {@link org.fettlebench.club.MeasuredErrors}, over plain records. The records name things as the
 * trade does (a thread by its designation, a style by its word) and know nothing of threads or
 * seats themselves. Lengths are {@link org.fettlebench.measure.Length}: exact in nanometres, so
 * that 1/64 in comes back as 1/64 in. Quantities are whole things. Moments are kept to the
 * millisecond.
 *
 * <p>Records check themselves when they are made and take the blanks off the ends of their words:
 * one line each, none longer than said beside it. What the books do not allow ends in a {@link
 * org.fettlebench.club.ClubException} whose message is for people: what, how many, and the remedy.
 * It is thrown before anything has changed. No null goes in or comes out; absence is an empty
 * Optional, an empty list or, for words, an empty text. Lists that come out cannot be changed.
 *
 * <p>The services are implemented by the club's store and used by pages, commands and the kit
 * check.
 */
@Export
@Version("1.1.0")
package org.fettlebench.club;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
