package org.fettlebench.modules.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.when;

import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.fettlebench.modules.Module;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.osgi.framework.Bundle;

class FaultLogTest {
  private final FaultLog log = new FaultLog();
  private final Bundle club = mock();

  @BeforeEach
  void nameTheModule() {
    when(club.getSymbolicName()).thenReturn("club.rule");
  }

  private List<String> said() {
    return log.of("club.rule").stream().map(Module.Fault::said).toList();
  }

  @Test
  void keepsTheNewestFirst() {
    log.report(club, "checking joint Gland", new IllegalStateException("no seat"));
    log.report(club, "checking joint Cover", new ArithmeticException("/ by zero"));
    log.report(club, "checking joint Cover", new NullPointerException());
    assertEquals(
        List.of("NullPointerException", "ArithmeticException: / by zero", "no seat"), said());
    assertEquals("checking joint Gland", log.of("club.rule").get(2).doing());
    assertEquals(List.of(), log.of("club.other"));
  }

  @Test
  void oneThatHappensAgainMovesToTheFrontAndIsNoNews() {
    AtomicInteger told = new AtomicInteger();
    log.watch(told::incrementAndGet);
    log.report(club, "checking", new IllegalStateException("one"));
    log.report(club, "checking", new IllegalStateException("two"));
    log.report(club, "checking", new IllegalStateException("one"));
    assertEquals(List.of("one", "two"), said());
    assertEquals(2, told.get());
  }

  @Test
  void isBounded() {
    for (int i = 0; i <= FaultLog.KEPT_OF_EACH_MODULE; i++) {
      log.report(club, "checking", new IllegalStateException("fault " + i));
    }
    assertEquals(FaultLog.KEPT_OF_EACH_MODULE, said().size());
    assertEquals("fault 50", said().get(0));
    assertEquals("fault 1", said().get(49));
  }

  @Test
  void keepsWhatBelongsToNoBundleUnderTheSuite() {
    log.report("a text", "looking about", new IllegalStateException("odd"));
    assertEquals(1, log.of("org.fettlebench.modules").size());
  }
}
