package org.fettlebench.desktop.threads.internal;

import java.util.Optional;
import java.util.function.Supplier;
import org.fettlebench.desktop.threads.internal.compare.CrossingBook;
import org.fettlebench.fasteners.HeadSinks;
import org.fettlebench.fasteners.Heads;
import org.fettlebench.paper.WallCharts;
import org.fettlebench.tooling.risk.TapRisks;
import org.fettlebench.tooling.speed.SpindleSpeeds;

/**
 * What the page asks.
 *
 * @param book of threads and their holes
 * @param crossings of threads in each other
 * @param books of what else is worked out of threads
 * @param risks of tapping, while something works them out
 * @param speeds of spindles, while something works them out
 * @param heads that are listed, while something lists them
 * @param sinks what is cut for a head, while something works it out
 * @param charts for the wall, while something draws them
 */
record Trade(
    ThreadsBook book,
    CrossingBook crossings,
    ThreadBooks books,
    Supplier<Optional<TapRisks>> risks,
    Supplier<Optional<SpindleSpeeds>> speeds,
    Supplier<Optional<Heads>> heads,
    Supplier<Optional<HeadSinks>> sinks,
    Supplier<Optional<WallCharts>> charts) {}
