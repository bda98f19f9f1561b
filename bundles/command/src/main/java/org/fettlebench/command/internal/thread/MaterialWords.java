package org.fettlebench.command.internal.thread;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.fettlebench.command.CommandException;
import org.fettlebench.tables.Source;
import org.fettlebench.tables.Standing;
import org.fettlebench.threads.strength.Material;
import org.fettlebench.threads.strength.Materials;

/** Reads a material out of what was typed: a name, or a strength. */
final class MaterialWords {
  private static final int MOST_NEAR = 6;

  private MaterialWords() {}

  /** Reads an id, a name or a tensile strength such as {@code 800} or {@code 800 MPa}. */
  static Material one(Materials materials, String option, String typed) {
    String number = typed.strip().replaceFirst("(?i)\\s*MPa$", "");
    return materials
        .find(typed)
        .or(() -> strength(number))
        .orElseThrow(() -> unknown(materials, option, typed));
  }

  /** Reads the nut's material; a shear strength said apart stands over the material's own. */
  static Material nut(Materials materials, Optional<String> typed, Optional<Double> shearMpa) {
    if (typed.isEmpty()) {
      double shear = shearMpa.orElseThrow();
      return given(shear / Material.SHEAR_PER_TENSILE, Optional.of(shear));
    }
    Material material = one(materials, "--nut", typed.get());
    return shearMpa
        .map(
            shear ->
                new Material(
                    material.id(),
                    material.name(),
                    material.tensileMpa(),
                    material.yieldMpa(),
                    material.proofMpa(),
                    Optional.of(shear),
                    material.source()))
        .orElse(material);
  }

  private static Optional<Material> strength(String number) {
    return number.matches("\\d{1,5}(?:\\.\\d{1,3})?") && Double.parseDouble(number) > 0
        ? Optional.of(given(Double.parseDouble(number), Optional.empty()))
        : Optional.empty();
  }

  private static Material given(double tensileMpa, Optional<Double> shearMpa) {
    String name =
        shearMpa
            .map(shear -> String.format(Locale.ROOT, "of shear strength %.0f MPa, as said", shear))
            .orElse(
                String.format(Locale.ROOT, "of tensile strength %.0f MPa, as said", tensileMpa));
    return new Material(
        "as-said",
        name,
        tensileMpa,
        Optional.empty(),
        Optional.empty(),
        shearMpa,
        new Source("as said with the command", Standing.MEASURED));
  }

  private static CommandException unknown(Materials materials, String option, String typed) {
    String near =
        materials.near(typed).stream()
            .limit(MOST_NEAR)
            .map(Material::id)
            .collect(Collectors.joining(", "));
    return new CommandException(
        option
            + ": there is no material \""
            + typed
            + "\"; "
            + (near.isEmpty() ? "\"material list\" shows them" : "there are " + near));
  }
}
