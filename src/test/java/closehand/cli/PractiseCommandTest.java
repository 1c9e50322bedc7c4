package closehand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Bank;
import closehand.casefile.CaseStore;
import closehand.casefile.LocalDisk;
import closehand.interview.Answers;
import closehand.interview.Interview;
import closehand.interview.Provenance;
import closehand.interview.SavedCase;
import closehand.json.BankReader;
import closehand.json.CaseDocument;
import closehand.json.EmbeddedBank;
import closehand.measure.practice.PracticeRecord;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Stories of {@code closehand practise}. */
class PractiseCommandTest {
  private static final Path HERON = Path.of("examples/quiet-heron/answers.json");
  private static final Pattern PROMPT = Pattern.compile("\\(([^ ,()]+), ([^ ,()]+)\\)");
  private static final String AT = "2026-11-20T10:00:00Z";

  @TempDir private Path folder;

  private Path cases() {
    return folder.resolve("cases");
  }

  /** A log of five rounds; this input is missed each time with the one beside it. */
  private Path log(String missed, String beside) throws IOException {
    String prompts =
        World.run("", "practise", "--answers", HERON.toString(), "--prompts", "--seed", "4")
            .output()
            .replaceAll("\\n {6}", " ");
    StringBuilder log = new StringBuilder("# an invented player\n");
    long now = 0;
    for (String line : prompts.split("\n")) {
      if (line.startsWith("Round")) {
        log.append(now).append(" round\n");
        now += 30_000;
      }
      Matcher found = PROMPT.matcher(line);
      while (found.find()) {
        boolean misses = found.group(2).equals(missed);
        log.append(now).append(" prompt ").append(found.group(1)).append('\n');
        now += misses ? 900 : 600 + now % 37;
        log.append(now).append(" press ").append(misses ? beside : found.group(2)).append('\n');
        now += 1_500;
      }
    }
    Path file = folder.resolve("presses.log");
    Files.writeString(file, log);
    return file;
  }

  private String keptCase() throws IOException {
    Bank bank = BankReader.read(new EmbeddedBank(), BankReader.Extent.FOR_USE).bank().orElseThrow();
    Answers answers =
        AnswersSource.match(bank, AnswersSource.read(HERON.toString(), System.in))
            .answers()
            .orElseThrow();
    Interview interview =
        Interview.reopen(
            bank.questionnaire(),
            answers,
            Interview.Route.CORE,
            Provenance.By.VOLUNTEER,
            Optional.empty());
    SavedCase saved =
        SavedCase.of(
            "quiet-heron", SavedCase.BankStamp.of(bank.questionnaire(), "0"), interview, AT, AT);
    CaseStore store = new CaseStore(cases(), new LocalDisk());
    store.save(CaseDocument.of(saved), bank.questionnaire(), Optional.empty());
    return "quiet-heron";
  }

  private List<PracticeRecord> practised() throws IOException {
    Bank bank = BankReader.read(new EmbeddedBank(), BankReader.Extent.FOR_USE).bank().orElseThrow();
    CaseStore.Opened opened =
        new CaseStore(cases(), new LocalDisk())
            .open("quiet-heron", bank.questionnaire(), attempt -> Optional.empty());
    return ((CaseStore.Opened.Case) opened).file().document().practised();
  }

  @Test
  void aLogTellsWhatWasMissedAndSaysThatNothingIsKept() throws IOException {
    Path log = log("MOUSE_SIDE_R/B3", "MOUSE_SIDE_R/B2");
    World world = World.run("", "practise", "--answers", HERON.toString(), "--log", log.toString());
    assertEquals(ExitCode.DONE, world.code());
    String text = world.output().replaceAll("\\s+", " ");
    assertTrue(text.contains("nothing of it is kept"), text);
    assertTrue(
        text.contains(
            "side cell B3 (right thumb). Not reached or only late: 4 of 4 prompts, each time with"
                + " a press right beside it."),
        text);
    assertTrue(text.contains("They compare you with nobody"), text);
  }

