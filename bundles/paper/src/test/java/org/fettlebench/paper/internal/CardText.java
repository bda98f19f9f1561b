package org.fettlebench.paper.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** Reads the words off a card. */
final class CardText {
  private CardText() {}

  /** What writes a card. */
  interface Writing {
    void to(OutputStream pdf) throws IOException;
  }

  /** Writes a card, and holds that it is one page with all its letters on it. */
  static String read(Writing writing) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    writing.to(bytes);
    List<TextPosition> letters = new ArrayList<>();
    try (PDDocument document = Loader.loadPDF(bytes.toByteArray())) {
      PDFTextStripper stripper =
          new PDFTextStripper() {
            @Override
            protected void writeString(String text, List<TextPosition> positions)
                throws IOException {
              letters.addAll(positions);
              super.writeString(text, positions);
            }
          };
      stripper.setSortByPosition(true);
      String text = stripper.getText(document).replaceAll("\\s+", " ");
      assertEquals(1, document.getNumberOfPages());
      double page = document.getPage(0).getMediaBox().getWidth();
      assertTrue(letters.stream().allMatch(letter -> letter.getEndX() < page - 20), text);
      assertTrue(letters.stream().allMatch(letter -> letter.getX() > 20), text);
      assertTrue(letters.stream().allMatch(letter -> letter.getYDirAdj() < 835), text);
      return text;
    }
  }
}
