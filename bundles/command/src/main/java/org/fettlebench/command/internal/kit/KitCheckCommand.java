package org.fettlebench.command.internal.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.fettlebench.club.KitShelf;
import org.fettlebench.club.MeasuredErrors;
import org.fettlebench.club.Stock;
import org.fettlebench.command.Call;
import org.fettlebench.command.Command;
import org.fettlebench.command.CommandException;
import org.fettlebench.command.Reply;
import org.fettlebench.command.Usage;
import org.fettlebench.command.internal.Commands;
import org.fettlebench.command.internal.Data;
import org.fettlebench.kits.Holdings;
import org.fettlebench.kits.Joint;
import org.fettlebench.kits.JointReport;
import org.fettlebench.kits.Kit;
import org.fettlebench.kits.KitCheck;
import org.fettlebench.kits.KitFiles;
import org.fettlebench.kits.KitReport;
import org.fettlebench.kits.KitReports;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Checks a kit, joint by joint, against what the club holds now. */
@Component(property = Commands.WORDS + "=kit check")
public final class KitCheckCommand implements Command {
  private static final Usage USAGE =
      Usage.of(
              "kit check",
              "Checks a kit joint by joint against what the club holds now.",
              "kit check pump.kit.toml")
          .may("FILE", "a kit file; - for piped in")
          .option("--shelf", "NAME", "the kit of that name on the club's shelf instead of a file")
          .flag("--all", "all kits on the club's shelf instead of a file")
          .flag("--keep", "put the kit on the club's shelf too, when its file is sound")
          .option("--joint", "NAME", "one joint only")
          .option(KitPapers.CARD, "PDF", "write the bench card of that joint there")
          .option(KitPapers.REPORT, "PDF", "write the report of the whole kit there");

  private final KitFiles files;
  private final KitCheck check;
  private final KitReports reports;
  private final Stock stock;
  private final MeasuredErrors errors;
  private final KitShelf shelf;
  private final KitPapers papers;

  /** Made by the framework. */
  @Activate
  public KitCheckCommand(
      @Reference KitFiles files,
      @Reference KitCheck check,
      @Reference KitReports reports,
      @Reference Stock stock,
      @Reference MeasuredErrors errors,
      @Reference KitShelf shelf,
      @Reference KitPapers papers) {
    this.files = files;
    this.check = check;
    this.reports = reports;
    this.stock = stock;
    this.errors = errors;
    this.shelf = shelf;
    this.papers = papers;
  }

  @Override
  public Usage usage() {
    return USAGE;
  }

  @Override
  public Reply run(Call call) {
    long sources =
        List.of(
                call.operand("FILE").isPresent(),
                call.option("--shelf").isPresent(),
                call.on("--all"))
            .stream()
            .filter(said -> said)
            .count();
    if (sources != 1) {
      throw new CommandException(
          "say which kit: a FILE, --shelf NAME or --all. Example: fettlebench " + USAGE.example());
    }
    return call.on("--all") ? checkAll(call) : checkOne(call);
  }

  private Reply checkOne(Call call) {
    String text = call.operand("FILE").isPresent() ? fileText(call) : kept(call).text();
    Kit kit =
        files.readKit(call.operand("FILE").or(() -> call.option("--shelf")).orElseThrow(), text);
    KitReport whole = check.check(kit, new Holdings(stock.lines(), errors.all()));
    KitReport report = call.option("--joint").map(name -> only(whole, name)).orElse(whole);
    Map<String, Object> data = reports.data(report);
    List<String> told = new ArrayList<>();
    told.add(reports.text(report, call.unit()));
    told.addAll(papers.write(call, whole, report.joints()));
    if (call.on("--keep")) {
      boolean replaced = shelf.keep(kit.name(), text).isPresent();
      told.add(kit.name() + " is on the shelf" + (replaced ? " in place of the older one" : ""));
    }
    return Reply.of(report.wanting(), String.join("\n", told), data);
  }

  private String fileText(Call call) {
    return call.operand("FILE").filter("-"::equals).isPresent()
        ? call.text("FILE")
        : files.text(call.file("FILE"));
  }

  private KitShelf.KeptKit kept(Call call) {
    String name = call.option("--shelf").orElseThrow();
    return shelf.kit(name).orElseThrow(() -> new CommandException(KitShelfWords.none(shelf, name)));
  }

  private Reply checkAll(Call call) {
    if (call.on("--keep") || call.option("--joint").isPresent() || KitPapers.asked(call)) {
      throw new CommandException("--all takes none of --keep, --joint, --card and --report");
    }
    List<KitReport> all = new ArrayList<>();
    Holdings holdings = new Holdings(stock.lines(), errors.all());
    for (KitShelf.KeptKit kept : shelf.kits()) {
      all.add(check.check(files.readKit(kept.name(), kept.text()), holdings));
    }
    String text =
        all.isEmpty()
            ? KitShelfWords.EMPTY
            : all.stream()
                .map(report -> reports.text(report, call.unit()))
                .collect(Collectors.joining("\n\n"));
    return Reply.of(
        all.stream().anyMatch(KitReport::wanting),
        text,
        Data.of("kits", all.stream().map(reports::data).toList()));
  }

  /** Leaves one joint of a report, and of the shortages those that it is part of. */
  private static KitReport only(KitReport report, String name) {
    List<JointReport> joint =
        report.joints().stream().filter(j -> j.joint().name().equalsIgnoreCase(name)).toList();
    if (joint.isEmpty()) {
      throw new CommandException(
          "the kit has no joint \""
              + name
              + "\"; its joints are "
              + report.joints().stream()
                  .map(JointReport::joint)
                  .map(Joint::name)
                  .collect(Collectors.joining(", ")));
    }
    String found = joint.get(0).joint().name();
    return new KitReport(
        report.kit(),
        joint,
        report.shortages().stream().filter(s -> s.joints().contains(found)).toList(),
        report.cautions());
  }
}
