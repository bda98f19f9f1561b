package org.fettlebench.modules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.when;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;

class ModuleOriginTest {
  @TempDir Path data;
  private final BundleContext context = mock();

  @BeforeEach
  void startWithADataDirectory() {
    when(context.getProperty(ModuleOrigin.DATA_PROPERTY)).thenReturn(data.toString());
  }

  @Test
  void theModulesFolderLiesInTheDataDirectoryUnlessNamed() {
    assertEquals(data.resolve("modules"), ModuleOrigin.folder(context));
    when(context.getProperty(ModuleOrigin.FOLDER_PROPERTY)).thenReturn("/elsewhere");
    assertEquals(Path.of("/elsewhere"), ModuleOrigin.folder(context));
  }

  @Test
  void tellsDroppedFromSuite() {
    Bundle dropped = bundle("org.fettlebench.sample", data.resolve("modules/a b.jar").toUri() + "");
    Bundle suite = bundle("org.fettlebench.kits", data.resolve("bundles/kits.jar").toUri() + "");
    Bundle library = bundle("org.apache.felix.scr", "file:/lib/scr.jar");
    assertTrue(ModuleOrigin.dropped(dropped, context));
    assertFalse(ModuleOrigin.suite(dropped, context));
    assertTrue(ModuleOrigin.suite(suite, context));
    assertFalse(ModuleOrigin.dropped(suite, context));
    assertFalse(ModuleOrigin.suite(library, context));
  }

  @Test
  void followsALinkToTheFolder() throws Exception {
    Path real = Files.createDirectories(data.resolve("real"));
    Files.createSymbolicLink(data.resolve("modules"), real);
    Bundle dropped = bundle("club", "reference:" + real.resolve("club.jar").toUri());
    assertTrue(ModuleOrigin.dropped(dropped, context));
  }

  @Test
  void takesABundleFromElsewhereAsNotDropped() {
    assertTrue(ModuleOrigin.file(bundle("club", "initial@reference")).isEmpty());
    assertTrue(ModuleOrigin.file(bundle("club", "file:relative.jar")).isEmpty());
    assertFalse(ModuleOrigin.dropped(bundle("club", "System Bundle"), context));
  }

  @Test
  void asksForADataDirectory() {
    when(context.getProperty(ModuleOrigin.DATA_PROPERTY)).thenReturn(null);
    assertThrows(IllegalStateException.class, () -> ModuleOrigin.folder(context));
    assertFalse(ModuleOrigin.dropped(bundle("club", "file:/x/club.jar"), context));
  }

  private static Bundle bundle(String name, String location) {
    Bundle bundle = mock();
    when(bundle.getSymbolicName()).thenReturn(name);
    when(bundle.getLocation()).thenReturn(location);
    return bundle;
  }
}
