package org.fettlebench.desktop.stock.internal;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.fettlebench.desktop.Look;

/** The places as a tree; choosing one narrows the list to what lies there. */
final class PlaceTree {
  private static final String INSIDE = "inside";

  private final Tree tree;
  private final Look look;
  private Places shown = new Places("", "", -1, List.of());

  PlaceTree(Composite parent, Look look, Consumer<String> chosen) {
    this.look = look;
    tree = new Tree(parent, SWT.SINGLE | SWT.BORDER | SWT.FULL_SELECTION);
    dress();
    tree.addListener(SWT.Expand, event -> fill((TreeItem) event.item, Set.of()));
    tree.addListener(SWT.Selection, event -> chosen.accept(chosenPath()));
  }

  Control control() {
    return tree;
  }

  void dress() {
    tree.setFont(look.text());
    tree.setBackground(look.sheet());
    tree.setForeground(look.ink());
  }

  private String chosenPath() {
    TreeItem[] chosen = tree.getSelection();
    return chosen.length == 0 ? "" : (String) chosen[0].getData();
  }

  /** Shows the places, keeping what is open and chosen. */
  void show(Places places) {
    if (places.equals(shown)) {
      return;
    }
    String chosen = chosenPath();
    Set<String> open = new HashSet<>();
    for (TreeItem item : tree.getItems()) {
      gatherOpen(item, open);
    }
    shown = places;
    tree.setRedraw(false);
    tree.removeAll();
    TreeItem all = new TreeItem(tree, SWT.NONE);
    all.setText("All places (" + places.lines() + ")");
    all.setData("");
    for (Places place : places.listed()) {
      add(new TreeItem(tree, SWT.NONE), place, open);
    }
    choose(chosen);
    tree.setRedraw(true);
  }

  private static void gatherOpen(TreeItem item, Set<String> open) {
    if (item.getExpanded()) {
      open.add((String) item.getData());
      for (TreeItem inside : item.getItems()) {
        gatherOpen(inside, open);
      }
    }
  }

  /** What is inside is added when it is first opened: a store may have thousands of boxes. */
  private static void add(TreeItem item, Places place, Set<String> open) {
    item.setText(place.name() + " (" + place.lines() + ")");
    item.setData(place.path());
    if (!place.inside().isEmpty()) {
      item.setData(INSIDE, place);
      new TreeItem(item, SWT.NONE).setData("");
    }
    if (open.contains(place.path())) {
      fill(item, open);
      item.setExpanded(true);
    }
  }

  private static void fill(TreeItem item, Set<String> open) {
    if (item.getData(INSIDE) instanceof Places place) {
      item.setData(INSIDE, null);
      item.removeAll();
      place.listed().forEach(inside -> add(new TreeItem(item, SWT.NONE), inside, open));
    }
  }

  /** Chooses a place by its path; all places when it is not there. */
  void choose(String path) {
    TreeItem found = find(tree.getItems(), path);
    if (found == null && tree.getItemCount() > 0) {
      found = tree.getItem(0);
    }
    if (found != null) {
      tree.setSelection(found);
    }
  }

  private static TreeItem find(TreeItem[] items, String path) {
    for (TreeItem item : items) {
      if (path.equals(item.getData())) {
        return item;
      }
      TreeItem inside = find(item.getItems(), path);
      if (inside != null) {
        return inside;
      }
    }
    return null;
  }
}
