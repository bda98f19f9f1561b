package org.fettlebench.fits;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The article of English: "an" before a vowel. */
class SpannerTest {
  @ParameterizedTest
  @CsvSource({
    "open spanner for 7.00 mm, an open spanner for 7.00 mm",
    "Old ring, an Old ring",
    "thinned ring, a thinned ring",
    "'', 'a '"
  })
  void isSpokenWithItsArticle(String title, String spoken) {
    Spanner spanner = new Spanner(Spanner.Kind.RING, title, 12, OptionalDouble.empty(), 0, "");
    assertEquals(spoken, spanner.spoken());
  }
}
