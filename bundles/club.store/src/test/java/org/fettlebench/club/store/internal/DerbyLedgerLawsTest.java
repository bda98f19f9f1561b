package org.fettlebench.club.store.internal;

import java.nio.file.Path;
import org.fettlebench.club.contract.LedgerLawsContractTest;
import org.fettlebench.store.StoreEngine;
import org.fettlebench.store.derby.internal.DerbyStoreEngine;

class DerbyLedgerLawsTest extends LedgerLawsContractTest {
  @Override
  protected StoreEngine openEngine(Path directory) {
    return FreshDerby.open(directory);
  }

  @Override
  protected void closeEngine(StoreEngine opened) {
    ((DerbyStoreEngine) opened).close();
  }
}
