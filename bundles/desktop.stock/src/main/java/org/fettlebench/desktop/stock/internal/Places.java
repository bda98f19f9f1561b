package org.fettlebench.desktop.stock.internal;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.fettlebench.desktop.widgets.Figures;

/**
 * A place and the places inside it.
 *
 * @param name the last part of the path
 * @param path the whole path
 * @param lines how many lines lie here and inside
 * @param inside the places inside it, in no order
 */
record Places(String name, String path, int lines, List<Places> inside) {
  /** What stands between the parts of a path. */
  static final String PART = " / ";

  private static final Comparator<Places> NATURALLY =
      Comparator.comparing(Places::name, Figures::compareNaturally);

  /** Returns the places inside it, as a person would list them. */
  List<Places> listed() {
    return inside.stream().sorted(NATURALLY).toList();
  }

  /** Returns the tree of all places of some lines, below a root without a name. */
  static Places of(List<StockRow> rows) {
    Node root = new Node("");
    for (StockRow row : rows) {
      Node at = root;
      at.lines++;
      for (String part : row.line().place().split(PART, -1)) {
        at = at.child(part);
        at.lines++;
      }
    }
    return root.done("");
  }

  /** A place while it is counted. */
  private static final class Node {
    private final String path;
    private final Map<String, Node> children = new LinkedHashMap<>();
    private int lines;

    Node(String path) {
      this.path = path;
    }

    Node child(String part) {
      return children.computeIfAbsent(
          part, name -> new Node(path.isEmpty() ? name : path + PART + name));
    }

    Places done(String name) {
      List<Places> inside =
          children.entrySet().stream().map(e -> e.getValue().done(e.getKey())).toList();
      return new Places(name, path, lines, inside);
    }
  }
}
