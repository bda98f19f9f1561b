package org.fettlebench.command.internal.seat;

import org.fettlebench.fasteners.Heads;
import org.fettlebench.fits.Spanners;
import org.fettlebench.threads.Threads;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** What the tables know of threads, heads and spanners, for the cures of a seat. */
@Component(service = SeatTrade.class)
public final class SeatTrade {
  private final Threads threads;
  private final Heads heads;
  private final Spanners spanners;

  /** Made by the framework. */
  @Activate
  public SeatTrade(
      @Reference Threads threads, @Reference Heads heads, @Reference Spanners spanners) {
    this.threads = threads;
    this.heads = heads;
    this.spanners = spanners;
  }

  Threads threads() {
    return threads;
  }

  Heads heads() {
    return heads;
  }

  Spanners spanners() {
    return spanners;
  }
}
