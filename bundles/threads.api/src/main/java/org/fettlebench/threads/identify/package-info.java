/**
 * Which thread is this? And which threads could be taken for one another?
 *
 * <p>Readings come with a standard uncertainty: about two readings in three lie within it. A
 * diameter is taken to lie anywhere between the limits of the usual class, or less by the wear that
 * is allowed for (more in a nut), and to be read with a normal error; a pitch is read with a normal
 * error; a hexagon lies up to 3 per cent below the listed across flats (common practice, no
 * source), and a thread for which none is listed is judged by the rest. Every thread of every
 * series is taken to be as likely beforehand. A candidate's share is its likelihood over the sum of
 * all.
 *
 * <p>Pairs are threads that a person could cross: the rule is laid down at {@code CrossingRule}.
 *
 * <p>The suite offers {@code ThreadIdentifier}. Lists are in rank order and never change.
 */
@Export
@Version("1.0.0")
package org.fettlebench.threads.identify;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
