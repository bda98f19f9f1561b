package org.fettlebench.threads.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.when;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import org.fettlebench.modules.Faults;
import org.fettlebench.tables.FixedTables;
import org.fettlebench.tables.Table;
import org.fettlebench.tables.TableFile;
import org.fettlebench.threads.internal.strength.MaterialRegistry;
import org.junit.jupiter.api.Test;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;

/** A faulty table is told against the bundle that carries it. */
class FaultOwnersTest {
  private final List<Object> told = new ArrayList<>();
  private final Faults faults =
      (contribution, doing, cause) -> told.addAll(List.of(contribution, doing));
  private final Bundle own = bundle("org.fettlebench.threads");
  private final Bundle club = bundle("org.example.club");
  private final BundleContext context = mock(BundleContext.class);

  private static Bundle bundle(String name) {
    Bundle bundle = mock(Bundle.class);
    when(bundle.getSymbolicName()).thenReturn(name);
    return bundle;
  }

  private static FixedTables faulty(String kind) throws IOException {
    String text =
        "# kind: %s\n# id: ours\n# title: t\n# source: s\n# standing: published\nsize\n1\n"
            .formatted(kind);
    Table table = TableFile.read("ours.csv", "org.example.club", new StringReader(text));
    return FixedTables.of(List.of(table));
  }

  @Test
  void ofASeries() throws IOException {
    when(context.getBundles()).thenReturn(new Bundle[] {own, club});
    assertEquals(List.of(), new ThreadRegistry(context, faulty("thread-series"), faults).series());
    assertEquals(List.of(club, "reading thread-series ours"), told);
  }

  @Test
  void ofMaterials() throws IOException {
    when(context.getBundles()).thenReturn(new Bundle[] {own, club});
    MaterialRegistry materials = new MaterialRegistry(context, faulty("materials"), faults);
    assertEquals(List.of(), materials.all());
    assertEquals(List.of(), materials.all());
    assertEquals(List.of(club, "reading materials ours"), told);
  }

  @Test
  void ofABundleThatIsGone() throws IOException {
    when(context.getBundles()).thenReturn(new Bundle[] {own});
    when(context.getBundle()).thenReturn(own);
    new ThreadRegistry(context, faulty("thread-series"), faults).series();
    new MaterialRegistry(context, faulty("materials"), faults).all();
    assertEquals(List.of(own, own), told.stream().filter(Bundle.class::isInstance).toList());
  }
}