  @Test
  void aLogIsKeptInItsCaseAndWhatIsTakenHoldsForThePlan() throws IOException {
    String name = keptCase();
    Path log = log("SW_FOOT/Rtoe", "SW_FOOT/Rheel");
    String before =
        World.run("", "plan", name, "--home", cases().toString(), "--json", "--game", "0").output();
    World world =
        World.typed(
            "1\n1\n1\n1\n",
            "practise",
            name,
            "--home",
            cases().toString(),
            "--log",
            log.toString());
    assertEquals(ExitCode.DONE, world.code(), world.error());
    List<PracticeRecord> kept = practised();
    assertEquals(1, kept.size());
    assertEquals("2026-11-25", kept.get(0).day());
    assertFalse(kept.get(0).tries().isEmpty());
    assertTrue(world.output().contains("One change that practice speaks for:"), world.output());
    assertFalse(kept.get(0).taken().isEmpty(), world.output());
    World twice =
        World.typed("", "practise", name, "--home", cases().toString(), "--log", log.toString());
    assertEquals(ExitCode.BAD_DATA, twice.code(), "also where the plan was changed after it");
    String after =
        World.run("", "plan", name, "--home", cases().toString(), "--json", "--game", "0").output();
    kept.get(0)
        .taken()
        .forEach(
            (action, input) -> {
              assertTrue(sits(after, action, input), action + " on " + input + "\n" + after);
              assertFalse(sits(before, action, input), action + " on " + input);
            });
  }

  private static boolean sits(String json, String action, String input) {
    String path = input.replaceAll("@[LR]/", "/");
    return Pattern.compile(
            "\"action\" : \""
                + Pattern.quote(action)
                + "\",\\s+\"name\" : \"[^\"]*\",\\s+\"input\" : \""
                + Pattern.quote(path)
                + "\"")
        .matcher(json)
        .find();
  }

  @Test
  void whoKeepsTheOldPlanHasTheOldPlan() throws IOException {
    String name = keptCase();
    Path log = log("SW_FOOT/Rtoe", "SW_FOOT/Rheel");
    String before =
        World.run("", "plan", name, "--home", cases().toString(), "--json", "--game", "0").output();
    World.typed(
        "2\n2\n2\n2\n2\n2\n",
        "practise",
        name,
        "--home",
        cases().toString(),
        "--log",
        log.toString());
    assertEquals(1, practised().size());
    World twice =
        World.typed("", "practise", name, "--home", cases().toString(), "--log", log.toString());
    assertEquals(ExitCode.BAD_DATA, twice.code());
    assertTrue(twice.error().contains("They are not counted again"), twice.error());
    List<String> lines = Files.readAllLines(log);
    String prompt = lines.get(lines.size() - 2);
    String press = lines.get(lines.size() - 1);
    long end = Long.parseLong(press.substring(0, press.indexOf(' ')));
    Files.writeString(
        log,
        (end + 30_000)
            + " round\n"
            + (end + 40_000)
            + prompt.substring(prompt.indexOf(' '))
            + "\n"
            + (end + 41_000)
            + press.substring(press.indexOf(' '))
            + "\n",
        StandardOpenOption.APPEND);
    World more =
        World.typed("", "practise", name, "--home", cases().toString(), "--log", log.toString());
    assertTrue(more.error().contains("They are not counted again"), "a log that was written on");
    assertEquals(1, practised().size());
    String after =
        World.run("", "plan", name, "--home", cases().toString(), "--json", "--game", "0").output();
    assertEquals(before, after);
  }

  @Test
  void badLinesOfALogAreToldWithTheirPlaces() throws IOException {
    Path log = folder.resolve("bad.log");
    Files.writeString(log, "0 round\n500 prompt RTS80\nsoon press B3\n400 press B3\n600 jump\n");
    World world = World.run("", "practise", "--answers", HERON.toString(), "--log", log.toString());
    assertEquals(ExitCode.BAD_DATA, world.code());
    assertTrue(world.error().contains("bad.log:2:12 [unknown-action]"), world.error());
    assertTrue(world.error().contains("bad.log:3:1 [no-time]"), world.error());
    assertTrue(world.error().contains("bad.log:4:1 [back-in-time]"), world.error());
    assertTrue(world.error().contains("bad.log:5:5 [unknown-word]"), world.error());
  }

