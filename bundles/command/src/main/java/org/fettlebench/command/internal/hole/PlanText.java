package org.fettlebench.command.internal.hole;

import java.util.Locale;
import java.util.stream.Collectors;
import org.fettlebench.command.internal.Cautions;
import org.fettlebench.command.internal.Columns;
import org.fettlebench.command.internal.Figures;
import org.fettlebench.command.internal.Footnotes;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.tooling.BlindHole;
import org.fettlebench.tooling.ClearanceChoice;
import org.fettlebench.tooling.DrillSize;
import org.fettlebench.tooling.ListedDrill;
import org.fettlebench.tooling.TapLead;
import org.fettlebench.tooling.TappingChoice;

/** A hole plan in words. */
final class PlanText {
  private final Plan plan;
  private final HeldDrills held;
  private final LengthUnit unit;
  private final StringBuilder text = new StringBuilder();

  private PlanText(Plan plan, HeldDrills held, LengthUnit unit) {
    this.plan = plan;
    this.held = held;
    this.unit = unit;
  }

  static String of(Plan plan, HeldDrills held, LengthUnit unit) {
    PlanText words = new PlanText(plan, held, unit);
    words.head();
    words.tapping();
    words.listed();
    words.clearance();
    words.blind();
    words.text.append("\nCaution: ").append(Cautions.DRILLING);
    return words.text.toString();
  }

  /** Returns the name of a tap as it is typed. */
  static String word(TapLead lead) {
    return lead.name().toLowerCase(Locale.ROOT);
  }

  private void head() {
    text.append(plan.thread().designation())
        .append(": ")
        .append(percent(plan.wanted().percent()))
        .append(" of thread wanted");
    if (!plan.wanted().material().isEmpty()) {
      text.append(" in ").append(plan.wanted().material());
    }
    plan.wanted().source().ifPresent(source -> text.append("; ").append(Figures.source(source)));
    plan.suggested().ifPresent(this::suggestion);
    text.append("\n100 % is a depth of thread of ")
        .append(plan.thread().form().percentDepthPerPitch())
        .append(" pitch, the convention of the form\n");
  }

  private void suggestion(TappingChoice choice) {
    text.append("\nTap through ")
        .append(DrillWords.names(choice.drill()))
        .append(", ")
        .append(LengthFormat.showBoth(choice.drill().diameter(), unit))
        .append(": ")
        .append(percent(choice.percentOfThread()))
        .append(" of thread");
    choice
        .percentAsDrilled()
        .ifPresent(p -> text.append(", about ").append(percent(p)).append(" as drilled"));
    choice.concern().ifPresent(concern -> text.append("; but the ").append(turned(concern)));
  }

  private void tapping() {
    text.append("\nTo tap, from ").append(from()).append(", best first\n");
    if (plan.tapping().isEmpty()) {
      text.append("  no drill that leaves a usable thread");
      text.append(plan.from().catalogue() ? "\n" : "; --catalogue shows which would\n");
      return;
    }
    Columns columns =
        new Columns()
            .indent(2)
            .right(1, 2, 3, 4)
            .row("drill", unit.symbol(), other().symbol(), "thread", "as drilled", "held", "");
    for (TappingChoice choice : plan.tapping()) {
      columns.row(
          DrillWords.names(choice.drill()),
          Figures.fine(choice.drill().diameter(), unit),
          Figures.fine(choice.drill().diameter(), other()),
          percent(choice.percentOfThread()),
          choice.percentAsDrilled().map(PlanText::percent).orElse(""),
          place(choice.drill()),
          choice.concern().map(this::turned).orElse(""));
    }
    text.append(columns.text()).append('\n');
  }

  private void listed() {
    if (plan.listed().isEmpty()) {
      return;
    }
    text.append("\nLists name\n");
    Columns columns =
        new Columns()
            .indent(2)
            .right(1, 2, 3)
            .row("drill", unit.symbol(), other().symbol(), "thread", "");
    Footnotes notes = new Footnotes();
    for (ListedDrill listed : plan.listed()) {
      columns.row(
          DrillWords.names(listed.drill()),
          Figures.fine(listed.drill().diameter(), unit),
          Figures.fine(listed.drill().diameter(), other()),
          percent(listed.percentOfThread()),
          listed.sources().stream()
              .map(source -> notes.mark(Figures.source(source)))
              .distinct()
              .collect(Collectors.joining(" ")));
    }
    text.append(columns.text()).append(notes.text().replace("\n", "\n  ")).append('\n');
  }

  private void clearance() {
    text.append("\nTo pass, from ").append(from()).append('\n');
    if (plan.clearance().isEmpty()) {
      text.append("  no drill for a listed clearance hole");
      text.append(plan.from().catalogue() ? "\n" : "; --catalogue shows which would do\n");
      return;
    }
    Columns columns =
        new Columns()
            .indent(2)
            .right(2, 3, 4, 5)
            .row(
                "fit",
                "drill",
                unit.symbol(),
                other().symbol(),
                "room " + unit.symbol(),
                "listed " + unit.symbol(),
                "held",
                "");
    Footnotes notes = new Footnotes();
    for (ClearanceChoice choice : plan.clearance()) {
      columns.row(
          choice.fit().name().toLowerCase(Locale.ROOT),
          DrillWords.names(choice.drill()),
          Figures.fine(choice.drill().diameter(), unit),
          Figures.fine(choice.drill().diameter(), other()),
          Figures.fine(choice.clearance(), unit),
          Figures.fine(choice.listed(), unit),
          place(choice.drill()),
          notes.mark(Figures.source(choice.source())));
    }
    text.append(columns.text()).append(notes.text().replace("\n", "\n  ")).append('\n');
  }

  private void blind() {
    if (plan.blind().isEmpty()) {
      return;
    }
    text.append("\nBlind hole, drill ")
        .append(plan.suggested().orElseThrow().drill().name())
        .append(", point ")
        .append(plan.pointDegrees())
        .append("°, depths from the face in ")
        .append(unit.symbol())
        .append('\n');
    Columns columns =
        new Columns()
            .indent(2)
            .right(1, 2, 3, 4, 5, 6)
            .row("last tap", "full thread", "lead", "chips", "to shoulder", "to tip", "left", "");
    for (int i = 0; i < plan.blind().size(); i++) {
      BlindHole hole = plan.blind().get(i);
      columns.row(
          word(plan.leads().get(i)),
          LengthFormat.number(hole.fullThread(), unit),
          LengthFormat.number(hole.tapLead(), unit),
          LengthFormat.number(hole.chipRoom(), unit),
          LengthFormat.number(hole.shoulder(), unit),
          LengthFormat.number(hole.drillTip(), unit),
          LengthFormat.number(hole.left(), unit),
          turned(String.join("; ", hole.concerns())));
    }
    text.append(columns.text()).append('\n');
    plan.blind().stream()
        .flatMap(hole -> hole.sources().stream())
        .map(Figures::source)
        .distinct()
        .forEach(source -> text.append("  allowances: ").append(source).append('\n'));
  }

  private String from() {
    return plan.from().words();
  }

  private String place(DrillSize drill) {
    return String.join("; ", held.places(drill));
  }

  private String turned(String sentence) {
    return LengthFormat.turned(sentence, unit);
  }

  private LengthUnit other() {
    return Figures.other(unit);
  }

  private static String percent(double value) {
    return String.format(Locale.ROOT, "%.0f %%", value);
  }
}
