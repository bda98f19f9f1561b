package org.fettlebench.product;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;

class PartsCheckTest {
  private static final Part MEASURE = ours("core", "measure");
  private static final Part SCR =
      new Part("framework", "org.apache.felix", "scr", "2", OptionalInt.of(2));

  private static Part ours(String feature, String folder) {
    return new Part(
        feature, "org.fettlebench", "org.fettlebench." + folder, "1", OptionalInt.of(4));
  }

  private static PartsCheck check(List<Part> parts, Set<String> reactor, String... jars) {
    return new PartsCheck(parts, reactor, Set.of(jars));
  }

  private static void refused(PartsCheck check, String... words) {
    String said = assertThrows(AssemblyException.class, check::check).getMessage();
    for (String word : words) {
      assertTrue(said.contains(word), word + " is not in " + said);
    }
  }

  @Test
  void whatFitsPasses() {
    assertDoesNotThrow(
        check(
                List.of(MEASURE, SCR),
                Set.of("measure", "sample.club", "testkit", "suite.itest"),
                "org.fettlebench.measure-1.jar",
                "scr-2.jar")
            ::check);
  }

  @Test
  void aBundleThatIsNotThereIsNamed() {
    refused(
        check(List.of(MEASURE, SCR), Set.of("measure"), "scr-2.jar"),
        "core names org.fettlebench.measure-1.jar",
        "product/pom.xml");
  }

  @Test
  void oneNamedTwiceIsRefused() {
    refused(
        check(
            List.of(MEASURE, ours("desktop", "measure")),
            Set.of("measure"),
            "org.fettlebench.measure-1.jar"),
        "named by core and by desktop");
  }

  @Test
  void aBundleOfTheReactorMustBeInAFeature() {
    refused(
        check(List.of(MEASURE), Set.of("measure", "fits"), "org.fettlebench.measure-1.jar"),
        "bundles/fits is in no feature");
  }

  @Test
  void aJarThatNoFeatureNamesIsRefused() {
    refused(
        check(List.of(SCR), Set.of(), "scr-2.jar", "stray-1.jar"), "stray-1.jar is a part of the");
  }

  @Test
  void samplesAndTestsAreNeverShipped() {
    for (String folder : List.of("sample.club", "testkit", "suite.itest")) {
      refused(
          check(
              List.of(ours("core", folder)),
              Set.of(folder),
              "org.fettlebench." + folder + "-1.jar"),
          "never shipped");
    }
  }

  @Test
  void allFaultsAreToldAtOnce() {
    refused(
        check(List.of(MEASURE), Set.of("fits"), "stray-1.jar"),
        "measure-1.jar",
        "stray-1.jar",
        "bundles/fits");
  }
}
