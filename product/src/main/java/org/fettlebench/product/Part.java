package org.fettlebench.product;

import java.util.OptionalInt;

/**
 * A jar of the suite as a feature names it.
 *
 * @param feature name of the feature
 * @param group Maven group
 * @param artifact Maven artifact
 * @param version Maven version
 * @param startLevel when the bundle starts; empty for a jar of the launcher's class path
 */
record Part(String feature, String group, String artifact, String version, OptionalInt startLevel) {
  String file() {
    return artifact + "-" + version + ".jar";
  }

  boolean ours() {
    return group.equals("org.fettlebench");
  }
}
