package org.fettlebench.kits;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fettlebench.holes.patterns.HolePattern;
import org.fettlebench.holes.patterns.MeasuredPattern;
import org.fettlebench.holes.patterns.MeasuredPattern.MeasuredPart;
import org.fettlebench.holes.patterns.PatternPart;
import org.fettlebench.holes.patterns.PatternQuestion;
import org.fettlebench.holes.patterns.PlacingLaw;
import org.fettlebench.measure.Length;

/**
 * What a pattern file says: the same holes in two parts, as wanted, as they will be placed, and as
 * measured, as far as it says so.
 *
 * @param name of the joint
 * @param fastener its thread, or the words "as measured"
 * @param fastenerDiameter as large as it may be
 * @param wanted where the holes should be, if the file says so
 * @param upper the first part of the file, the one on top
 * @param lower the second part
 */
public record PatternFile(
    String name,
    String fastener,
    Length fastenerDiameter,
    Optional<HolePattern> wanted,
    Part upper,
    Part lower) {
  /**
   * Checks the figures.
   *
   * @throws IllegalArgumentException if the name is blank or the diameter not above 0
   */
  public PatternFile {
    Require.name("name of a pattern", name);
    Require.positive("diameter of the fastener", fastenerDiameter);
  }

  /**
   * One of the two parts.
   *
   * @param name for people
   * @param tapped whether its holes are tapped
   * @param hole diameter of its plain holes, if the file says so; empty when tapped
   * @param placing how its holes will be placed, if the file says so
   * @param leaning how far fasteners in its tapped holes stand over, if the file says so
   * @param measured its holes as seen from above, if they were measured
   */
  public record Part(
      String name,
      boolean tapped,
      Optional<Length> hole,
      Optional<PlacingLaw> placing,
      Optional<PlacingLaw> leaning,
      List<MeasuredPattern.Hole> measured) {
    /** Copies what could change. */
    public Part {
      measured = List.copyOf(measured);
    }

    private PatternPart planned(Optional<Length> holeInPlace) {
      OptionalDouble diameter =
          tapped
              ? OptionalDouble.empty()
              : OptionalDouble.of(
                  hole.or(() -> holeInPlace)
                      .orElseThrow(() -> missing("hole", "such as hole = \"No 26\""))
                      .millimetres());
      return new PatternPart(
          name,
          diameter,
          placing.orElseThrow(() -> missing("method", "such as method = \"jig\"")),
          leaning.orElseGet(PlacingLaw::exact));
    }

    private IllegalArgumentException missing(String key, String example) {
      return new IllegalArgumentException(
          "part \"" + name + "\" of the pattern file has no " + key + "; write one, " + example);
    }
  }

  /**
   * Returns the question of chance.
   *
   * @param trials how many pairs of parts to simulate
   * @param seed of the simulation
   * @throws IllegalArgumentException if the file does not say where the holes should be, how they
   *     are placed or how large they are
   */
  public PatternQuestion question(int trials, long seed) {
    return question(trials, seed, Optional.empty());
  }

  /**
   * Returns the question of the hole that is needed: sizes that the file does not give do not
   * count.
   */
  public PatternQuestion holeQuestion(int trials, long seed) {
    return question(trials, seed, Optional.of(fastenerDiameter));
  }

  private PatternQuestion question(int trials, long seed, Optional<Length> holeInPlace) {
    HolePattern pattern =
        wanted.orElseThrow(
            () ->
                new IllegalArgumentException(
                    "the pattern file does not say where the holes should be; write circle and"
                        + " holes, or centres, under [pattern]"));
    for (Part part : List.of(upper, lower)) {
      if (part.hole().filter(hole -> hole.compareTo(fastenerDiameter) < 0).isPresent()) {
        throw new IllegalArgumentException(
            "the hole of part \""
                + part.name()
                + "\", "
                + part.hole().get()
                + ", is smaller than the fastener, "
                + fastenerDiameter
                + ", which enters nowhere; check both sizes");
      }
    }
    return new PatternQuestion(
        pattern,
        fastenerDiameter.millimetres(),
        upper.planned(holeInPlace),
        lower.planned(holeInPlace),
        trials,
        seed);
  }

  /**
   * Returns the parts as measured.
   *
   * @throws IllegalArgumentException if one was not, or not as many holes
   */
  public MeasuredPattern measured() {
    for (Part part : List.of(upper, lower)) {
      if (part.measured().isEmpty()) {
        throw part.missing("measured holes", "measured = [[\"0 mm\", \"0 mm\"], ...]");
      }
    }
    return new MeasuredPattern(
        name,
        fastenerDiameter.millimetres(),
        new MeasuredPart(upper.name(), upper.measured()),
        new MeasuredPart(lower.name(), lower.measured()),
        wanted.map(HolePattern::circleHoles).orElse(false));
  }
}
