package org.fettlebench.castings;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * A rough casting as measured, with what is to be finished out of it.
 *
 * @param name for people
 * @param features faces, bores and bosses; each name once
 * @param freedom how the finished part may be moved inside it
 */
public record Casting(String name, List<Feature> features, Freedom freedom) {
  /**
   * Checks that each name is there once.
   *
   * @throws CastingException if there is no feature, too many, or a name is there twice
   */
  public Casting {
    name = Require.name("the casting", name);
    features = List.copyOf(features);
    if (!(!features.isEmpty() && features.size() <= 100)) {
      throw new CastingException(
          features.size() + " faces are given; 1 to 100 can be placed together");
    }
    Set<String> names = new HashSet<>();
    for (Feature feature : features) {
      if (!names.add(feature.name())) {
        throw new CastingException(
            "the name \"" + feature.name() + "\" is there twice; give each face its own");
      }
    }
  }

  /** Returns the same casting with one feature replaced by another of its name. */
  public Casting with(Feature changed) {
    return new Casting(
        name,
        features.stream().map(one -> one.name().equals(changed.name()) ? changed : one).toList(),
        freedom);
  }
}
