package org.fettlebench.command.internal.head;

import java.util.List;
import java.util.Optional;
import org.fettlebench.command.Call;
import org.fettlebench.command.Command;
import org.fettlebench.command.Reply;
import org.fettlebench.command.Usage;
import org.fettlebench.command.internal.Columns;
import org.fettlebench.command.internal.Commands;
import org.fettlebench.command.internal.Data;
import org.fettlebench.command.internal.Figures;
import org.fettlebench.command.internal.Footnotes;
import org.fettlebench.command.internal.thread.ThreadWords;
import org.fettlebench.fasteners.Head;
import org.fettlebench.fasteners.Heads;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.ThreadCall;
import org.fettlebench.threads.Threads;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Shows the heads, nuts and washers that the tables list for a thread. */
@Component(property = Commands.WORDS + "=head show")
public final class HeadShow implements Command {
  private static final Usage USAGE =
      Usage.of(
              "head show",
              "Shows the heads, nuts and washers listed for a thread, as large as they may be.",
              "head show 2 BA")
          .needsMany("THREAD", "such as 2 BA, M6, 1/4 BSF");

  private final Threads threads;
  private final Heads heads;

  /** Made by the framework. */
  @Activate
  public HeadShow(@Reference Threads threads, @Reference Heads heads) {
    this.threads = threads;
    this.heads = heads;
  }

  @Override
  public Usage usage() {
    return USAGE;
  }

  @Override
  public Reply run(Call call) {
    ThreadCall called = ThreadWords.called(threads, call.operand("THREAD").orElseThrow());
    return ThreadWords.told(called, answer(call, called.thread()));
  }

  private Reply answer(Call call, ScrewThread thread) {
    List<Head> listed = heads.forThread(thread);
    Object data =
        Data.of(
            "thread", thread.designation(), "heads", listed.stream().map(HeadShow::data).toList());
    return Reply.of(listed.isEmpty(), text(thread, listed, call.unit()), data);
  }

  private static String text(ScrewThread thread, List<Head> listed, LengthUnit unit) {
    if (listed.isEmpty()) {
      return "no table lists a head, nut or washer for " + thread.designation();
    }
    String in = " " + unit.symbol();
    Columns columns =
        new Columns()
            .right(1, 2, 3, 4)
            .row(
                thread.designation(),
                "across flats" + in,
                "across corners" + in,
                "height" + in,
                "washer face" + in,
                "");
    Footnotes notes = new Footnotes();
    for (Head head : listed) {
      columns.row(
          head.style(),
          figure(head.acrossFlats(), unit),
          figure(Optional.of(head.acrossCorners()), unit),
          figure(head.height(), unit),
          figure(head.washerFace(), unit),
          notes.mark(
              Figures.source(head.source()) + (head.note().isEmpty() ? "" : "; " + head.note())));
    }
    return columns.text() + notes.text();
  }

  private static String figure(Optional<Length> length, LengthUnit unit) {
    return length.map(known -> LengthFormat.number(known, unit)).orElse("-");
  }

  private static Object data(Head head) {
    return Data.of(
        "style", head.style(),
        "title", head.title(),
        "acrossFlatsMm", head.acrossFlats().map(Data::mm),
        "acrossFlatsIn", head.acrossFlats().map(Data::in),
        "acrossCornersMm", Data.mm(head.acrossCorners()),
        "acrossCornersIn", Data.in(head.acrossCorners()),
        "heightMm", head.height().map(Data::mm),
        "heightIn", head.height().map(Data::in),
        "washerFaceMm", head.washerFace().map(Data::mm),
        "washerFaceIn", head.washerFace().map(Data::in),
        "note", Data.said(head.note()),
        "source", Figures.sourceData(head.source()));
  }
}
