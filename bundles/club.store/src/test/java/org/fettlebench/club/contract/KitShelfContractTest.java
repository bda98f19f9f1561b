package org.fettlebench.club.contract;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Optional;
import org.fettlebench.club.ClubException;
import org.fettlebench.club.KitShelf;
import org.fettlebench.club.KitShelf.KeptKit;
import org.fettlebench.club.store.internal.SqlKitShelf;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What every kit shelf must do, on any engine. */
public abstract class KitShelfContractTest extends StoreContract {
  private KitShelf shelf() {
    return new SqlKitShelf(database());
  }

  @Test
  void anEmptyShelfIsEmpty() {
    assertEquals(List.of(), shelf().kits());
    assertEquals(Optional.empty(), shelf().kit("Feed pump"));
    assertEquals(Optional.empty(), shelf().remove("Feed pump"));
  }

  @Test
  void aKitComesBackToTheCharacterHoweverLong() {
    String text = "name = \"Feed pump\"\r\n# Grüße, 5/32\t½\n".repeat(20_000) + "  ";
    shelf().keep("Feed pump", text);
    reopen();
    assertEquals(text, shelf().kit("Feed pump").orElseThrow().text());
    assertEquals(shelf().kit("Feed pump").stream().toList(), shelf().kits());
  }

  @Test
  void aKitTakesThePlaceOfOneOfTheSameName() {
    KitShelf shelf = shelf();
    assertEquals(Optional.empty(), shelf.keep("Feed pump", "old"));
    KeptKit old = shelf.keep(" Feed pump ", "new").orElseThrow();
    assertEquals("old", old.text());
    assertEquals("new", shelf.kit("Feed pump").orElseThrow().text());
    assertEquals(1, shelf.kits().size());
  }

  @Test
  void namesDifferByTheirCapitals() {
    shelf().keep("Feed pump", "a");
    shelf().keep("FEED PUMP", "b");
    assertEquals(2, shelf().kits().size());
  }

  @Test
  void whatIsTakenDownCanBePutBack() {
    KitShelf shelf = shelf();
    shelf.keep("Feed pump", "text");
    KeptKit taken = shelf.remove("Feed pump").orElseThrow();
    assertEquals(List.of(), shelf.kits());
    shelf.keep(taken.name(), taken.text());
    assertEquals("text", shelf.kit("Feed pump").orElseThrow().text());
  }

  @Test
  void anEmptyTextIsATextToo() {
    shelf().keep("Empty", "");
    assertEquals("", shelf().kit("Empty").orElseThrow().text());
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "  ", "two\nlines"})
  void aNameThatIsNoNameIsRefused(String name) {
    assertThrows(ClubException.class, () -> shelf().keep(name, "text"));
    assertEquals(List.of(), shelf().kits());
  }

  @Test
  void aNameThatIsTooLongIsRefused() {
    shelf().keep("k".repeat(200), "text");
    assertThrows(ClubException.class, () -> shelf().keep("k".repeat(201), "text"));
    assertEquals(1, shelf().kits().size());
  }
}
