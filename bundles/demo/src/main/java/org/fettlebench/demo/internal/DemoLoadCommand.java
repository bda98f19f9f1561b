package org.fettlebench.demo.internal;

import java.util.LinkedHashMap;
import java.util.Map;
import org.fettlebench.club.Stock;
import org.fettlebench.command.Call;
import org.fettlebench.command.Command;
import org.fettlebench.command.CommandException;
import org.fettlebench.command.Reply;
import org.fettlebench.command.Usage;
import org.fettlebench.kits.DemoClub;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Loads the invented club from the command line. */
@Component
public class DemoLoadCommand implements Command {
  private static final String BESIDE = "--beside";

  private final DemoClub demo;
  private final Stock stock;

  /** Takes what it loads into. */
  @Activate
  public DemoLoadCommand(@Reference DemoClub demo, @Reference Stock stock) {
    this.demo = demo;
    this.stock = stock;
  }

  @Override
  public Usage usage() {
    return Usage.of(
            "demo load",
            "Puts an invented club's stock and kit in, to try the suite on.",
            "demo load")
        .flag(BESIDE, "put it among the stock that the club has already");
  }

  @Override
  public Reply run(Call call) {
    boolean before = demo.loaded();
    int own = stock.lines().size();
    if (!before && own > 0 && !call.on(BESIDE)) {
      throw new CommandException(
          "the club has "
              + own
              + (own == 1 ? " stock line" : " stock lines")
              + " of its own, and what is invented could not be told from it any more; load the"
              + " demo into a folder of its own with --data DIR, or say --beside to mix them");
    }
    demo.load();
    int lines = stock.lines().size();
    Map<String, Object> data = new LinkedHashMap<>();
    data.put("kit", demo.kitName());
    data.put("loadedBefore", before);
    data.put("stockLines", lines);
    return Reply.done(
        before
            ? "The demo is there already: kit " + demo.kitName() + "."
            : "The demo is loaded: kit " + demo.kitName() + ", " + lines + " stock lines.",
        data);
  }
}
