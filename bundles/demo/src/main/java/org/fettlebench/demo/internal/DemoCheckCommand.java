package org.fettlebench.demo.internal;

import org.fettlebench.club.MeasuredErrors;
import org.fettlebench.club.Stock;
import org.fettlebench.command.Call;
import org.fettlebench.command.Command;
import org.fettlebench.command.CommandException;
import org.fettlebench.command.Reply;
import org.fettlebench.command.Usage;
import org.fettlebench.kits.DemoClub;
import org.fettlebench.kits.Holdings;
import org.fettlebench.kits.KitCheck;
import org.fettlebench.kits.KitFiles;
import org.fettlebench.kits.KitReport;
import org.fettlebench.kits.KitReports;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Checks the demo kit against the stock from the command line. */
@Component
public class DemoCheckCommand implements Command {
  private final DemoClub demo;
  private final Stock stock;
  private final MeasuredErrors errors;
  private final KitFiles files;
  private final KitCheck check;
  private final KitReports reports;

  /** Takes what it asks. */
  @Activate
  public DemoCheckCommand(
      @Reference DemoClub demo,
      @Reference Stock stock,
      @Reference MeasuredErrors errors,
      @Reference KitFiles files,
      @Reference KitCheck check,
      @Reference KitReports reports) {
    this.demo = demo;
    this.stock = stock;
    this.errors = errors;
    this.files = files;
    this.check = check;
    this.reports = reports;
  }

  @Override
  public Usage usage() {
    return Usage.of(
        "demo check",
        "Checks the demo kit against the stock; loads the demo first if nothing is held.",
        "demo check");
  }

  @Override
  public Reply run(Call call) {
    if (!demo.loaded()) {
      if (!stock.lines().isEmpty()) {
        throw new CommandException(
            "The demo is not loaded, and the club has stock of its own. Try it on another data"
                + " directory: demo check --data DIR; or say demo load --beside to put it among the stock.");
      }
      demo.load();
    }
    KitReport report =
        check.check(
            files.readKit(DemoFiles.KIT.file(), DemoFiles.KIT.text()),
            new Holdings(stock.lines(), errors.all()));
    return Reply.of(report.wanting(), reports.text(report, call.unit()), reports.data(report));
  }
}
