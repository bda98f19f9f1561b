package org.fettlebench.kits.internal;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.fettlebench.kits.Fastener;
import org.fettlebench.measure.Length;
import org.fettlebench.threads.ScrewThread;
import org.tomlj.TomlTable;

/** Reads a fastener of a kit file, as a text or as a table. */
final class FastenerReader {
  private final Trade trade;
  private final GoodsWords words;

  FastenerReader(Trade trade) {
    this.trade = trade;
    this.words = new GoodsWords(trade);
  }

  Optional<Fastener> read(Section section) {
    Optional<Object> value =
        section.required("fastener", "Write fastener = \"2 BA hexagon x 1/2 in steel\"");
    if (value.isEmpty()) {
      return Optional.empty();
    }
    if (value.get() instanceof String text) {
      return ofText(section, text);
    }
    if (value.get() instanceof TomlTable) {
      return ofTable(section);
    }
    section.fault(
        "fastener",
        "must be a text or a table, not " + Section.kind(value.get()),
        GoodsWords.EXAMPLE);
    return Optional.empty();
  }

  private Optional<Fastener> ofText(Section section, String text) {
    try {
      return Optional.of(words.fastener(text));
    } catch (IllegalArgumentException refused) {
      String[] said = refused.getMessage().split("; ", 2);
      section.fault(
          "fastener", "cannot be read: " + said[0], said.length > 1 ? said[1] : GoodsWords.EXAMPLE);
      return Optional.empty();
    }
  }

  private Optional<Fastener> ofTable(Section section) {
    Optional<Section> table = section.table("fastener");
    if (table.isEmpty()) {
      return Optional.empty();
    }
    Section fastener = table.get();
    Optional<String> thread = thread(fastener).map(ScrewThread::designation);
    Optional<String> style = style(fastener);
    Optional<Length> length = fastener.positive("length");
    String material = fastener.text("material").orElse("");
    fastener.done();
    return thread.isPresent() && style.isPresent() && length.isPresent() == fastener.has("length")
        ? Optional.of(new Fastener(thread.get(), style.get(), length, material))
        : Optional.empty();
  }

  Optional<ScrewThread> thread(Section section) {
    Optional<String> text = section.requiredText("thread", "Write thread = \"2 BA\"");
    Optional<ScrewThread> thread = text.flatMap(trade.threads()::find);
    if (text.isPresent() && thread.isEmpty()) {
      section.fault("thread", "is no thread of a known series", trade.nearThreads(text.get()));
    }
    return thread;
  }

  Optional<String> style(Section section) {
    Optional<String> text = section.requiredText("style", "Write style = \"hexagon\"");
    Map<String, String> known = trade.styleWords();
    Optional<String> style = text.map(words -> known.get(words.toLowerCase(Locale.ROOT)));
    if (text.isPresent() && style.isEmpty()) {
      section.fault(
          "style",
          "is no known head, nut or washer",
          "Known are " + String.join(", ", trade.styles()));
    }
    return style;
  }
}
