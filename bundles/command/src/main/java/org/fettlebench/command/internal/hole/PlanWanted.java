package org.fettlebench.command.internal.hole;

import java.util.Optional;
import org.fettlebench.tables.Source;

/**
 * The thread that is wanted in the hole.
 *
 * @param material tapped; empty when not said
 * @param percent of thread
 * @param source of the per cent; empty when the person said it
 */
record PlanWanted(String material, double percent, Optional<Source> source) {}
