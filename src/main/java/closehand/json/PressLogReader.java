package closehand.json;

import closehand.bank.Hint;
import closehand.bank.Problem;
import closehand.bank.Where;
import closehand.measure.practice.LoggedPresses;
import closehand.measure.practice.LoggedPresses.Entry;
import closehand.measure.practice.Sheet;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Reads presses that another program, or somebody with a list, wrote down. One thing a line:
 *
 * <pre>
 * # anything after a number sign is passed over
 * 0     round
 * 1500  prompt  RTS08
 * 2110  press   SW_FOOT/Rtoe
 * 9000  lost    the window was covered
 * </pre>
 *
 * <p>The first word is the time in milliseconds, which only goes forward. Actions and inputs are
 * named by their ids; an input also by its id without its device.
 */
public final class PressLogReader {
  private static final long MOST_MILLIS = 86_400_000L;
  private static final int MOST_LINES = 100_000;
  private static final int MOST_PROBLEMS = 50;
  private static final List<String> WORDS = List.of("round", "prompt", "press", "lost");

  private final String file;
  private final Sheet sheet;
  private final List<Problem> problems;
  private final List<Entry> entries = new ArrayList<>();
  private long before = -1;

  private PressLogReader(String file, Sheet sheet, List<Problem> problems) {
    this.file = file;
    this.sheet = sheet;
    this.problems = problems;
  }

  /**
   * The entries of a log; empty when any line was wrong.
   *
   * @param file the name used in messages
   * @param sheet the actions and inputs that may be named
   * @param problems receives whatever is wrong, each with its line and column
   */
  public static Optional<LoggedPresses> read(
      String file, byte[] bytes, Sheet sheet, List<Problem> problems) {
    List<Problem> found = new ArrayList<>();
    PressLogReader reader = new PressLogReader(file, sheet, found);
    String[] lines = new String(bytes, StandardCharsets.UTF_8).split("\r?\n", -1);
    for (int i = 0; i < Math.min(lines.length, MOST_LINES) && found.size() < MOST_PROBLEMS; i++) {
      reader.line(i + 1, lines[i]);
    }
    if (lines.length > MOST_LINES) {
      found.add(
          Problem.error(
              reader.at(MOST_LINES + 1, 1),
              "too-long",
              "A log has at most " + MOST_LINES + " lines.",
              "Leave out what is no practice."));
    }
    problems.addAll(found);
    return Problem.anyError(found)
        ? Optional.empty()
        : Optional.of(new LoggedPresses(reader.entries));
  }

  private Where at(int line, int column) {
    return new Where(file, line, column, closehand.bank.Path.ROOT);
  }

  private void line(int number, String whole) {
    int comment = whole.indexOf('#');
    String line = comment < 0 ? whole : whole.substring(0, comment);
    if (line.isBlank()) {
      return;
    }
    String[] words = line.strip().split("\\s+", 3);
    int column = line.indexOf(words[0]) + 1;
    if (!words[0].matches("[0-9]{1,9}") || Long.parseLong(words[0]) > MOST_MILLIS) {
      wrong(
          number,
          column,
          "no-time",
          "A line begins with a time in milliseconds.",
          "Write it like: 1500 prompt " + someAction());
      return;
    }
    long millis = Long.parseLong(words[0]);
    if (millis < before) {
      wrong(
          number,
          column,
          "back-in-time",
          "This time is before that of the line above.",
          "Times only go forward.");
      return;
    }
    before = millis;
    entry(number, line, words, millis);
  }

  private void entry(int number, String line, String[] words, long millis) {
    String word = words.length > 1 ? words[1] : "";
    String rest = words.length > 2 ? words[2].strip() : "";
    int column = word.isEmpty() ? line.length() + 1 : line.indexOf(word, words[0].length()) + 1;
    int restColumn =
        rest.isEmpty()
            ? line.stripTrailing().length() + 1
            : line.indexOf(rest, column + word.length() - 1) + 1;
    switch (word) {
      case "round" -> entries.add(new Entry.Round(millis));
      case "lost" -> entries.add(new Entry.Lost(millis));
      case "prompt" -> prompt(number, restColumn, rest, millis);
      case "press" -> press(number, restColumn, rest, millis);
      default ->
          wrong(
              number,
              column,
              "unknown-word",
              "After the time stands round, prompt, press or lost.",
              Hint.didYouMean(word, WORDS));
    }
  }

  private void prompt(int number, int column, String action, long millis) {
    List<String> known = sheet.jobs().stream().map(Sheet.Job::action).toList();
    if (known.contains(action)) {
      entries.add(new Entry.Prompt(millis, action));
    } else {
      wrong(
          number,
          column,
          "unknown-action",
          "The plan has no such action to practise.",
          Hint.didYouMean(action, known));
    }
  }

  /** An input of the plan; one of elsewhere is a press that missed. */
  private void press(int number, int column, String input, long millis) {
    if (input.isEmpty()) {
      wrong(number, column, "no-input", "A press names its input.", "Write it like: press B3");
      return;
    }
    List<Sheet.Target> named =
        sheet.targets().stream()
            .filter(t -> t.input().equals(input) || t.input().endsWith("/" + input))
            .toList();
    if (named.size() > 1) {
      wrong(
          number,
          column,
          "several-inputs",
          "Several inputs are called so.",
          "Write the whole id, such as " + named.get(0).input() + ".");
    } else {
      entries.add(new Entry.Press(millis, named.stream().findFirst().map(Sheet.Target::input)));
    }
  }

  private String someAction() {
    return Stream.concat(sheet.jobs().stream().map(Sheet.Job::action), Stream.of("JUMP"))
        .findFirst()
        .orElseThrow();
  }

  private void wrong(int line, int column, String code, String what, String mend) {
    problems.add(Problem.error(at(line, column), code, what, mend));
  }
}
