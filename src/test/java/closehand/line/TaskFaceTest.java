package closehand.line;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.TaskBook;
import closehand.interview.Measured;
import closehand.interview.Message;
import closehand.interview.Provenance;
import closehand.interview.Value;
import closehand.json.BankReader;
import closehand.json.EmbeddedBank;
import closehand.measure.task.TaskSetup;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** A task run line by line: what is said, what each typed line does, and that nothing hurries. */
class TaskFaceTest {
  private static final TaskBook BOOK = book();
  private static final long SECOND = 1_000_000_000L;
  private static final long MILLI = 1_000_000L;

  /** In a go: nothing is typed until its time is up. */
  private static final String QUIET = "(quiet)";

  /** In a go: Enter after so many milliseconds. */
  private static final String TAP = "(tap) ";

  private static TaskBook book() {
    try {
      return BankReader.read(new EmbeddedBank(), BankReader.Extent.FOR_USE)
          .bank()
          .orElseThrow()
          .tasks()
          .orElseThrow();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A keyboard whose lines are known beforehand, with a clock that goes with them. */
  private static final class Keyboard implements Console {
    private final Deque<String> lines;
    private final List<String> said = new ArrayList<>();
    private long clock = 7 * SECOND;

    Keyboard(List<String> lines) {
      this.lines = new ArrayDeque<>(lines);
    }

    @Override
    public void say(String paragraph) {
      said.add(paragraph);
    }

    @Override
    public void item(String mark, String text) {
      said.add(mark + "  " + text);
    }

    @Override
    public void lines(List<String> some) {
      said.addAll(some);
    }

    @Override
    public void gap() {}

    @Override
    public Optional<String> ask(String prompt) {
      clock += SECOND;
      String line = lines.poll();
      return Optional.ofNullable(line).map(l -> l.startsWith(TAP) ? "" : l);
    }

    @Override
    public Heard askUntil(Optional<Long> endNanos) {
      String line = lines.peek();
      if (line == null) {
        return new Heard.Ended();
      }
      if (line.equals(QUIET)) {
        lines.poll();
        clock = endNanos.orElseThrow();
        return new Heard.TimeUp(clock);
      }
      lines.poll();
      clock += line.startsWith(TAP) ? Long.parseLong(line.substring(TAP.length())) * MILLI : SECOND;
      return new Heard.Line(line.startsWith(TAP) ? "" : line, clock);
    }

    @Override
    public long nanos() {
      return clock;
    }

    @Override
    public boolean scripted() {
      return false;
    }

    @Override
    public int lineNumber() {
      return 0;
    }
  }

  private static TaskSetup setup(String key) {
    return new TaskSetup(
        BOOK.task(key).orElseThrow(),
        BOOK,
        false,
        Provenance.By.VOLUNTEER,
        List.of(),
        Optional.of(2.0),
        0,
        0,
        "morning",
        12,
        true);
  }

  private static final List<String> PREPARED = List.of("", "y", "y", "y", "1", "1");

  private static Message.EndTask run(String key, Keyboard keyboard) {
    return new TaskFace(keyboard, setup(key)).run();
  }

  private static List<String> typed(String... more) {
    List<String> all = new ArrayList<>(PREPARED);
    all.addAll(List.of(more));
    return all;
  }

  @Test
  void somebodyCountsAndTheMiddleIsKept() {
    Keyboard keyboard =
        new Keyboard(
            typed("1", "", QUIET, "2", "", QUIET, "24", "2", "y", "", QUIET, "27", "2", "n", ""));
    Message.EndTask ended = run("T1.R.I", keyboard);
    assertEquals(Map.of("digit.R.tap10.I", new Value.Number(25)), ended.results());
    assertTrue(
        keyboard.said.contains(
            "Tap check, right index finger: 25 taps; did neighbouring fingers press along: no."),
        keyboard.said::toString);
  }

  @Test
  void enterIsTappedAndEachIsStampedWhenItComes() {
    List<String> lines =
        typed(
            "2",
            "",
            "(tap) 400",
            QUIET,
            "2",
            "",
            "(tap) 900",
            "(tap) 250",
            "(tap) 270",
            "(tap) 240",
            QUIET,
            "2",
            "n",
            "n",
            "");
    Message.EndTask ended = run("T1.R.I", new Keyboard(lines));
    assertEquals(Map.of("digit.R.tap10.I", new Value.Number(4)), ended.results());
    assertTrue(ended.measured().keys());
  }

  @Test
  void aHeldEnterSpoilsTheGoAndThisIsSaid() {
    Keyboard keyboard =
        new Keyboard(
            typed(
                "2",
                "",
                "(tap) 400",
                QUIET,
                "2",
                "",
                "(tap) 900",
                "(tap) 660",
                "(tap) 40",
                "",
                "2",
                "q"));
    Message.EndTask ended = run("T1.R.I", keyboard);
    assertEquals(Map.of(), ended.results());
    assertTrue(keyboard.said.stream().anyMatch(s -> s.contains("This go does not count")));
    assertEquals("heldKey", ended.measured().goes().get(1).discarded());
  }

  @Test
  void theKeyboardThatIsCutOffLeavesNoResult() {
    Message.EndTask ended =
        run(
            "T1.R.I",
            new Keyboard(typed("2", "", "(tap) 400", QUIET, "2", "", "(tap) 900", "(tap) 300")));
    assertEquals(Map.of(), ended.results());
    assertEquals(Measured.Ending.LEFT, ended.measured().ending());
    assertEquals("disconnected", ended.measured().goes().get(1).discarded());
    Message.EndTask justAfter =
        run(
            "T1.R.I",
            new Keyboard(typed("2", "", "(tap) 400", QUIET, "2", "", "(tap) 900", QUIET)));
    assertEquals("disconnected", justAfter.measured().goes().get(1).discarded());
    assertEquals(Map.of(), justAfter.results());
  }

  @TestFactory
  Stream<DynamicTest> eachOfTheTenStopsCanBeTypedInAGoAndBetween() {
    List<DynamicTest> tests = new ArrayList<>();
    for (TaskBook.Stop stop : BOOK.stops().all()) {
      String number = Integer.toString(BOOK.stops().all().indexOf(stop) + 1);
      List<String> inAGo = typed("1", "", "stop", number);
      if (stop.waits()) {
        inAGo.add("n");
      }
      inAGo.add("");
      tests.add(DynamicTest.dynamicTest(stop.id() + " in a go", () -> stopped(stop, inAGo)));
      List<String> between = List.of("", "s", number, "");
      tests.add(DynamicTest.dynamicTest(stop.id() + " between", () -> stopped(stop, between)));
    }
    return tests.stream();
  }

  private static void stopped(TaskBook.Stop stop, List<String> lines) {
    Keyboard keyboard = new Keyboard(lines);
    Message.EndTask ended = run("T1.R.I", keyboard);
    assertEquals(Measured.Ending.STOPPED, ended.measured().ending());
    assertEquals(stop.id(), ended.measured().stop());
    assertEquals(Map.of(), ended.results());
    stop.then().forEach(s -> assertTrue(keyboard.said.contains(s), s));
  }

  @Test
  void oneKeyStopsForPainWhereverSomethingIsAsked() {
    for (int typed = 0; typed <= PREPARED.size(); typed++) {
      List<String> lines = new ArrayList<>(PREPARED.subList(0, typed));
      lines.addAll(List.of("p", ""));
      Message.EndTask ended = run("T1.R.I", new Keyboard(lines));
      assertEquals("pain", ended.measured().stop(), "after " + typed + " lines");
    }
  }

  @Test
  void everyPromptSaysHowToStop() {
    Keyboard keyboard = new Keyboard(typed("1", "", QUIET, "2", "q"));
    run("T1.R.I", keyboard);
    long stops = keyboard.said.stream().filter(s -> s.startsWith("p stops for pain")).count();
    assertEquals(PREPARED.size() + 4, stops);
  }

  @Test
  void aLineThatDoesNotFitIsSaidAndAskedAgain() {
    Keyboard keyboard = new Keyboard(List.of("", "maybe", "y", "q"));
    run("T1.R.I", keyboard);
    assertTrue(keyboard.said.contains("That does not fit here. y for yes, n for no."));
  }

  @Test
  void aStopOfWhichNothingIsSaidIsAStopAllTheSame() {
    String[][] lines = {
      {"s", "signal"}, {"Stop: pain", "pain"}, {"STOP", "signal"}, {"pain", "pain"}
    };
    for (String[] line : lines) {
      Message.EndTask ended = run("T1.R.I", new Keyboard(List.of("", line[0], "", "")));
      assertEquals(Measured.Ending.STOPPED, ended.measured().ending(), line[0]);
      assertEquals(line[1], ended.measured().stop());
    }
    Message.EndTask cutOff = run("T1.R.I", new Keyboard(List.of("", "s")));
    assertEquals("signal", cutOff.measured().stop(), "nobody typed on");
  }
}
