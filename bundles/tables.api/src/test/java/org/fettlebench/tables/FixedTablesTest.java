package org.fettlebench.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.UncheckedIOException;
import java.util.List;
import org.junit.jupiter.api.Test;

class FixedTablesTest {
  @Test
  void allTablesBesideAClassAreReadAndNothingElse() {
    FixedTables tables = FixedTables.carriedBy(FixedTablesTest.class);
    assertEquals(List.of("odd"), tables.all().stream().map(Table::id).toList());
    assertEquals(2, tables.ofKind("trial").get(0).rows().size());
    assertEquals("org.fettlebench.tables", tables.all().get(0).module());
  }

  @Test
  void aJarWithoutTablesIsNamed() {
    UncheckedIOException refused =
        assertThrows(UncheckedIOException.class, () -> FixedTables.carriedBy(Test.class));
    assertTrue(refused.getMessage().contains(Test.class.getName()), refused.getMessage());
  }
}
