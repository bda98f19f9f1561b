package org.fettlebench.desktop.threads.internal.folds;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.threads.internal.sheet.FigureTable;
import org.fettlebench.desktop.threads.internal.sheet.Fold;
import org.fettlebench.desktop.threads.internal.sheet.TableCanvas;
import org.fettlebench.desktop.widgets.Figures;
import org.fettlebench.tables.Source;
import org.fettlebench.tooling.ListedDrill;

/** The tapping drills that published lists name, and which lists. */
public final class ListsFold {
  private final Desk desk;
  private final Fold fold;
  private final TableCanvas table;
  private final Label sources;

  /** Makes the fold. */
  public ListsFold(Composite parent, Desk desk, String pageId) {
    this.desk = desk;
    fold = new Fold(parent, desk, pageId, "lists", "What lists name", false);
    table = new TableCanvas(fold.body(), desk);
    sources = fold.remarks();
  }

  /** Shows the drills of a thread. */
  public void show(List<ListedDrill> listed) {
    fold.summary(
        listed.isEmpty()
            ? "no list has this thread"
            : listed.stream().map(one -> one.drill().name()).collect(Collectors.joining(", ")));
    List<Source> named = listed.stream().flatMap(one -> one.sources().stream()).distinct().toList();
    table.show(made(listed, named));
    List<String> lines = new ArrayList<>();
    for (Source source : named) {
      lines.add((named.indexOf(source) + 1) + "  " + SourceWords.of(source));
    }
    Fold.tell(sources, lines.toArray(String[]::new));
  }

  private FigureTable made(List<ListedDrill> listed, List<Source> named) {
    FigureTable.Maker maker = FigureTable.of(desk.unit().symbol(), "thread", "list");
    for (ListedDrill one : listed) {
      maker.row(
          one.drill().name(),
          FigureTable.fine(one.drill().diameter(), desk.unit()),
          Figures.show(one.percentOfThread(), 0) + " %",
          one.sources().stream()
              .map(source -> String.valueOf(named.indexOf(source) + 1))
              .distinct()
              .collect(Collectors.joining(", ")));
    }
    return maker.made();
  }

  /** Returns the drills as rows. */
  public FigureTable table() {
    return table.table();
  }
}
