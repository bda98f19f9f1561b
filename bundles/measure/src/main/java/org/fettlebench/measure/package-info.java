/**
 * Lengths of the workshop: what a length is, how it is typed, how it is shown, and when two figures
 * are the same.
 *
 * <p>A {@link org.fettlebench.measure.Length} is a whole number of nanometres, so that every inch
 * fraction down to 1/64 in (0.396875 mm), every thousandth of an inch and every hundredth of a
 * millimetre is exact. It may be negative; the largest is about nine thousand kilometres, and sums
 * beyond it are refused. Equality and order are those of the whole number: two drills of one size
 * are equal whatever they are called.
 *
 * <p>Rounding happens only in two places: when text is made by {@link
 * org.fettlebench.measure.LengthFormat} (halves away from nothing), and when a calculated {@code
 * double} or a figure finer than a nanometre is turned back into a length.
 *
 * <p>{@link org.fettlebench.measure.LengthReader} reads what people type, in one reading only: what
 * could mean two lengths is refused. Text that is no length is refused with a {@link
 * org.fettlebench.measure.MeasureException} that names the text, what is wrong with it and what
 * would be understood. Results do not depend on the machine's language.
 *
 * <p>Geometry is done in {@code double} millimetres ({@link org.fettlebench.measure.Point}); every
 * tolerance it needs stands in {@link org.fettlebench.measure.Tolerances} with its reason.
 *
 * <p>No type here accepts null; nothing returns null. All types are immutable and may be used from
 * any thread. 1 in = 25.4 mm exactly (International Yard and Pound agreement, 1959).
 */
@Export
@Version("1.1.0")
package org.fettlebench.measure;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
