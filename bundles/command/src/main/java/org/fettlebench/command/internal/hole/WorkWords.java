package org.fettlebench.command.internal.hole;

import java.util.stream.Collectors;
import org.fettlebench.command.Call;
import org.fettlebench.command.CommandException;
import org.fettlebench.command.internal.Data;
import org.fettlebench.command.internal.Figures;
import org.fettlebench.tooling.work.WorkMaterial;
import org.fettlebench.tooling.work.WorkMaterials;

/** Reads the material that is worked out of typed words, and tells it as data. */
public final class WorkWords {
  /** The option that names it. */
  public static final String OPTION = "--material";

  private WorkWords() {}

  /**
   * Reads the material that must be said.
   *
   * @throws CommandException naming those that are known when there is no such material
   */
  public static WorkMaterial needed(WorkMaterials materials, Call call) {
    String typed =
        call.option(OPTION)
            .orElseThrow(
                () ->
                    new CommandException(
                        "say what is worked: --material NAME, such as " + ids(materials, "")));
    return materials
        .find(typed)
        .orElseThrow(
            () ->
                new CommandException(
                    OPTION
                        + ": there are no figures for \""
                        + typed
                        + "\"; there are some for "
                        + ids(materials, typed)));
  }

  private static String ids(WorkMaterials materials, String typed) {
    return materials.near(typed).stream().map(WorkMaterial::id).collect(Collectors.joining(", "));
  }

  /** Returns a material as data. */
  public static Object data(WorkMaterial material) {
    return Data.of(
        "id",
        material.id(),
        "name",
        material.name(),
        "source",
        Figures.sourceData(material.source()));
  }
}
