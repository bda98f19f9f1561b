package org.fettlebench.desktop.stock.internal;

import java.util.List;
import java.util.function.Consumer;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.fettlebench.club.Loan;
import org.fettlebench.desktop.Look;
import org.fettlebench.desktop.stock.internal.Outcome.Field;
import org.fettlebench.desktop.widgets.Layouts;

/** Asks how many, and what else a deed needs; what is wrong stands under the fields. */
final class MoveForm {
  private final Deed deed;
  private final StockRow row;
  private final Look look;
  private final Consumer<Order> ordered;
  private final Label wrong;
  private final Text quantity;
  private Combo borrower;
  private Text due;
  private Text note;
  private String member = "";

  MoveForm(Composite parent, Look look, Deed deed, StockRow row, Hands hands) {
    this.deed = deed;
    this.row = row;
    this.look = look;
    this.ordered = hands.ordered();
    Composite line = Layouts.flow(parent);
    Fields fields = new Fields(line, look, this::order, hands.cancelled());
    quantity = fields.text(deed.question(), 7, "");
    if (deed.concernsBorrower()) {
      borrower(fields, hands.members());
    }
    if (deed == Deed.LEND) {
      due = fields.text("until", 14, "2 weeks, 24 Dec");
    } else if (deed != Deed.GIVE_BACK) {
      note = fields.text("for, or why", 24, "may be left empty");
    }
    fields.button(deed.doing(), this::order);
    fields.button("Cancel", hands.cancelled());
    wrong = Layouts.text(parent, look, " ");
    wrong.setForeground(look.bad());
  }

  /**
   * What a form is given to work with.
   *
   * @param members known, for completion
   * @param ordered takes what is asked
   * @param cancelled closes the form
   */
  record Hands(List<String> members, Consumer<Order> ordered, Runnable cancelled) {}

  private void borrower(Fields fields, List<String> members) {
    borrower = fields.combo(deed == Deed.LEND ? "to" : "from", 16);
    List<Loan> loans = row.line().loans();
    List<String> known =
        deed == Deed.LEND ? members : loans.stream().map(Loan::member).distinct().toList();
    borrower.setItems(known.toArray(String[]::new));
    if (deed == Deed.GIVE_BACK && !loans.isEmpty()) {
      borrower.setText(loans.get(0).member());
      quantity.setText(String.valueOf(loans.get(0).quantity()));
    }
    Completion.on(borrower, () -> known);
  }

  /** Says who is at the keyboard. */
  MoveForm by(String name) {
    member = name;
    return this;
  }

  private void order() {
    String who = borrower == null ? member : borrower.getText();
    String until = due == null ? "" : due.getText();
    String why = note == null ? "" : note.getText();
    ordered.accept(new Order(deed, row.line(), quantity.getText(), who, until, why));
  }

  /** Says what is wrong, and goes to the field to mend. */
  void refuse(Outcome.Refused refused) {
    wrong.setText(Layouts.escaped(refused.why()));
    wrong.setForeground(look.bad());
    wrong.getParent().layout(true, true);
    field(refused.field()).setFocus();
    quantity.selectAll();
  }

  private Control field(Field field) {
    if (field == Field.MEMBER && borrower != null) {
      return borrower;
    }
    return field == Field.DUE && due != null ? due : quantity;
  }

  void focus() {
    quantity.setFocus();
    quantity.selectAll();
  }
}
