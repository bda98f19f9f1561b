package org.fettlebench.tooling.speed;

import java.util.List;

/**
 * The speed for a cut.
 *
 * @param job what was asked
 * @param leastRpm by the most careful of the sources: where to begin
 * @param mostRpm by the boldest
 * @param setRpm what to set: on a machine the speed it has for it, else {@code leastRpm}
 * @param fit how {@code setRpm} meets the range
 * @param surfaceSpeeds what each source says, as counted with
 * @param notes assumptions, and what to do where the machine cannot; in words
 */
public record SpindleSpeed(
    SpeedJob job,
    double leastRpm,
    double mostRpm,
    double setRpm,
    SpindleFit fit,
    List<SurfaceSpeed> surfaceSpeeds,
    List<String> notes) {
  /** Copies what could change. */
  public SpindleSpeed {
    surfaceSpeeds = List.copyOf(surfaceSpeeds);
    notes = List.copyOf(notes);
  }
}
