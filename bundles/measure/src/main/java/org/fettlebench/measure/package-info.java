/**
 * Lengths of the workshop: what a length is, how it is typed, how it is shown.
 *
 * <p>A {@link org.fettlebench.measure.Length} is a whole number of nanometres, so that every inch
 * fraction down to 1/64 in, every thousandth of an inch and every hundredth of a millimetre is
 * exact. Rounding happens only when text is made ({@link org.fettlebench.measure.LengthFormat}) or
 * when a calculated {@code double} is turned back into a length. No type here accepts null; nothing
 * returns null. Text that is no length is refused with a {@link
 * org.fettlebench.measure.MeasureException} that names the text and says what would be understood.
 *
 * <p>1 in = 25.4 mm exactly (International Yard and Pound agreement, 1959).
 */
@Export
@Version("1.0.0")
package org.fettlebench.measure;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
