package org.fettlebench.command.internal;

import java.util.List;
import java.util.Map;
import org.fettlebench.command.Reply;
import org.fettlebench.command.Usage;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;

/** The help of one command, for people and for machines. */
final class HelpText {
  private HelpText() {}

  static Reply of(Usage usage) {
    CommandLine line = new CommandLine(Parser.spec(usage));
    String text = line.getUsageMessage(Ansi.OFF).replace("\r\n", "\n").stripTrailing();
    return Reply.done(text, data(usage));
  }

  static Map<String, Object> data(Usage usage) {
    return Data.of(
        "words", usage.words(),
        "purpose", usage.purpose(),
        "synopsis", usage.synopsis(),
        "example", usage.example(),
        "operands", usage.operands().stream().map(HelpText::data).toList(),
        "options", usage.options().stream().map(HelpText::data).toList());
  }

  private static Map<String, Object> data(Usage.Operand operand) {
    return Data.of(
        "name", operand.name(),
        "purpose", operand.purpose(),
        "required", operand.required(),
        "many", operand.many());
  }

  private static Map<String, Object> data(Usage.Option option) {
    return Data.of("name", option.name(), "value", option.value(), "purpose", option.purpose());
  }

  /** Returns what is printed around picocli's own lists. */
  static List<String> footer(Usage usage) {
    return List.of("", "Example:", "  fettlebench " + usage.example());
  }
}
