package org.fettlebench.paper.internal;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** The face of all words, embedded so that every printer has it, and how much room words take. */
final class Lettering {
  /** Comes with the PDF library: Liberation Sans, under the SIL Open Font License. */
  private static final String FACE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

  /** How much farther apart heavier letters stand, of their size, so that they do not run. */
  static final double STRONG_SPACING = 0.012;

  private final PDFont font;

  Lettering(PDDocument document) throws IOException {
    try (InputStream face = PDFont.class.getResourceAsStream(FACE)) {
      if (face == null) {
        throw new IOException("the bundle lacks its lettering, " + FACE);
      }
      font = PDType0Font.load(document, face, true);
    }
  }

  PDFont font() {
    return font;
  }

  /** Returns the words with a question mark for what the face does not have. */
  String writable(String words) {
    StringBuilder all = new StringBuilder();
    words
        .replaceAll("\\s+", " ")
        .codePoints()
        .mapToObj(Character::toString)
        .forEach(letter -> all.append(has(letter) ? letter : "?"));
    return all.toString();
  }

  private boolean has(String letter) {
    try {
      font.encode(letter);
      return true;
    } catch (IllegalArgumentException | IOException notInTheFace) {
      return false;
    }
  }

  /** Returns how long words are on paper, mm. */
  double lengthMm(Style style, String words) throws IOException {
    String written = writable(words);
    double spacing = style.strong() ? STRONG_SPACING * written.length() : 0;
    return (font.getStringWidth(written) / 1000 + spacing) * style.points() * 25.4 / 72;
  }

  /** Breaks words into lines that are no longer than told; one long word is left whole. */
  List<String> wrapped(Style style, String words, double widthMm) throws IOException {
    List<String> lines = new ArrayList<>();
    for (String paragraph : words.split("\n")) {
      String line = "";
      for (String word : paragraph.strip().split("\\s+")) {
        String longer = line.isEmpty() ? word : line + " " + word;
        if (!line.isEmpty() && lengthMm(style, longer) > widthMm) {
          lines.add(line);
          line = word;
        } else {
          line = longer;
        }
      }
      lines.add(line);
    }
    return lines;
  }
}
