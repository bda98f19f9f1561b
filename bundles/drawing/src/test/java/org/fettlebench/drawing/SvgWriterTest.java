package org.fettlebench.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

class SvgWriterTest {
  private static Document write(Item... items) throws Exception {
    Drawing drawing = new Drawing("lug & <boss>", List.of(items), new Drawing.Frame(0, 0, 10, 5));
    String svg = SvgWriter.write(drawing, 108, 58);
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
  }

  private static Element first(Document svg, String name) {
    return (Element) svg.getElementsByTagName(name).item(0);
  }

  @Test
  void isToScaleWithYUpwards() throws Exception {
    // 10 mm fill 100 mm of paper between edges of 4 mm.
    Element circle = first(write(new Item.Circle(LineKind.OUTLINE, new Point(0, 0), 2)), "circle");

    assertEquals("4", circle.getAttribute("cx"));
    assertEquals("54", circle.getAttribute("cy"));
    assertEquals("20", circle.getAttribute("r"));
  }

  @ParameterizedTest
  @CsvSource({
    "OUTLINE, 0.5, false",
    "THIN, 0.25, false",
    "CENTRE, 0.25, true",
    "HIDDEN, 0.25, true",
    "GOVERNING, 1.2, false",
  })
  void linesAreAsWideAsTheStandardHasThem(LineKind kind, String width, boolean broken)
      throws Exception {
    Element path =
        first(write(new Item.Path(kind, List.of(new Point(0, 0), new Point(1, 1)), false)), "path");

    assertEquals(width, path.getAttribute("stroke-width"));
    assertEquals(broken, path.hasAttribute("stroke-dasharray"));
  }

  @Test
  void wordsAreEscapedAndStayOnTheSheet() throws Exception {
    Document svg =
        write(new Item.Label(new Point(10, 0), "2 < 3 & \"so\" on and on", Item.Side.RIGHT, true));
    Element text = first(svg, "text");

    assertEquals("2 < 3 & \"so\" on and on", text.getTextContent());
    assertEquals("lug & <boss>", first(svg, "title").getTextContent());
    assertTrue(Double.parseDouble(text.getAttribute("x")) < 70, text.getAttribute("x"));
  }

  @Test
  void aLongDimensionHasItsFigureBetweenAndAShortOneBeyond() throws Exception {
    Element wide =
        first(
            write(new Item.Dimension(new Point(0, 0), new Point(10, 0), 0, "10.00 mm", false)),
            "text");
    Element narrow =
        first(
            write(new Item.Dimension(new Point(5, 0), new Point(5.2, 0), 0, "0.20 mm", false)),
            "text");

    assertEquals(54, Double.parseDouble(wide.getAttribute("x")), 1e-9);
    assertTrue(Double.parseDouble(narrow.getAttribute("x")) < 50);
  }

  @ParameterizedTest
  @CsvSource({"9, 50", "50, 5001", "NaN, 50", "50, -1"})
  void sheetOutsideTheRangeIsRefused(double width, double height) {
    Drawing drawing = new Drawing("", List.of(), new Drawing.Frame(0, 0, 1, 1));

    assertThrows(IllegalArgumentException.class, () -> SvgWriter.write(drawing, width, height));
  }

  /**
   * ISO 5455: 5:1 is the largest standard scale at which 12 mm stand on 100 mm; an inch is 25.4.
   */
  @ParameterizedTest
  @CsvSource({"INCH, M34 73L84.8 73, 2 in when", "MILLIMETRE, M34 73L84 73, 50 mm when"})
  void standsAtAStandardScaleWithALineToMeasure(LengthUnit unit, String line, String words) {
    Drawing drawing =
        new Drawing(
            "lug",
            List.of(new Item.Circle(LineKind.OUTLINE, new Point(6, 3), 2)),
            new Drawing.Frame(0, 0, 12, 6));
    String svg = SvgWriter.toScale(drawing, 108, 78, unit);
    assertTrue(svg.contains(" r=\"10\" "), svg);
    assertTrue(svg.contains(">Scale 5:1<"), svg);
    assertTrue(svg.contains("d=\"" + line + "\""), svg);
    assertTrue(svg.contains(">" + words), svg);
  }
}
