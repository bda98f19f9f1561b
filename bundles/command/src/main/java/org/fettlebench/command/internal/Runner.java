package org.fettlebench.command.internal;

import java.io.InputStream;
import java.io.PrintStream;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToIntFunction;
import org.fettlebench.command.Call;
import org.fettlebench.command.Command;
import org.fettlebench.command.Reply;
import org.fettlebench.modules.Faults;
import org.osgi.framework.BundleContext;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/**
 * Runs one call of the command line.
 *
 * <p>The call comes as a map, because the launcher that makes it shares only the JDK's types with
 * the bundles: {@code args} (a list of texts), {@code cwd} (where the person stands), {@code in},
 * {@code out} and {@code err}. The streams may belong to another process, so nothing here touches
 * the streams of this one. Any number of calls may run at a time.
 */
@Component(service = ToIntFunction.class, property = "fettlebench.main=command")
public final class Runner implements ToIntFunction<Map<String, Object>> {
  /** Exit status for bad input or use. */
  static final int BAD = 2;

  private final Commands commands;
  private final Faults faults;
  private final String log;

  /** Made by the framework. */
  @Activate
  public Runner(BundleContext context, @Reference Commands commands, @Reference Faults faults) {
    this(commands, faults, logPlace(context));
  }

  /** Makes a runner that names {@code log} as the place where more can be read. */
  Runner(Commands commands, Faults faults, String log) {
    this.commands = commands;
    this.faults = faults;
    this.log = log;
  }

  private static String logPlace(BundleContext context) {
    String said = context.getProperty("fettlebench.log");
    return said != null ? said : context.getProperty("fettlebench.data") + "/log/fettlebench.log";
  }

  @Override
  public int applyAsInt(Map<String, Object> call) {
    List<String> args = ((List<?>) call.get("args")).stream().map(String::valueOf).toList();
    Printer printer =
        new Printer(
            (PrintStream) call.get("out"),
            (PrintStream) call.get("err"),
            // Even a call whose words cannot be read is answered in the way it asked for.
            args.contains("--json"));
    try {
      Place place =
          new Place(
              String.valueOf(call.get("cwd")),
              (InputStream) call.get("in"),
              (PrintStream) call.get("err"));
      return run(Asked.of(args), place, printer);
    } catch (RuntimeException e) {
      return fail(e, printer);
    }
  }

  private int run(Asked asked, Place place, Printer printer) {
    Optional<Command> found = commands.longest(asked.words());
    if (found.isEmpty()) {
      return new Guide(commands.all()).answer(asked, printer);
    }
    Command command = found.get();
    if (asked.help()) {
      return printer.print(HelpText.of(command.usage()));
    }
    ParsedCall call = Parser.parse(command.usage(), asked, place, printer.stream());
    return printer.print(reply(command, call));
  }

  private Reply reply(Command command, Call call) {
    try {
      Reply reply = command.run(call);
      // What the command made must also be printable before anything is printed.
      JsonText.of(reply.data());
      return reply;
    } catch (RuntimeException | LinkageError | StackOverflowError | AssertionError e) {
      if (Errors.isForPeople(e)) {
        throw e;
      }
      String words = command.usage().words();
      faults.report(command, "running the command " + words, e);
      throw new org.fettlebench.command.CommandException(
          Messages.commandFailed(words, String.valueOf(e), log), e);
    }
  }

  private int fail(RuntimeException e, Printer printer) {
    if (!Errors.isForPeople(e)) {
      faults.report(this, "reading a call", e);
      return printer.complain(
          Errors.of(
              new org.fettlebench.command.CommandException(
                  Messages.callFailed(String.valueOf(e), log), e)));
    }
    return printer.complain(Errors.of(e));
  }
}
