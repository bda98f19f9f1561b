package org.fettlebench.kits.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.fettlebench.club.Goods;
import org.fettlebench.club.Receipt;
import org.fettlebench.kits.FaultyFileException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StockListTest {
  private static String resource(String name) throws IOException {
    try (InputStream bytes = StockListTest.class.getResourceAsStream("/faulty-stock/" + name)) {
      return new String(bytes.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private static List<String> places(String name) throws IOException {
    String text = resource(name);
    return assertThrows(FaultyFileException.class, () -> Bench.STOCK.readStock(name, text))
        .faults()
        .stream()
        .map(fault -> fault.line() + ":" + fault.column() + " " + fault.value())
        .toList();
  }

  @Test
  void everyFaultyCellIsToldWithItsPlace() throws IOException {
    assertEquals(
        List.of(
            "2:11 2 BX",
            "3:16 hexagoon",
            "4:25 12",
            "5:25 0 mm",
            "5:50 ten",
            "6:1 spanner",
            "7:10 big",
            "8:10 ",
            "9:11 plug",
            "10:6 ",
            "10:20 rusty",
            "10:28 -2",
            "11:8 ",
            "12:17 ",
            "12:23 0",
            "13:41 "),
        places("rows.csv"));
  }

  @Test
  void faultyColumnsAreTold() throws IOException {
    assertEquals(List.of("1:1 ", "1:6 nmae", "1:17 quantty", "1:25 place"), places("columns.csv"));
  }

  private static List<String> said(String list) {
    return assertThrows(FaultyFileException.class, () -> Bench.STOCK.readStock("a.csv", list))
        .faults()
        .stream()
        .map(fault -> fault.line() + ":" + fault.column() + " " + fault.wrong())
        .toList();
  }

  @Test
  void rowsOfNothingButCommasAreLeftOut() {
    String list = "kind,diameter,place,quantity\n,,,\ndrill,5/32,Stand,1\n,,,\n";
    assertEquals(1, Bench.STOCK.readStock("a.csv", list).size());
  }

  @Test
  void aListWithoutItsColumnNamesIsToldOnce() {
    assertEquals(
        List.of("1:1 is no line of column names with commas between them"),
        said("kind;diameter;place;quantity\ndrill;5/32;Stand;1\n"));
  }

  @Test
  void textsThatTheBooksCannotKeepAreTold() {
    assertEquals(
        List.of(
            "2:8 must be one line, without tabs",
            "2:14 has 301 characters, at most 300 fit",
            "4:8 has 201 characters, at most 200 fit"),
        said(
            "kind,name,place,quantity\nsundry,\"a\nb\","
                + "x".repeat(301)
                + ",1\nsundry,"
                + "n".repeat(201)
                + ",Shelf,1\n"));
  }

  @Test
  void cellsWithoutMeaningForTheirKindAreTold() {
    assertEquals(
        List.of("2:7 has no meaning for a drill", "3:16 has no meaning for a tap"),
        said(
            "kind,thread,style,diameter,place,quantity\n"
                + "drill,2 BA,,5/32,Stand,1\ntap,2 BA,taper,5/32,Stand,1\n"));
  }

  @Test
  void anOpenQuoteIsTold() throws IOException {
    assertEquals(List.of("2:1 "), places("quote.csv"));
  }

  @Test
  void whatIsWrittenIsReadAgain() {
    String list =
        """
        kind,thread,style,diameter,length,material,place,quantity,name
        fastener,2BA,hexagon,,1/2,steel,Drawer 3,4,
        drill,,,No 22,,,Stand,1,
        tap,1/4 x 40 ME,second,,,,Box,2,
        sundry,,,,,,"Shelf, upper",1,"3/8"" packing, ""soft"" yarn"
        """;
    List<Receipt> first = Bench.STOCK.readStock("a.csv", list);
    String written = Bench.STOCK.write(Bench.holdings(first).lines());
    assertEquals(first, Bench.STOCK.readStock("b.csv", written));
    assertEquals("3/8\" packing, \"soft\" yarn", first.get(3).goods().name());
  }

  @ParameterizedTest
  @CsvSource({
    "2 BA hexagon x 1/2 in steel, FASTENER, '2 BA hexagon screw x 1/2 in, steel'",
    "2ba hex 1/2 steel, FASTENER, '2 BA hexagon screw x 1/2 in, steel'",
    "1/4 x 40 ME stud x 3/8 in brass, FASTENER, '1/4 x 40 ME stud x 3/8 in, brass'",
    "M6 x 25 mm socket cap steel, FASTENER, 'M6 socket cap screw x 25 mm, steel'",
    "M4 nut, FASTENER, M4 hexagon-nut",
    "4 BA small hexagon x 1/2 in stainless steel, FASTENER, '4 BA small hexagon screw x 1/2 in, stainless steel'",
    "drill 5/32, DRILL, 5/32 in drill",
    "No 22 drill, DRILL, No 22 drill",
    "tap 2 BA taper, TAP, 2 BA taper tap",
    "'M4 hexagon x 12,5 mm steel', FASTENER, 'M4 hexagon screw x 12.5 mm, steel'",
    "'M4, hexagon, x 12 mm, steel', FASTENER, 'M4 hexagon screw x 12 mm, steel'",
    "sundry cutting oil, SUNDRY, cutting oil",
    "1/4-20 UNC bottoming tap, TAP, 1/4-20 UNC bottoming tap"
  })
  void goodsAreUnderstoodInWords(String words, Goods.Kind kind, String name) {
    Goods goods = Bench.STOCK.readGoods(words);
    assertEquals(kind, goods.kind());
    assertEquals(name.replace('-', ' '), goods.name().replace('-', ' '));
  }

  @ParameterizedTest
  @CsvSource({
    "2 BX hexagon x 1/2 in, does not begin with a known thread",
    "2 BA hexagoon x 1/2 in, 'names no known head, nut or washer'",
    "2 BA hexagon x 12, has no unit",
    "2 BA hexagon x, no length stands behind x",
    "tap 2 BA, the tap's lead is missing",
    "tap 2 BA plug, is no lead of a tap",
    "drill huge, is no drill",
    "sundry, has no name",
    "2 BA hexagon x 1/2 in st33l, cannot be understood"
  })
  void whatCannotBeUnderstoodIsRefusedWithARemedy(String words, String said) {
    String message =
        assertThrows(IllegalArgumentException.class, () -> Bench.STOCK.readGoods(words))
            .getMessage();
    assertEquals(true, message.contains(said) && message.contains("; "), message);
  }
}
