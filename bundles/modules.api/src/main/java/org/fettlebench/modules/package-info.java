/**
 * What is installed, what each module adds, and what went wrong with it.
 *
 * <p>A module is a bundle as a person sees it: a part of the suite, a library, or a jar that a club
 * dropped into the modules folder. {@link org.fettlebench.modules.Modules} lists them: those from
 * the folder first, then the suite's own, then libraries, each by title. A jar in the folder that
 * is no module is listed too, with the reason. Lists are snapshots and cannot be changed.
 *
 * <p>Every registry that calls into contributions catches what they throw and gives it to {@link
 * org.fettlebench.modules.Faults}, which never throws and may be called from any thread. Faults are
 * kept newest first, at most 50 of each module, until the suite ends; one that happens again moves
 * to the front. They go to the log as well.
 *
 * <p>{@link org.fettlebench.modules.ModulesListener} is implemented by whoever wants to be told of
 * changes and registered as a service; it is called on a thread of its own, about 100 ms after the
 * first of a burst of changes. The other interfaces are implemented by the suite alone.
 *
 * <p>What a module is left out by is remembered in {@code modules-left-out.txt} in the data
 * directory, one symbolic name a line. No argument may be null; nothing returns null.
 */
@Export
@Version("1.0.0")
package org.fettlebench.modules;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
