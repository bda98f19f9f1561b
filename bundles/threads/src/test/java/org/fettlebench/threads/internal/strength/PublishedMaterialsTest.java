package org.fettlebench.threads.internal.strength;

import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.fettlebench.testkit.published.PublishedRow;
import org.fettlebench.testkit.published.PublishedTable;
import org.fettlebench.threads.internal.OurThreads;
import org.fettlebench.threads.strength.Material;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;

/** Every printed material and grade is among ours with just those strengths, or is refused. */
@TestInstance(Lifecycle.PER_CLASS)
class PublishedMaterialsTest {
  private static final double MPA_PER_KSI = 4448.2216152605 / 645.16;

  /** What is not followed, by source and what it calls the material. */
  private static final Map<String, String> REFUSED =
      Map.of(
          "round-steel.com EN8 080M40",
          "BS 970:1991 has 550",
          "Aalco data sheet 6082 (scribd 88698498) 6082 T6",
          "of four prints the least by thickness is taken",
          "aerospace-aluminum page on 6082-T6 6082 T6",
          "of four prints the least by thickness is taken",
          "nutbolt.org (Westfield) strength page 8.8",
          "proof stresses of the two sizes exchanged",
          "ficientdesign.com bolt strength chart 8.8",
          "mixes the sizes above and below M16",
          "roymech.co.uk Screws Strength (BS 3692; ISO 898-1:1999) 5.8",
          "two yields printed; 420 is elsewhere",
          "roymech.co.uk Screws Strength (BS 3692; ISO 898-1:1999) 4.8",
          "two yields printed; 340 is elsewhere",
          "roymech.co.uk Screws Strength (BS 3692; ISO 898-1:1999) 10.9",
          "nominal strength, not the least",
          "roymech.co.uk Screws Strength (BS 3692; ISO 898-1:1999) 12.9",
          "nominal strength, not the least",
          "scribd 751436132 (ASTM A574) alloy socket cap",
          "its yield is not borne out: 153 is printed elsewhere");

  private final MaterialRegistry materials =
      new MaterialRegistry(
          OurThreads.TABLES,
          (table, fault) -> {
            throw new AssertionError(table.id(), fault);
          });

  private static PublishedTable table(String file) {
    return PublishedTable.read(PublishedMaterialsTest.class, file);
  }

  /** Columns of tensile, yield and proof strength and their unit. */
  private record Columns(String tensile, String yield, Optional<String> proof, double mpa) {}

  @Test
  void materials() {
    Columns columns = new Columns("uts_min_mpa", "yield_or_proof_min_mpa", Optional.empty(), 1);
    table("material-strengths.csv")
        .apart("words", "confidence", "material", "condition", "note")
        .apart("the least strength alone is kept", "uts_max_mpa", "yield_or_proof_max_mpa")
        .apart("elongation is not kept", "elongation_min_pct")
        .apart("thickness is in the name", "section_from_mm", "section_to_mm")
        .holdEach(
            row -> {
              String name = row.cell("designation");
              String said = name + (name.equals("6082") ? " " + row.cell("condition") : "");
              if (!row.has("uts_min_mpa")) {
                // CW721R by durbinmetals: the proof stress alone, and another one.
                row.refuse("yield_or_proof_min_mpa", 230, "CDA Publication 120 is followed");
                row.passOver("source_id", "see the proof stress");
              } else {
                strengths(row, columns, said, one -> shears(row, one));
              }
            });
  }

  private static boolean shears(PublishedRow row, Material material) {
    if (!row.has("shear_mpa")) {
      return true;
    }
    // Of a range, such as 210-310, the least.
    double printed = Double.parseDouble(row.cell("shear_mpa").split("-")[0]);
    return material.shearMpa().filter(ours -> ours == printed).isPresent();
  }

  @Test
  void materialsInInches() {
    Columns columns = new Columns("uts_min_ksi", "yield_min_ksi", Optional.empty(), MPA_PER_KSI);
    table("material-strengths-inch.csv")
        .apart("words", "confidence", "material", "condition", "note")
        .apart("elongation is not kept", "elongation_min_pct")
        .holdEach(row -> strengths(row, columns, row.cell("designation"), one -> true));
  }

  @Test
  void metricGrades() {
    Columns columns = new Columns("tensile_min_mpa", "yield_min_mpa", Optional.of("proof_mpa"), 1);
    table("grades-iso898-1.csv")
        .apart("words", "confidence", "note")
        .apart("sizes are in the name", "size_from", "size_to")
        .holdEach(
            row -> {
              String name = row.cell("property_class");
              String ours = name.startsWith("A2") ? "class-a2" : "class-" + name;
              strengths(row, columns, name, one -> one.id().startsWith(ours));
            });
  }

  @Test
  void inchGrades() {
    Columns columns =
        new Columns("tensile_kpsi", "yield_kpsi", Optional.of("proof_kpsi"), MPA_PER_KSI);
    table("grades-sae-j429.csv")
        .apart("words", "confidence", "standard", "note")
        .apart("sizes are in the name", "size_from_in", "size_to_in")
        .holdEach(
            row -> {
              String name = row.cell("grade").replace("alloy socket cap", "socket-cap");
              String ours = name.replace(' ', '-');
              strengths(
                  row,
                  columns,
                  row.cell("grade"),
                  one -> one.id().matches("(grade-)?" + ours + "(-over-.*)?"));
            });
  }

  /** The strength of a nut class is the stress on a test mandrel and no material's strength. */
  @Test
  void nutClasses() {
    table("grades-nut-classes.csv")
        .apart("words", "source_id", "confidence", "note")
        .holdEach(
            row -> {
              String name = row.cell("nut_class");
              row.that(
                  "tensile_mpa",
                  () ->
                      materials.find("nut-" + name).isEmpty()
                          && 100 * row.number("nut_class") == row.number("tensile_mpa"),
                  "is taken after all");
            });
  }

  private void strengths(
      PublishedRow row, Columns columns, String said, Predicate<Material> called) {
    String name = row.cell("source_id") + " " + said;
    String refusal = REFUSED.getOrDefault(name, "");
    String says =
        refusal.isEmpty()
            ? "no material of ours has these strengths"
            : "agrees and need not be refused: " + refusal;
    boolean asExpected = agreeing(row, columns, called) == refusal.isEmpty();
    row.that(columns.tensile(), () -> asExpected, says);
    row.that(columns.yield(), () -> asExpected, says);
    columns.proof().ifPresent(proof -> row.that(proof, () -> asExpected, says));
  }

  private boolean agreeing(PublishedRow row, Columns columns, Predicate<Material> called) {
    return materials.all().stream()
        .filter(called)
        .anyMatch(
            one ->
                same(row, columns.tensile(), Optional.of(one.tensileMpa()), columns.mpa())
                    && same(row, columns.yield(), one.yieldMpa(), columns.mpa())
                    && columns
                        .proof()
                        .map(proof -> same(row, proof, one.proofMpa(), columns.mpa()))
                        .orElse(true));
  }

  private static boolean same(
      PublishedRow row, String column, Optional<Double> ours, double mpaPerUnit) {
    return !row.has(column)
        || ours.filter(mpa -> Math.abs(mpa / mpaPerUnit - row.number(column)) < 1e-6).isPresent();
  }
}
