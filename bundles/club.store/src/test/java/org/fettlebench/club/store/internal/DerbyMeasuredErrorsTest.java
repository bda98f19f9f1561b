package org.fettlebench.club.store.internal;

import java.nio.file.Path;
import org.fettlebench.club.contract.MeasuredErrorsContractTest;
import org.fettlebench.store.StoreEngine;
import org.fettlebench.store.derby.internal.DerbyStoreEngine;

class DerbyMeasuredErrorsTest extends MeasuredErrorsContractTest {
  @Override
  protected StoreEngine openEngine(Path directory) {
    return FreshDerby.open(directory);
  }

  @Override
  protected void closeEngine(StoreEngine opened) {
    ((DerbyStoreEngine) opened).close();
  }
}