  @Test
  void aPipeIsToldThatItCannotTimeAnything() {
    World world = World.run("", "practise", "--answers", HERON.toString());
    assertEquals(ExitCode.USAGE, world.code());
    assertTrue(world.output().startsWith("Nobody can time a press through a pipe."));
  }

  @Test
  void whereAStopStandsOrWarningSignsAreOpenNothingBegins() {
    for (String name : List.of("silver-birch", "paper-boat")) {
      World world =
          World.run("", "practise", "--answers", "examples/" + name + "/answers.json", "--prompts");
      assertEquals(ExitCode.UNFINISHED, world.code());
      assertTrue(world.output().startsWith("Practice cannot begin now."), world.output());
    }
  }

  @Test
  void lineByLineMissesAreCountedAndNothingIsTimed() throws IOException {
    String name = keptCase();
    StringBuilder typed = new StringBuilder();
    for (char key = 'a'; key < 'a' + 15; key++) {
      typed.append(key).append('\n');
    }
    typed.append("2\n");
    for (int i = 0; i < 22; i++) {
      typed.append("a\n");
    }
    typed.append("3\n\nstop\n");
    World world =
        World.typed(
            TriedCase.READY + typed, "practise", name, "--home", cases().toString(), "--line");
    assertEquals(ExitCode.DONE, world.code());
    assertTrue(world.output().contains("nothing is timed"), world.output());
    assertTrue(world.output().contains("STOPPED. You said or showed stop"), world.output());
    PracticeRecord kept = practised().get(0);
    assertFalse(kept.timed());
    assertTrue(kept.tries().stream().allMatch(t -> t.millis().isEmpty()));
    World again = World.typed("", "practise", name, "--home", cases().toString(), "--line");
    assertEquals(ExitCode.UNFINISHED, again.code());
    assertTrue(
        again.output().replaceAll("\\s+", " ").contains("not repeated on the same day"),
        again.output());
  }

  private World practisedWith(String from, String to) throws IOException {
    String answers = Files.readString(HERON);
    assertTrue(answers.contains(from), from);
    Path file = folder.resolve("answers.json");
    Files.writeString(file, answers.replace(from, to));
    return World.run("", "practise", "--answers", file.toString(), "--prompts");
  }

  @Test
  void whatIsNotKnownIsNeverTakenForWellAndItsQuestionIsNamed() throws IOException {
    String signal = "\"session.stopSignal\": \"I say stop, or I lift my right hand.\",";
    String mode = "\"session.mode\": \"room\",";
    String alone = "\"session.mode\": \"room\", \"session.helperPresent\": true,";
    String pain = "\"pain.now\": 3,";
    for (String[] change :
        new String[][] {
          {pain, "", "END-02"},
          {pain, "\"pain.now\": 7,", "END-02"},
          {mode, "", "CON-06"},
          {alone, "", "CON-06"},
          {alone, "\"session.mode\": \"video\", \"session.helperPresent\": false,", "CON-06"},
          {signal, "", "CON-04"}
        }) {
      World world = practisedWith(change[0], change[1]);
      String said = world.output().replaceAll("\\s+", " ");
      assertEquals(ExitCode.UNFINISHED, world.code(), change[2] + said + world.error());
      assertTrue(said.startsWith("Practice cannot begin now."), said);
      assertTrue(said.contains("(Question " + change[2] + ".)"), said);
    }
  }

  @Test
  void aTrialStoppedTodayEndsPracticeForTheDay() throws IOException {
    String name = keptCase();
    World trial =
        World.run(
            TriedCase.READY + "y\n1\ns 5\n0\n-\n", "trial", name, "--home", cases().toString());
    assertEquals(ExitCode.DONE, trial.code(), trial.output() + trial.error());
    World world = World.run("", "practise", name, "--home", cases().toString(), "--prompts");
    assertEquals(ExitCode.UNFINISHED, world.code(), world.error());
    String said = world.output().replaceAll("\\s+", " ");
    assertTrue(said.contains("A trial was stopped today: Something in the chest"), said);
  }
}
