package org.fettlebench.command.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fettlebench.command.Command;
import org.fettlebench.command.internal.Session.Answer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Types every example of the page on the command line, in order, and compares the answers. With
 * {@code -Dguide.write=true} the answers are written into the page instead.
 */
class CommandLineGuideTest {
  private static final Path PAGE = Path.of("../../docs/command-line.md");
  private static final Path FILES = Path.of("src/test/resources/guide");
  private static final Pattern BLOCK = Pattern.compile("(?s)```console\n(.*?)```");
  private static final String PROMPT = "$ fettlebench ";

  @TempDir Path folder;

  @Test
  void thePageShowsWhatIsAnswered() throws IOException {
    String page = Files.readString(PAGE);
    String answered;
    try (FreshClub club = new FreshClub(folder)) {
      Command[] commands = AllCommands.of(club, folder);
      Session session = new Session(commands).in(FILES.toAbsolutePath().toString());
      Answer stocked = session.type("stock", "receive", "--file", "stock.csv");
      assertEquals("", stocked.err());
      answered =
          BLOCK
              .matcher(page)
              .replaceAll(block -> Matcher.quoteReplacement(answer(session, block.group(1))));
      assertEquals(List.of(), session.reported());
    }
    if (Boolean.getBoolean("guide.write")) {
      Files.writeString(PAGE, answered);
    }
    assertEquals(Files.readString(PAGE), answered);
  }

  @Test
  void thePageNamesEveryCommand() throws IOException {
    String page = Files.readString(PAGE);
    try (FreshClub club = new FreshClub(folder)) {
      for (Command command : AllCommands.of(club, folder)) {
        String words = command.usage().words();
        assertTrue(Pattern.compile("[` ]" + words + "[` \n]").matcher(page).find(), words);
      }
    }
  }

  @Test
  void everyExampleInTheHelpIsTakenApartAsItSays() throws IOException {
    try (FreshClub club = new FreshClub(folder)) {
      for (Command command : AllCommands.of(club, folder)) {
        String example = command.usage().example().replaceAll(" > .*", "");
        Asked asked = Asked.of(words(example));
        Parser.parse(command.usage(), asked, new Place("/", System.in, System.err), System.out);
      }
    }
  }

  private String answer(Session session, String block) {
    StringBuilder text = new StringBuilder("```console\n");
    for (String line : block.lines().filter(l -> l.startsWith(PROMPT)).toList()) {
      Answer answer = session.type(words(line.substring(PROMPT.length())).toArray(String[]::new));
      text.append(line).append('\n');
      text.append(masked(answer.out())).append(masked(answer.err()));
      if (answer.status() != 0) {
        text.append("(exit status ").append(answer.status()).append(")\n");
      }
    }
    return text.append("```").toString();
  }

  /** Takes a line apart as a shell does, as far as the page needs it. */
  private static List<String> words(String line) {
    List<String> words = new ArrayList<>();
    Matcher word = Pattern.compile("\"([^\"]*)\"|(\\S+)").matcher(line);
    while (word.find()) {
      words.add(word.group(1) != null ? word.group(1) : word.group(2));
    }
    return words;
  }

  /** Puts what differs from machine to machine and from day to day in the same words. */
  private String masked(String text) {
    return text.replace(FILES.toAbsolutePath().normalize().toString(), "/home/ann/pump")
        .replace(folder.toString(), "/home/ann/.local/share/fettlebench/club")
        .replace(Runtime.version().toString(), "17.0.15+6")
        .replaceAll("\\d{4}-\\d\\d-\\d\\d \\d\\d:\\d\\d", "2026-11-26 19:30")
        .replaceAll("\\d{8}-\\d{6}", "20261126-193000")
        .replaceAll("\\d{4}-\\d\\d-\\d\\dT[\\d-]+Z?", "2026-11-26T193000");
  }
}
