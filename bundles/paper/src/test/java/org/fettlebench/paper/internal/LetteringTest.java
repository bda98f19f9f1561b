package org.fettlebench.paper.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class LetteringTest {
  private PDDocument document;
  private Lettering lettering;

  @BeforeEach
  void open() throws IOException {
    document = new PDDocument();
    lettering = new Lettering(document);
  }

  @AfterEach
  void close() throws IOException {
    document.close();
  }

  @Test
  void wrapsAtTheWidthAndLosesNoWord() throws IOException {
    String words = "The hole may be out by a hair, and no more than that, at this land.";
    List<String> lines = lettering.wrapped(Style.TEXT, words, 40);
    assertEquals(words, String.join(" ", lines));
    for (String line : lines) {
      assertTrue(lettering.lengthMm(Style.TEXT, line) <= 40, line);
    }
    assertTrue(lines.size() > 1, lines.toString());
  }

  @Test
  void leavesAWordThatIsTooLongWhole() throws IOException {
    assertEquals(List.of("extraordinarily"), lettering.wrapped(Style.TEXT, "extraordinarily", 3));
  }

  @Test
  void showsWhatTheFaceLacksAsAQuestionMark() {
    assertEquals(
        "30\u00B0 \u0141\u00F3d\u017A ?",
        lettering.writable("30\u00B0 \u0141\u00F3d\u017A \u4E00"));
    assertEquals("one line", lettering.writable("one\nline"));
  }
}
