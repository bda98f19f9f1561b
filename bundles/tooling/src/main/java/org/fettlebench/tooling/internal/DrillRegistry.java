package org.fettlebench.tooling.internal;

import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.regex.Pattern;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthReader;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.modules.Faults;
import org.fettlebench.tables.Table;
import org.fettlebench.tables.Tables;
import org.fettlebench.tooling.DrillSize;
import org.fettlebench.tooling.Drills;
import org.fettlebench.tooling.internal.DrillCatalogue.DrillSystem;
import org.osgi.framework.BundleContext;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** The drill systems out of all tables of kind {@code drills}. */
@Component
public final class DrillRegistry implements Drills {
  /** Without a unit and without a fraction a figure says nothing. */
  private static final Pattern UNIT_OR_FRACTION = Pattern.compile(".*[a-zA-Z\"'/\u00bc-\u00be].*");

  private final Kept<DrillSystem> systems;
  private List<DrillSystem> catalogued;
  private DrillCatalogue catalogue;

  /** Takes the tables of all started bundles and reports bad ones against their module. */
  @Activate
  public DrillRegistry(BundleContext context, @Reference Tables tables, @Reference Faults faults) {
    this(tables, Kept.reportingTo(faults, context));
  }

  /**
   * Takes tables without a framework.
   *
   * @param faulty told of each table that cannot be used
   */
  public DrillRegistry(Tables tables, BiConsumer<Table, RuntimeException> faulty) {
    this.systems = new Kept<>(tables, DrillCatalogue.KIND, DrillSystem::read, faulty);
  }

  @Override
  public List<DrillSize> catalogue() {
    return now().all();
  }

  @Override
  public Optional<DrillSize> find(String name) {
    DrillCatalogue now = now();
    return now.named(name).or(() -> length(name).map(this::ofDiameter));
  }

  private static Optional<Length> length(String name) {
    if (!UNIT_OR_FRACTION.matcher(name).matches()) {
      return Optional.empty();
    }
    try {
      return Optional.of(LengthReader.read(name)).filter(Length::isPositive);
    } catch (MeasureException noLength) {
      // What is neither a name nor a length is not found; absence is the answer.
      return Optional.empty();
    }
  }

  @Override
  public DrillSize ofDiameter(Length diameter) {
    return now()
        .exactly(diameter)
        .orElseGet(() -> new DrillSize(diameter, List.of(diameter.toString())));
  }

  @Override
  public List<DrillSize> near(Length diameter, int most) {
    return now().near(diameter, most);
  }

  private synchronized DrillCatalogue now() {
    List<DrillSystem> current = systems.now();
    if (current != catalogued) {
      catalogue = new DrillCatalogue(current);
      catalogued = current;
    }
    return catalogue;
  }
}
