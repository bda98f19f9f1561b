/**
 * A command of the command line, as a bundle contributes it.
 *
 * <p>A bundle registers a {@link org.fettlebench.command.Command} service. Its {@link
 * org.fettlebench.command.Usage} says by which words it is called, what follows them, and gives an
 * example that works; help is made out of it. The command line takes the words apart, refuses what
 * the usage does not know, and hands over a {@link org.fettlebench.command.Call}. The command
 * returns a {@link org.fettlebench.command.Reply} with the same answer twice: as text for people
 * and as data for machines.
 *
 * <p>Units: a length in the data is a number whose key ends in its unit ({@code allowanceMm},
 * {@code majorIn}); numbers are finite; maps keep their order. Text shows the unit beside each
 * figure or in the column's head.
 *
 * <p>Exit status: {@code 0} done; {@code 1} done, and something does not fit or is short; {@code 2}
 * bad input or use, told by a {@link org.fettlebench.command.CommandException} (or by an exception
 * of the suite's own APIs that is made for people, such as {@code MeasureException}). Anything else
 * a command throws is kept against its module, told to the person, and ends with {@code 2} too.
 *
 * <p>Words of the suite's own commands cannot be taken by a module: the module's is left out and
 * reported. No null crosses this API.
 */
@Export
@Version("1.2.0")
package org.fettlebench.command;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
