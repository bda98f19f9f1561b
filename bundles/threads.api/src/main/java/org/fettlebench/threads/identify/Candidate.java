package org.fettlebench.threads.identify;

import java.util.Optional;
import org.fettlebench.measure.Length;
import org.fettlebench.threads.ScrewThread;

/**
 * A thread that may have been measured.
 *
 * @param thread the candidate
 * @param share its likelihood over the sum of all threads', 0 to 1
 * @param diameterOff reading less the nearest diameter that is allowed; zero inside the limits
 * @param pitchOff reading less its pitch
 * @param hexagonOff reading less the nearest hexagon listed for it; empty if none is listed
 * @param agrees whether diameter and pitch lie within three uncertainties of what is allowed; a
 *     hexagon counts in the share alone, since heads and nuts of other sizes are made
 */
public record Candidate(
    ScrewThread thread,
    double share,
    Optional<Length> diameterOff,
    Optional<Length> pitchOff,
    Optional<Length> hexagonOff,
    boolean agrees) {}
