package org.fettlebench.command.internal.suite;

import org.fettlebench.command.Call;
import org.fettlebench.command.Command;
import org.fettlebench.command.Reply;
import org.fettlebench.command.Usage;
import org.fettlebench.command.internal.Columns;
import org.fettlebench.command.internal.Commands;
import org.fettlebench.command.internal.Data;
import org.fettlebench.modules.Modules;
import org.fettlebench.store.StoreEngine;
import org.osgi.framework.BundleContext;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Says which suite this is and where it keeps things. */
@Component(property = Commands.WORDS + "=about")
public final class About implements Command {
  private static final Usage USAGE =
      Usage.of("about", "Says which version this is and where it keeps things.", "about");

  private final String version;
  private final String data;
  private final StoreEngine engine;
  private final Modules modules;

  /** Made by the framework. */
  @Activate
  public About(BundleContext context, @Reference StoreEngine engine, @Reference Modules modules) {
    this(
        context.getBundle().getVersion().toString(),
        String.valueOf(context.getProperty("fettlebench.data")),
        engine,
        modules);
  }

  About(String version, String data, StoreEngine engine, Modules modules) {
    this.version = version;
    this.data = data;
    this.engine = engine;
    this.modules = modules;
  }

  @Override
  public Usage usage() {
    return USAGE;
  }

  @Override
  public Reply run(Call call) {
    String java = Runtime.version().toString();
    String text =
        new Columns()
            .row("Fettlebench", version)
            .row("club's folder", data)
            .row("store", engine.description())
            .row("modules folder", modules.folder())
            .row("Java", java)
            .text();
    return Reply.done(
        text,
        Data.of(
            "version", version,
            "data", data,
            "store", engine.description(),
            "modulesFolder", modules.folder().toString(),
            "java", java));
  }
}
