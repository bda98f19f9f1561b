package org.fettlebench.desktop.castings.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.fettlebench.castings.Placing;
import org.fettlebench.castings.PlacingWords;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.widgets.Layouts;
import org.fettlebench.desktop.widgets.ScrollPane;
import org.fettlebench.desktop.widgets.Section;
import org.fettlebench.desktop.widgets.VerdictBadge;
import org.fettlebench.desktop.widgets.VerdictMark;

/** The answer in words: verdict, what governs, what would have to give, where to set out from. */
final class AnswerPanel {
  private final Desk desk;
  private final Bench bench;
  private final ScrollPane pane;
  private final Composite empty;
  private final Composite answer;
  private final VerdictBadge badge;
  private final Label spare;
  private final Label governs;
  private final Part gives;
  private final Part less;
  private final Part setOut;
  private final Part lies;

  /** A section of words that is there only while it has some. */
  private final class Part {
    private final Section section;
    private final Label words;

    Part(Composite parent, String title) {
      section = new Section(parent, desk.look(), title);
      words = Layouts.text(section.body(), desk.look(), "");
    }

    void say(List<String> lines) {
      String before = lines.size() > 1 ? "\u2022 " : "";
      Layouts.say(
          words,
          lines.stream().map(line -> before + begun(line)).collect(Collectors.joining("\n")));
      Layouts.present(section, !lines.isEmpty());
    }
  }

  AnswerPanel(Composite parent, Desk desk, Bench bench, Deeds deeds, Runnable begin) {
    this.desk = desk;
    this.bench = bench;
    pane = new ScrollPane(parent, desk.look());
    empty = empty(deeds, begin);
    answer = Layouts.wide(Layouts.columns(pane.body(), 1));
    badge = new VerdictBadge(answer, desk.look()).large();
    badge.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
    spare = Layouts.label(answer, desk.look().strong(), "");
    spare.setForeground(desk.look().ink());
    governs = Layouts.text(answer, desk.look(), "");
    gives = new Part(answer, "Any one of these makes it clean up");
    less = new Part(answer, "Or leave the drawing and cut less");
    setOut = new Part(answer, "Set out from");
    lies = new Part(answer, "How the finished part lies");
  }

  private Composite empty(Deeds deeds, Runnable begin) {
    Composite made = Layouts.wide(Layouts.columns(pane.body(), 1));
    Layouts.answer(made, desk.look(), "Is there metal to finish it?");
    Layouts.text(
        made,
        desk.look(),
        "Measure the raw casting from any rough datum and type it below, face by face, with the"
            + " sizes of the drawing beside it. What comes off each face, what governs and where"
            + " to set out from follow as you type.");
    Composite row = Layouts.flow(made);
    button(row, "Begin typing", begin);
    button(row, "Look at an example", deeds::example);
    button(row, "Open a casting file \u2026", deeds::open);
    return made;
  }

  private void button(Composite row, String words, Runnable pressed) {
    Layouts.button(row, desk.look(), words, pressed).setLayoutData(null);
  }

  /** Shows what is to be said now. */
  void show() {
    boolean nothing = bench.sketch().equals(Sketch.EMPTY);
    Layouts.present(empty, nothing);
    Layouts.present(answer, !nothing);
    Reply reply = bench.reply();
    Optional<Placing> placing = reply.answer();
    if (placing.isPresent()) {
      show(placing.get());
    } else {
      badge.show(
          reply.wrong() ? VerdictMark.STRUCK : VerdictMark.OPEN,
          reply.wrong() ? "cannot be" : "not yet");
      Layouts.say(spare, reply.next());
      Layouts.say(governs, soFar(reply));
      List.of(gives, less, setOut, lies).forEach(part -> part.say(List.of()));
    }
    badge.requestLayout();
    pane.fit();
  }

  private static String soFar(Reply reply) {
    return reply.placing().isPresent()
        ? "The drawing shows what is whole; there is no verdict until all is."
        : "";
  }

  private void show(Placing placing) {
    PlacingWords words = new PlacingWords(placing, desk.unit());
    badge.show(mark(placing), placing.outcome().word());
    Layouts.say(spare, words.spare());
    Layouts.say(governs, begun(words.governs()) + ".");
    gives.say(gives(placing, words));
    less.say(words.lessCuts());
    setOut.say(setOut(placing, words));
    lies.say(List.of(words.place() + "; " + words.freedom() + "."));
  }

  private static List<String> gives(Placing placing, PlacingWords words) {
    return placing.cleansUp() || !words.givings().isEmpty()
        ? words.givings()
        : List.of("No dimension of the drawing alone would do it.");
  }

  private static String begun(String words) {
    return Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }

  private static List<String> setOut(Placing placing, PlacingWords words) {
    List<String> lines = new ArrayList<>();
    List<String> said = words.settingOut();
    for (int i = 0; i < said.size(); i++) {
      String onwards = words.onwards(placing.settingOut().get(i));
      lines.add(said.get(i) + (onwards.isEmpty() ? "" : "; " + onwards));
    }
    return lines;
  }

  static VerdictMark mark(Placing placing) {
    return switch (placing.outcome()) {
      case CLEANS_UP -> VerdictMark.TICK;
      case JUST -> VerdictMark.HALF;
      case SHORT -> VerdictMark.STRUCK;
    };
  }

  /** Returns what is said, line by line. */
  String words() {
    return java.util.stream.Stream.of(spare, governs, gives.words, less.words, setOut.words)
        .map(label -> label.getText().replace("&&", "&"))
        .filter(text -> !text.isBlank())
        .collect(Collectors.joining("\n", badge.word() + "\n", ""));
  }
}
