package org.fettlebench.desktop.stock.internal;

import java.util.stream.Collectors;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.widgets.Copying;
import org.fettlebench.desktop.widgets.Figures;
import org.fettlebench.desktop.widgets.Layouts;
import org.fettlebench.kits.FaultyFileException;

/** Everything that is wrong with a list, and that nothing of it was received. */
final class FaultList {
  private FaultList() {}

  static void show(Composite body, Desk desk, StockLists.Taken taken, Runnable close) {
    String count = Figures.count(taken.faults().size(), "fault", "faults");
    Label heading =
        Layouts.label(
            body,
            desk.look().strong(),
            taken.file() + " has " + count + ". Nothing of it was received.");
    heading.setForeground(desk.look().bad());
    Composite line = Layouts.columns(body, 2);
    String all =
        taken.faults().stream()
            .map(FaultyFileException.Fault::toString)
            .collect(Collectors.joining("\n"));
    Layouts.button(
        line,
        desk.look(),
        "Copy them",
        () -> {
          Copying.text(body.getDisplay(), all);
          desk.say(count + " of " + taken.file() + " copied.");
        });
    Layouts.button(line, desk.look(), "Close", close);
    taken.faults().forEach(fault -> Layouts.text(body, desk.look(), sentence(fault)));
  }

  private static String sentence(FaultyFileException.Fault fault) {
    String value = fault.value().isEmpty() ? "" : "\u201c" + fault.value() + "\u201d ";
    return "Line "
        + fault.line()
        + ", column "
        + fault.column()
        + ": "
        + value
        + fault.wrong()
        + ". "
        + fault.remedy();
  }
}
