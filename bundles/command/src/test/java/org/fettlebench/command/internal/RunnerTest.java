package org.fettlebench.command.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.fettlebench.command.Call;
import org.fettlebench.command.Command;
import org.fettlebench.command.CommandException;
import org.fettlebench.command.Reply;
import org.fettlebench.command.Usage;
import org.fettlebench.command.internal.Session.Answer;
import org.fettlebench.kits.FaultyFileException;
import org.fettlebench.measure.MeasureException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RunnerTest {
  private static Command command(Usage usage, Function<Call, Reply> work) {
    return new Command() {
      @Override
      public Usage usage() {
        return usage;
      }

      @Override
      public Reply run(Call call) {
        return work.apply(call);
      }
    };
  }

  private static final Command ECHO =
      command(
          Usage.of("bench echo", "Says what it was told, 100 % of it.", "bench echo a b --loud")
              .needs("FIRST", "a word")
              .mayMany("MORE", "more words")
              .option("--place", "DRAWER", "where")
              .option("--count", "N", "how many")
              .option("--size", "LENGTH", "how big")
              .flag("--loud", "in capitals"),
          RunnerTest::echo);

  private static Reply echo(Call call) {
    Map<String, Object> data =
        Data.of(
            "first", call.operand("FIRST"),
            "more", call.operands("MORE"),
            "place", call.option("--place"),
            "count", call.whole("--count", 1, 9),
            "sizeMm", call.length("--size").map(Data::mm),
            "loud", call.on("--loud"),
            "unit", call.unit().symbol());
    return Reply.done(data.toString(), data);
  }

  private static Command failing(Throwable thrown) {
    return command(
        Usage.of("bench fail", "Fails.", "bench fail"),
        call -> {
          if (thrown instanceof Error error) {
            throw error;
          }
          throw (RuntimeException) thrown;
        });
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "bench echo a|{first=a, more=[], loud=false, unit=mm}",
        "bench echo a b c --loud|{first=a, more=[b, c], loud=true, unit=mm}",
        "--json bench echo a --unit in|{\"first\":\"a\",\"more\":[],\"loud\":false,\"unit\":\"in\"}",
        "bench echo --place D3 a|{first=a, more=[], place=D3, loud=false, unit=mm}",
        "bench echo --place=D3 a|{first=a, more=[], place=D3, loud=false, unit=mm}",
        "bench echo a --count 9|{first=a, more=[], count=9, loud=false, unit=mm}",
        "bench echo a --size 1/2|{first=a, more=[], sizeMm=12.7, loud=false, unit=mm}",
        "bench echo a --size 2 --unit in|{first=a, more=[], sizeMm=50.8, loud=false, unit=in}",
        "bench echo a --data /club|{first=a, more=[], loud=false, unit=mm}",
        "bench echo -- --loud -|{first=--loud, more=[-], loud=false, unit=mm}",
        "bench echo @a|{first=@a, more=[], loud=false, unit=mm}",
        "bench echo -|{first=-, more=[], loud=false, unit=mm}",
      })
  void takesWordsApart(String typed, String answer) {
    Answer got = new Session(ECHO).type(typed.split(" "));
    assertEquals("", got.err());
    assertEquals(
        answer, got.out().strip().replaceAll("\\s*\\n\\s*| (?=[:\\]])|(?<=:) ", ""), typed);
    assertEquals(0, got.status());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "bench echo|bench echo needs FIRST: a word. Example: fettlebench bench echo a b --loud",
        "bench echo a --quiet|bench echo has no option --quiet; it knows --place DRAWER, --count N,"
            + " --size LENGTH, --loud",
        "bench echo a --loud=yes|--loud is a switch and takes no value",
        "bench echo a --place|--place needs DRAWER behind it",
        "bench echo a --place x --place y|--place is there twice; say it once",
        "bench echo a --count 10|--count \"10\" is no whole number from 1 to 9",
        "bench echo a --count NaN|--count \"NaN\" is no whole number from 1 to 9",
        "bench echo a --unit cm|--unit \"cm\" is not known; say mm or in",
        "bench echo a --unit|--unit needs mm or in behind it",
        "bench|\"bench\" needs another word: \"bench echo\"",
        "bench ehco a|there is no command \"bench ehco a\"; did you mean \"bench echo\"?",
        "banch echo|there is no command \"banch echo\"; did you mean \"bench echo\"?",
        "bench unheard of|there is no command \"bench unheard of\"; did you mean \"bench echo\"?",
        "cook|there is no command \"cook\"; --help lists all commands (one of a module that does"
            + " not work is missing there; \"module list --all\" says why)",
        "--loud|\"--loud\" stands alone; say a command first, --help lists them",
      })
  void refusesWordsWithTheRemedy(String typed, String message) {
    Answer got = new Session(ECHO).type(typed.split(" "));
    assertEquals(message, got.err().strip());
    assertEquals("", got.out());
    assertEquals(2, got.status());
  }

  @Test
  void theLongestWordsWin() {
    Command shorter =
        command(
            Usage.of("bench", "All of it.", "bench").mayMany("WORDS", "words"),
            call -> Reply.done("short " + call.operands("WORDS"), Map.of()));
    Session session = new Session(shorter, ECHO);
    assertTrue(session.type("bench", "echo", "a").out().startsWith("{first=a"));
    assertEquals("short [echoes]\n", session.type("bench", "echoes").out());
  }

  @Test
  void helpIsThereForAllForAGroupAndForACommand() {
    Session session = new Session(ECHO);
    assertTrue(session.type("--help").out().contains("  bench echo  Says what it was told, 100 %"));
    assertEquals(session.type().out(), session.type("--help").out());
    assertTrue(session.type("bench", "--help").out().startsWith("  bench echo  Says"));
    Answer help = session.type("bench", "echo", "-h");
    assertEquals(0, help.status());
    assertEquals(
        """
        fettlebench bench echo FIRST [MORE...] [--place DRAWER] [--count N] [--size LENGTH]
        [--loud]
        Says what it was told, 100 % of it.

              FIRST            a word
              MORE             more words

              --count=N        how many
              --loud           in capitals
              --place=DRAWER   where
              --size=LENGTH    how big

        Example:
          fettlebench bench echo a b --loud
        """,
        help.out());
    assertEquals(help.out(), session.type("help", "bench", "echo").out());
    assertTrue(session.type("bench", "echo", "--help", "--json").out().contains("\"synopsis\""));
  }

  @Test
  void anErrorForPeopleIsToldAsItIs() {
    for (RuntimeException e :
        List.of(new CommandException("No such thing."), new MeasureException("No such thing."))) {
      Session session = new Session(failing(e));
      assertEquals(new Answer(2, "", "No such thing.\n"), session.type("bench", "fail"));
      assertEquals(List.of(), session.reported());
    }
  }

  @Test
  void faultsOfAFileAreToldOneByOneAndAsData() {
    Session session =
        new Session(
            failing(
                new FaultyFileException(
                    List.of(
                        new FaultyFileException.Fault(
                            "a.toml", 3, 7, "2 BX", "is no thread", "Write 2 BA."),
                        new FaultyFileException.Fault(
                            "a.toml", 9, 1, "", "has no end", "Close it.")))));
    Answer got = session.type("bench", "fail", "--json");
    assertEquals(2, got.status());
    assertTrue(got.err().contains("a.toml:3:7: \"2 BX\" is no thread. Write 2 BA.\n"), got.err());
    assertTrue(got.err().contains("a.toml:9:1: has no end. Close it.\n"), got.err());
    String json = got.out().replaceAll("\\s+", "");
    assertTrue(
        json.contains(
            "{\"file\":\"a.toml\",\"line\":3,\"column\":7,\"value\":\"2BX\","
                + "\"wrong\":\"isnothread\",\"remedy\":\"Write2BA.\"}"),
        json);
  }

  @Test
  void whatACommandShouldNotThrowIsReportedAndTold() {
    for (Throwable e :
        List.of(
            new IllegalStateException("oil"),
            new NoClassDefFoundError("oil"),
            new StackOverflowError("oil"),
            new AssertionError("oil"))) {
      Session session = new Session(failing(e), ECHO);
      Answer got = session.type("bench", "fail");
      assertEquals(2, got.status());
      assertEquals(
          "the command \"bench fail\" failed: "
              + e
              + ". That is a mistake in the program, not in what you typed; more is in"
              + " /club/log/fettlebench.log\n",
          got.err());
      assertEquals(List.of("running the command bench fail: " + e), session.reported());
      assertEquals(0, session.type("bench", "echo", "a").status());
    }
  }

  @Test
  void numbersThatAreNoneAreAFaultOfTheCommand() {
    Session session =
        new Session(
            command(
                Usage.of("bench sum", "Adds.", "bench sum"),
                call -> Reply.done("fine", Data.of("all", List.of(Map.of("xMm", Double.NaN))))));
    Answer got = session.type("bench", "sum");
    assertEquals(2, got.status());
    assertEquals("", got.out());
    assertTrue(got.err().contains("/all/0/xMm: NaN"), got.err());
    assertEquals(1, session.reported().size());
  }

  @Test
  void aCommandThatCannotSayItsNameHarmsNoOther() {
    Command nameless =
        new Command() {
          @Override
          public Usage usage() {
            throw new IllegalStateException("no name");
          }

          @Override
          public Reply run(Call call) {
            return Reply.done("", Map.of());
          }
        };
    Session session = new Session(nameless, ECHO);
    assertEquals(0, session.type("bench", "echo", "a").status());
    assertEquals(0, session.type("bench", "echo", "a").status());
    assertEquals(1, session.reported().size(), "reported once, not at each call");
  }

  @Test
  void wordsThatAreTakenStayWithWhoHasThem() {
    Usage usage = Usage.of("bench echo", "Steals.", "bench echo");
    Session session = new Session(ECHO, command(usage, call -> Reply.done("stolen", Map.of())));
    session.type("bench", "echo", "a");
    assertEquals(1, session.reported().size());
    assertTrue(session.reported().get(0).contains("taken already"));
  }

  @Test
  void answersInUtf8WhateverTheStreamIsSetTo() {
    Command say =
        command(Usage.of("say", "Says.", "say"), call -> Reply.done("47½°", Data.of("a", "½")));
    assertEquals("47½°\n", new Session(say).type("say").out());
    assertTrue(new Session(say).type("say", "--json").out().contains("½"));
    assertFalse(new Session(say).type("say").out().contains("?"));
  }
}
