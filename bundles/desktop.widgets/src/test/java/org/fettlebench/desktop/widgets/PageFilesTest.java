package org.fettlebench.desktop.widgets;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PageFilesTest {
  @ParameterizedTest
  @CsvSource({
    "Bearing bracket, Bearing-bracket",
    "' lug, 3/8 in ', lug-3-8-in",
    "Kessel über Rad, Kessel-über-Rad",
    "'', seat",
    "'  ', seat",
    "?!, seat"
  })
  void aFileIsNamedAfterTheThing(String called, String name) {
    assertEquals(name, PageFiles.name(called, "seat"));
  }

  @ParameterizedTest
  @CsvSource({"a.svg, .svg", "A.PNG, .png", "x.y.Pdf, .pdf", "a.jpg,", "svg,"})
  void aPictureIsKnownByItsEnding(String name, String ending) {
    assertEquals(Optional.ofNullable(ending), PageFiles.pictureEnding(name));
  }
}
