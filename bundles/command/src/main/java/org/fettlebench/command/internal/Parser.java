package org.fettlebench.command.internal;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.fettlebench.command.CommandException;
import org.fettlebench.command.Usage;
import picocli.CommandLine;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;

/** Takes the words behind a command apart, as its usage says. */
final class Parser {
  private static final int HELP_WIDTH = 90;

  private Parser() {}

  /**
   * Takes a call apart.
   *
   * @throws CommandException when something is missing, too much or not known
   */
  static ParsedCall parse(Usage usage, Asked asked, Place place, PrintStream out) {
    List<String> rest = asked.rest().subList(usage.words().split(" ").length, asked.rest().size());
    refuseFlagsWithValue(usage, rest);
    Map<String, List<String>> values = new HashMap<>();
    try {
      ParseResult result =
          new CommandLine(spec(usage))
              .setPosixClusteredShortOptionsAllowed(false)
              // A word that begins with @ is a word, not the name of a file with more words.
              .setExpandAtFiles(false)
              .setInterpolateVariables(false)
              .parseArgs(rest.toArray(String[]::new));
      for (Usage.Option option : usage.options()) {
        if (result.hasMatchedOption(option.name())) {
          Object value = result.matchedOptionValue(option.name(), (Object) "");
          values.put(option.name(), List.of(value.toString()));
        }
      }
      values.putAll(operands(usage, words(result)));
    } catch (ParameterException e) {
      throw new CommandException(explain(usage, e), e);
    }
    return new ParsedCall(usage, values, asked, place, out);
  }

  private static void refuseFlagsWithValue(Usage usage, List<String> rest) {
    List<String> options = rest.stream().takeWhile(word -> !word.equals("--")).toList();
    for (Usage.Option option : usage.options()) {
      if (option.value().isEmpty()
          && options.stream().anyMatch(word -> word.startsWith(option.name() + "="))) {
        throw new CommandException(Messages.flagWithValue(option.name()));
      }
    }
  }

  private static List<String> words(ParseResult result) {
    return result.matchedPositionalsSet().stream()
        .filter(PositionalParamSpec::hidden)
        .findFirst()
        .map(all -> all.originalStringValues())
        .orElse(List.of());
  }

  /** Shares the words out among the operands; one that takes many gets what the others leave. */
  private static Map<String, List<String>> operands(Usage usage, List<String> words) {
    Map<String, List<String>> values = new HashMap<>();
    int next = 0;
    for (int i = 0; i < usage.operands().size(); i++) {
      Usage.Operand operand = usage.operands().get(i);
      int free = Math.max(0, words.size() - next - reserved(usage, i));
      int taken = operand.many() ? free : Math.min(1, free);
      if (taken == 0 && operand.required()) {
        throw new CommandException(
            Messages.operandMissing(
                usage.words(), operand.name(), operand.purpose(), usage.example()));
      }
      if (taken > 0) {
        values.put(operand.name(), new ArrayList<>(words.subList(next, next + taken)));
      }
      next += taken;
    }
    if (next < words.size()) {
      throw new CommandException(
          Messages.tooManyWords(usage.words(), words.get(next), usage.synopsis()));
    }
    return values;
  }

  /** Returns how many words the operands behind one must be left. */
  private static int reserved(Usage usage, int index) {
    // One word that may be there waits for those that must; one that takes many, for all others.
    boolean many = usage.operands().get(index).many();
    return (int)
        usage.operands().stream()
            .skip(index + 1L)
            .filter(later -> many || later.required())
            .count();
  }

  private static String explain(Usage usage, ParameterException e) {
    List<String> known = usage.options().stream().map(Usage.Option::synopsis).toList();
    if (e instanceof UnmatchedArgumentException unmatched) {
      String word = unmatched.getUnmatched().get(0);
      return Messages.noSuchOption(usage.words(), word, known);
    }
    if (e instanceof OverwrittenOptionException twice) {
      return Messages.optionTwice(((OptionSpec) twice.getOverwritten()).longestName());
    }
    if (e instanceof MissingParameterException missing) {
      String name = ((OptionSpec) missing.getMissing().get(0)).longestName();
      return Messages.valueMissing(name, valueOf(usage, name));
    }
    return e.getMessage();
  }

  private static String valueOf(Usage usage, String name) {
    return usage.options().stream()
        .filter(option -> option.name().equals(name))
        .map(Usage.Option::value)
        .findFirst()
        .orElse("a value");
  }

  /** Returns the usage as picocli knows it, for taking words apart and for making help. */
  static CommandSpec spec(Usage usage) {
    CommandSpec spec = CommandSpec.create().name("fettlebench " + usage.words());
    usage.options().forEach(option -> spec.addOption(option(option)));
    // Takes all words; the operands below only show up in help, since theirs overlap.
    spec.addPositional(
        PositionalParamSpec.builder()
            .index("0..*")
            .arity("0..*")
            .type(List.class)
            .auxiliaryTypes(String.class)
            .hidden(true)
            .build());
    for (int i = 0; i < usage.operands().size(); i++) {
      spec.addPositional(operand(usage.operands().get(i), i));
    }
    spec.usageMessage()
        .width(HELP_WIDTH)
        .description(escaped(usage.purpose()))
        .customSynopsis(escaped("fettlebench " + usage.synopsis()))
        .synopsisHeading("")
        .parameterListHeading("%n")
        .optionListHeading("%n")
        .footer(HelpText.footer(usage).stream().map(Parser::escaped).toArray(String[]::new));
    return spec;
  }

  private static OptionSpec option(Usage.Option option) {
    OptionSpec.Builder builder =
        OptionSpec.builder(option.name()).description(escaped(option.purpose()));
    return option.value().isEmpty()
        ? builder.arity("0").type(boolean.class).build()
        : builder.arity("1").type(String.class).paramLabel(option.value()).build();
  }

  private static PositionalParamSpec operand(Usage.Operand operand, int index) {
    return PositionalParamSpec.builder()
        .index(index + "..*")
        .arity("0..*")
        .type(List.class)
        .auxiliaryTypes(String.class)
        .paramLabel(operand.name())
        .hideParamSyntax(true)
        .description(escaped(operand.purpose()))
        .build();
  }

  /** Returns text with per cent signs kept from being taken for a format. */
  private static String escaped(String text) {
    return text.replace("%", "%%");
  }
}
