package org.fettlebench.launcher.fake;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Dictionary;
import java.util.Hashtable;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.function.ToIntFunction;
import org.osgi.framework.BundleActivator;
import org.osgi.framework.BundleContext;

/** Stands in for the suite's bundles: offers the three services that the launcher calls. */
public final class FakeSuite implements BundleActivator {
  private final CountDownLatch closed = new CountDownLatch(1);
  private Path data;

  @Override
  public void start(BundleContext context) {
    data = Path.of(context.getProperty("fettlebench.data"));
    ToIntFunction<Map<String, Object>> command = this::run;
    context.registerService(ToIntFunction.class, command, main("command"));
    Callable<Integer> desktop = this::show;
    context.registerService(Callable.class, desktop, main("desktop"));
    Runnable front = () -> write("fronted");
    context.registerService(Runnable.class, front, main("front"));
  }

  private static Dictionary<String, String> main(String name) {
    return new Hashtable<>(Map.of("fettlebench.main", name));
  }

  private int run(Map<String, Object> call) {
    List<?> words = (List<?>) call.get("args");
    PrintStream out = (PrintStream) call.get("out");
    System.out.println("stray words on the standard output");
    switch (words.get(0).toString()) {
      case "say" -> out.println(words.subList(1, words.size()) + " in " + call.get("cwd"));
      case "copy" -> copy((InputStream) call.get("in"), out);
      case "close" -> closed.countDown();
      case "wait" -> await(write("waiting"));
      default -> ((PrintStream) call.get("err")).println("not known");
    }
    return words.size() - 1;
  }

  private Integer show() {
    await(write("shown"));
    return 0;
  }

  private int await(Path told) {
    try {
      closed.await();
      return Files.exists(told) ? 0 : 1;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return 1;
    }
  }

  private static void copy(InputStream in, PrintStream out) {
    try {
      in.transferTo(out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private Path write(String name) {
    try {
      return Files.writeString(data.resolve(name), "");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public void stop(BundleContext context) {
    write("stopped");
    closed.countDown();
  }
}
