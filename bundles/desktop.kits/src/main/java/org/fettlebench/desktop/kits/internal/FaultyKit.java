package org.fettlebench.desktop.kits.internal;

import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.widgets.Layouts;
import org.fettlebench.kits.FaultyFileException.Fault;

/** Stands in place of the joints when a kit on the shelf cannot be read any more. */
final class FaultyKit extends Composite {
  private final FaultsList list;

  FaultyKit(Composite parent, Desk desk) {
    super(parent, SWT.NONE);
    setBackground(parent.getBackground());
    setLayout(Layouts.grid(1, 0));
    Layouts.text(
        this,
        desk.look(),
        "It could be read when it was put on the shelf. A module that knew one of its threads or"
            + " heads may have been taken out: bring it back, and the kit is checked again; or put"
            + " the file right and open it again.");
    list = Layouts.fill(new FaultsList(this, desk));
  }

  void show(List<Fault> faults) {
    list.show(faults);
  }
}
