package org.fettlebench.desktop.stock.internal;

import java.util.List;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.fettlebench.club.ClubException;
import org.fettlebench.desktop.Look;
import org.fettlebench.desktop.stock.internal.Outcome.Field;
import org.fettlebench.desktop.widgets.Layouts;
import org.fettlebench.kits.StockFiles;

/**
 * Takes in what came: one line as a person says it, how many, where to. Stays open for the next
 * thing, the place kept.
 */
final class ReceiveForm {
  private static final String HOW =
      "As you would say it: 2 BA hexagon x 1/2 in steel; drill 5/32; tap 2 BA taper.";

  private final Look look;
  private final StockFiles files;
  private final Consumer<Arrival> arrived;
  private Text what;
  private Button sundry;
  private Label understood;
  private Text quantity;
  private Combo place;
  private Text lowMark;
  private Button worn;
  private Label wrong;

  /**
   * Makes the form.
   *
   * @param arrived takes what was typed
   */
  ReceiveForm(
      Composite parent,
      Look look,
      StockFiles files,
      Consumer<Arrival> arrived,
      Runnable cancelled) {
    this.look = look;
    this.files = files;
    this.arrived = arrived;
    first(parent, cancelled);
    understood = Layouts.remark(parent, look, HOW);
    second(parent, cancelled);
    wrong = Layouts.text(parent, look, " ");
    wrong.setForeground(look.bad());
  }

  private void first(Composite parent, Runnable cancelled) {
    Composite line = Layouts.flow(parent);
    Fields fields = new Fields(line, look, this::arrive, cancelled);
    what = fields.text("What", 30, "2 BA hexagon x 1/2 in steel");
    what.addListener(SWT.Modify, event -> understand());
    sundry = fields.check("sundry");
    sundry.setToolTipText("Take the words as they are, as the name of a thing of any kind");
    sundry.addListener(SWT.Selection, event -> understand());
  }

  private void second(Composite parent, Runnable cancelled) {
    Composite line = Layouts.flow(parent);
    Fields fields = new Fields(line, look, this::arrive, cancelled);
    quantity = fields.text("How many", 6, "");
    place = fields.combo("into", 24);
    lowMark = fields.text("low mark", 5, "");
    lowMark.setToolTipText("How many should always be there; may be left empty");
    worn = fields.check("worn");
    fields.button("Receive", this::arrive);
    fields.button("Close", cancelled);
  }

  /** Offers the places used so far. */
  ReceiveForm places(List<String> places) {
    place.setItems(places.toArray(String[]::new));
    Completion.on(place, () -> places);
    return this;
  }

  /** Says while one types what would be received. */
  private void understand() {
    tell(what.getText().isBlank() ? HOW : words());
  }

  private String words() {
    try {
      return "Understood: " + arrival().goods(files).name() + ".";
    } catch (IllegalArgumentException | ClubException notYet) {
      return "Not yet understood: " + notYet.getMessage() + ".";
    }
  }

  private void tell(String sentence) {
    understood.setText(Layouts.escaped(sentence));
    understood.requestLayout();
  }

  private Arrival arrival() {
    return new Arrival(
        what.getText(),
        sundry.getSelection(),
        quantity.getText(),
        place.getText(),
        worn.getSelection(),
        lowMark.getText());
  }

  private void arrive() {
    arrived.accept(arrival());
  }

  /** Says what is wrong, and goes to the field to mend. */
  void refuse(Outcome.Refused refused) {
    wrong.setText(Layouts.escaped(refused.why()));
    wrong.getParent().layout(true, true);
    field(refused.field()).setFocus();
  }

  private Control field(Field field) {
    return switch (field) {
      case QUANTITY -> quantity;
      case PLACE -> place;
      case LOW_MARK -> lowMark;
      default -> what;
    };
  }

  /** Makes room for the next thing. */
  void next() {
    wrong.setText(" ");
    what.setText("");
    quantity.setText("");
    lowMark.setText("");
    focus();
  }

  void focus() {
    what.setFocus();
  }
}
