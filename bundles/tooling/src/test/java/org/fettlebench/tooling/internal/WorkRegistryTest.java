package org.fettlebench.tooling.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fettlebench.tables.FixedTables;
import org.fettlebench.tables.Table;
import org.fettlebench.tables.TableFile;
import org.fettlebench.tooling.internal.work.WorkRegistry;
import org.fettlebench.tooling.work.WorkMaterial;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Worked materials by the names that people and drawings have for them. */
@ExtendWith(OurTooling.Fresh.class)
class WorkRegistryTest {
  @ParameterizedTest
  @CsvSource({
    "mild steel, mild-steel",
    "EN3B, mild-steel",
    "En 3b, mild-steel",
    "brass-cz121, brass",
    "en8-drawn-13-16, medium-carbon-steel",
    "our CZ121 bar, brass",
    "LG2, gunmetal",
    "stainless 303, stainless-steel",
    "silver steel, tool-steel"
  })
  void findsByAnyName(String name, String id) {
    assertEquals(Optional.of(id), OurTooling.materials().find(name).map(WorkMaterial::id));
  }

  @ParameterizedTest
  @CsvSource({"unobtainium", "x", "''", "' - '"})
  void findsNothingByAName(String name) {
    assertEquals(Optional.empty(), OurTooling.materials().find(name));
  }

  @Test
  void standsIn() {
    WorkMaterial gunmetal = OurTooling.material("gunmetal");
    assertEquals("bronze", OurTooling.materials().standIn(gunmetal).orElseThrow().id());
    assertEquals(Optional.empty(), OurTooling.materials().standIn(OurTooling.material("bronze")));
  }

  @Test
  void nearOnesHoldAWordOfTheName() {
    List<String> steels =
        OurTooling.materials().near("some steel or other").stream().map(WorkMaterial::id).toList();
    assertTrue(steels.contains("tool-steel") && steels.contains("mild-steel"), steels.toString());
    assertTrue(!steels.contains("brass") && !steels.contains("cast-iron"), steels.toString());
    assertEquals(steels.stream().distinct().toList(), steels);
    assertEquals(OurTooling.materials().all(), OurTooling.materials().near("unobtainium"));
  }

  @Test
  void aModulesMaterialsComeFirst() throws IOException {
    String text =
        "# kind: work-materials\n# id: club\n# title: t\n# source: s\n"
            + "# standing: measured by the club\n"
            + "id,name,aliases,taken_as\nbell-metal,bell metal,bell; cz121,bronze\n";
    List<Table> tables = new ArrayList<>(OurTooling.TABLES.all());
    tables.add(TableFile.read("club.csv", "org.example.club", new StringReader(text)));
    WorkRegistry club = new WorkRegistry(FixedTables.of(tables), OurTooling.NO_FAULTS);
    assertEquals("bell-metal", club.all().get(0).id());
    assertEquals("bell-metal", club.find("CZ121").orElseThrow().id());
    assertEquals("bronze", club.standIn(club.find("bell").orElseThrow()).orElseThrow().id());
  }
}
