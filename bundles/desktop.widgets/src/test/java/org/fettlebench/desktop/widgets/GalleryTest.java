package org.fettlebench.desktop.widgets;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.fettlebench.desktop.widgets.trial.TrialDesk;
import org.fettlebench.desktop.widgets.trial.Windowed;
import org.fettlebench.drawing.Drawing;
import org.fettlebench.drawing.Item;
import org.fettlebench.drawing.LineKind;
import org.fettlebench.drawing.Tone;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.Point;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Shows every widget once, in both themes and sizes, and leaves the pictures in target/pictures.
 */
class GalleryTest {

  record Row(String joint, String fastener, int count, VerdictMark mark, double allowanceMm) {}

  @ParameterizedTest
  @CsvSource({"false, 1.0", "true, 1.0", "false, 1.5", "true, 1.5"})
  void everyWidgetIsShown(boolean dark, double scale) {
    String name = "gallery-" + (dark ? "dark" : "light") + "-" + Math.round(scale * 100);
    Windowed.run(
        name,
        dark,
        scale,
        desk -> {
          fill(desk);
          desk.open(1280, 800);
          Path picture = Windowed.folder().resolve(name + ".png");
          desk.picture(picture);
          assertTrue(Files.exists(picture));
        });
  }

  private static void fill(TrialDesk desk) {
    Composite page = Layouts.page(desk.shell(), desk.look());
    Layouts.answer(page, desk.look(), "31 joints: 22 clear, 5 are tight, 4 foul");
    Layouts.text(page, desk.look(), "Missing to begin: a 2 BA bottoming tap and 6 nuts.");
    Split split = new Split(page, desk, SWT.HORIZONTAL, "gallery", "sash");
    Composite left = Layouts.columns(split.form(), 1);
    FilterField filter = new FilterField(left, desk, "pump body, 2 BA, fouls");
    Layouts.wide(filter);
    LongList<Row> list = new LongList<>(left, desk, "gallery", "joints", columns(desk));
    Layouts.fill(list);
    filter.narrows(list);
    list.items(rows());
    list.selectRow(2);
    Composite right = Layouts.columns(split.form(), 1);
    VerdictBadge badge = new VerdictBadge(right, desk.look()).large();
    badge.show(VerdictMark.STRUCK, "fouls");
    DrawingCanvas canvas = Layouts.fill(new DrawingCanvas(right, desk));
    ((org.eclipse.swt.layout.GridData) canvas.getLayoutData()).minimumHeight = 260;
    canvas.show(drawing());
    Section why = new Section(right, desk.look(), "Why");
    why.point(VerdictMark.STRUCK, "The head overlaps the cylinder wall by 0.42 mm.");
    why.point(VerdictMark.HALF, "The hole leaves 1.1 mm of metal on the far face.");
    why.point(VerdictMark.TICK, "The thread holds: 7 turns in cast iron.");
    why.point(VerdictMark.OPEN, "The depth of the hole is not known yet.");
    why.line("Fastener", "2 BA hexagon, 5/8 in, steel");
    Section more = new Section(right, desk.look(), "Limits and sources").foldable(false);
    more.text("Hidden until asked for.");
    LengthField length = new LengthField(right, desk);
    length.type("5/32");
    new CautionStrip(right, desk.look(), Cautions.DRILLING);
    split.share(45, 55);
  }

  static List<Column<Row>> columns(TrialDesk desk) {
    return List.of(
        Column.<Row>words("Joint", 22, Row::joint),
        Column.<Row>words("Fastener", 18, Row::fastener),
        Column.<Row>figures("No.", "", 0, row -> OptionalDouble.of(row.count())),
        Column.<Row>words(
                "Verdict", 12, row -> row.mark().name().toLowerCase(java.util.Locale.ROOT))
            .marked(row -> Optional.of(row.mark())),
        Column.<Row>lengths(
            "Allowance", desk, row -> Optional.of(Length.ofMillimetres(row.allowanceMm()))));
  }

  static List<Row> rows() {
    return IntStream.range(0, 60)
        .mapToObj(
            i ->
                new Row(
                    "Pump body to base " + i,
                    i % 3 == 0 ? "2 BA hexagon" : "M4 socket cap",
                    1 + i % 12,
                    VerdictMark.values()[i % 4],
                    1.5 - i * 0.11))
        .toList();
  }

  static Drawing drawing() {
    List<Point> outline =
        List.of(new Point(0, 0), new Point(30, 1), new Point(28, 14), new Point(2, 12));
    List<Point> wall =
        List.of(new Point(2, 12), new Point(28, 14), new Point(28, 18), new Point(2, 16));
    List<Point> allowed =
        List.of(new Point(8, 6.2), new Point(22, 6.7), new Point(21.6, 7.6), new Point(8.4, 7));
    Point intended = new Point(15, 8);
    return new Drawing(
        "Gland flange: the head overlaps the cylinder wall by 0.42 mm",
        List.of(
            new Item.Area(Tone.PART, outline, List.of()),
            new Item.Area(Tone.WALL, wall, List.of()),
            new Item.Area(Tone.ALLOWED, allowed, List.of()),
            new Item.Area(Tone.HEAD, circle(intended, 5.4), List.of()),
            new Item.Path(LineKind.OUTLINE, outline, true),
            new Item.Circle(LineKind.OUTLINE, intended, 5.4),
            new Item.Circle(LineKind.HIDDEN, intended, 2.4),
            new Item.Path(LineKind.CENTRE, List.of(new Point(15, 0), new Point(15, 16)), false),
            new Item.Path(LineKind.CENTRE, List.of(new Point(7, 8), new Point(23, 8)), false),
            new Item.Path(LineKind.GOVERNING, List.of(new Point(2, 12), new Point(28, 14)), false),
            new Item.Marker(intended, Item.Mark.CROSS),
            new Item.Marker(new Point(15, 6.8), Item.Mark.RING),
            new Item.Marker(new Point(15.4, 8.5), Item.Mark.SALTIRE),
            new Item.Label(new Point(15, 6.8), "best centre", Item.Side.RIGHT, false),
            new Item.Label(new Point(15, 16), "cylinder wall", Item.Side.CENTRE, true),
            new Item.Dimension(new Point(0, 0), new Point(30, 1), -8, "30.02 mm", false),
            new Item.Dimension(new Point(0, 0), new Point(2, 12), 8, "12.17 mm", false),
            new Item.Dimension(intended, new Point(14.6, 13), 0, "4.98 mm of 5.40 mm", true),
            new Item.Dimension(new Point(28, 14), new Point(28, 18), -6, "4.00 mm", false)),
        new Drawing.Frame(0, 0, 30, 18));
  }

  private static List<Point> circle(Point centre, double radius) {
    return IntStream.range(0, 90)
        .mapToObj(
            i ->
                centre.moved(
                    radius * Math.cos(Math.toRadians(4 * i)),
                    radius * Math.sin(Math.toRadians(4 * i))))
        .toList();
  }
}
