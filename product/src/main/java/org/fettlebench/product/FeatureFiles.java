package org.fettlebench.product;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.apache.felix.feature.impl.FeatureServiceImpl;
import org.osgi.service.feature.Feature;
import org.osgi.service.feature.FeatureBundle;
import org.osgi.service.feature.ID;

/** Reads the feature files. */
final class FeatureFiles {
  private static final int HIGHEST_LEVEL = 40;

  private FeatureFiles() {}

  /**
   * Reads all {@code *.json} of a directory in the order of their names.
   *
   * @throws AssemblyException when a bundle has neither or both of the two keys, or a start level
   *     outside 1 to 40
   */
  static List<Part> read(Path directory) throws IOException {
    List<Part> parts = new ArrayList<>();
    try (DirectoryStream<Path> found = Files.newDirectoryStream(directory, "*.json")) {
      List<Path> files = new ArrayList<>();
      found.forEach(files::add);
      files.sort(null);
      for (Path file : files) {
        parts.addAll(readFile(file));
      }
    }
    return parts;
  }

  private static List<Part> readFile(Path file) throws IOException {
    String name = file.getFileName().toString().replace(".json", "");
    try (Reader reader = Files.newBufferedReader(file)) {
      Feature feature = new FeatureServiceImpl().readFeature(reader);
      return feature.getBundles().stream().map(bundle -> part(name, bundle)).toList();
    }
  }

  private static Part part(String feature, FeatureBundle bundle) {
    ID id = bundle.getID();
    return new Part(
        feature,
        id.getGroupId(),
        id.getArtifactId(),
        id.getVersion(),
        startLevel(feature, id, bundle.getMetadata()));
  }

  private static OptionalInt startLevel(String feature, ID id, Map<String, Object> keys) {
    Object level = keys.get("startLevel");
    Object place = keys.get("place");
    if (level == null && "class-path".equals(place)) {
      return OptionalInt.empty();
    }
    if (place == null
        && level instanceof Number number
        && number.intValue() >= 1
        && number.intValue() <= HIGHEST_LEVEL) {
      return OptionalInt.of(number.intValue());
    }
    throw new AssemblyException(
        ("features/%s.json: %s wants either \"startLevel\": 1 to %d or \"place\": \"class-path\","
                + " but has startLevel %s and place %s")
            .formatted(feature, id, HIGHEST_LEVEL, level, place));
  }
}
