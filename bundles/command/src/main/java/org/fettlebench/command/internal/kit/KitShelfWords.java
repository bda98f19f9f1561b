package org.fettlebench.command.internal.kit;

import java.util.stream.Collectors;
import org.fettlebench.club.KitShelf;

/** Wording about the kits that the club keeps. */
final class KitShelfWords {
  static final String EMPTY =
      "no kit is on the club's shelf; \"kit check FILE --keep\" puts one there";

  private KitShelfWords() {}

  static String none(KitShelf shelf, String name) {
    String names =
        shelf.kits().stream().map(KitShelf.KeptKit::name).collect(Collectors.joining(", "));
    return names.isEmpty()
        ? EMPTY
        : "no kit \"" + name + "\" is on the club's shelf; there are " + names;
  }
}
