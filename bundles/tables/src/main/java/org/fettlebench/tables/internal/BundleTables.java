package org.fettlebench.tables.internal;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Enumeration;
import java.util.List;
import java.util.Optional;
import org.fettlebench.modules.Faults;
import org.fettlebench.tables.Table;
import org.fettlebench.tables.TableFile;
import org.fettlebench.tables.TableFormatException;
import org.osgi.framework.Bundle;

/** Reads the tables of one bundle; what is faulty is reported and left out. */
final class BundleTables {
  private static final String FOLDER = "FETTLEBENCH/tables";

  private final Faults faults;

  BundleTables(Faults faults) {
    this.faults = faults;
  }

  List<Table> read(Bundle bundle) {
    Enumeration<URL> files = bundle.findEntries(FOLDER, "*.csv", false);
    if (files == null) {
      return List.of();
    }
    List<Table> tables = new ArrayList<>();
    for (URL file : Collections.list(files)) {
      read(bundle, file).ifPresent(tables::add);
    }
    return tables;
  }

  private Optional<Table> read(Bundle bundle, URL file) {
    String name = FOLDER + file.getPath().substring(file.getPath().lastIndexOf('/'));
    try (Reader text = new InputStreamReader(file.openStream(), StandardCharsets.UTF_8)) {
      return Optional.of(TableFile.read(name, bundle.getSymbolicName(), text));
    } catch (IOException | TableFormatException refused) {
      faults.report(bundle, "reading the table " + name, refused);
      return Optional.empty();
    }
  }
}
