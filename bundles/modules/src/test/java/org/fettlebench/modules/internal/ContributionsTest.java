package org.fettlebench.modules.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.ArgumentMatchers.eq;
import static org.mockito.Mockito.doReturn;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.times;
import static org.mockito.Mockito.verify;
import static org.mockito.Mockito.when;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fettlebench.command.Command;
import org.fettlebench.command.Usage;
import org.fettlebench.desktop.Page;
import org.fettlebench.kits.JointRule;
import org.fettlebench.modules.Faults;
import org.fettlebench.tables.FixedTables;
import org.fettlebench.tables.Source;
import org.fettlebench.tables.Standing;
import org.fettlebench.tables.Table;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.ServiceReference;

/** Against the real extension points, which the code under test knows by name only. */
class ContributionsTest {
  private final BundleContext context = mock();
  private final Faults faults = mock();
  private final Bundle club = mock();
  private final Contributions contributions = new Contributions(context, faults);

  @BeforeEach
  void nameTheModule() {
    when(club.getSymbolicName()).thenReturn("club.module");
  }

  private ServiceReference<?> offer(Class<?> type, Object service) {
    ServiceReference<?> reference = mock();
    when(reference.getProperty("objectClass")).thenReturn(new String[] {type.getName()});
    when(reference.getProperty("service.id")).thenReturn((long) type.hashCode());
    doReturn(club).when(reference).getBundle();
    doReturn(service).when(context).getService(reference);
    return reference;
  }

  private List<String> of(FixedTables tables, ServiceReference<?>... services) {
    when(club.getRegisteredServices()).thenReturn(services);
    return contributions.of(club, Optional.of(tables));
  }

  @Test
  void tellsTablesAndServicesInWordsOfTheTrade() {
    JointRule rule = mock();
    when(rule.title()).thenReturn("least edge");
    Command command = mock();
    when(command.usage())
        .thenReturn(new Usage("club rules", "Lists them.", "club rules", List.of(), List.of()));
    Page page = mock();
    when(page.title()).thenReturn("Club night");
    Source source = new Source("invented", Standing.MEASURED);
    FixedTables tables =
        FixedTables.of(
            List.of(
                new Table(
                    "thread-series",
                    "C",
                    "Club 36 tpi",
                    source,
                    Map.of(),
                    List.of(),
                    "club.module"),
                new Table("odd-things", "O", "Odd", source, Map.of(), List.of(), "club.module"),
                new Table("drills", "D", "Drills", source, Map.of(), List.of(), "other")));
    assertEquals(
        List.of(
            "odd things: Odd",
            "thread series: Club 36 tpi",
            "command: club rules",
            "kit check rule: least edge",
            "page: Club night"),
        of(
            tables,
            offer(Page.class, page),
            offer(Command.class, command),
            offer(JointRule.class, rule),
            offer(Runnable.class, (Runnable) () -> {})));
  }

  @Test
  void aContributionWithoutAUsableNameIsListedAndReportedOnce() {
    JointRule broken = mock();
    when(broken.title()).thenThrow(new IllegalStateException("no title"));
    JointRule nameless = mock();
    FixedTables none = FixedTables.of(List.of());
    ServiceReference<?> brokenOffer = offer(JointRule.class, broken);
    assertEquals(List.of("kit check rule"), of(none, brokenOffer));
    assertEquals(List.of("kit check rule"), of(none, brokenOffer));
    verify(faults, times(1))
        .report(eq(club), eq("asking for the name of its kit check rule"), any());
    assertEquals(List.of("page"), of(none, offer(Page.class, null)));
    assertEquals(List.of("command"), of(none, offer(Command.class, nameless)));
  }

  @Test
  void aModuleThatAddsNothingHasAnEmptyList() {
    when(club.getRegisteredServices()).thenReturn(null);
    assertEquals(List.of(), contributions.of(club, Optional.empty()));
  }
}
