package closehand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Effectors;
import closehand.interview.CaseRecord;
import closehand.strain.LoadWords;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What {@code closehand plan} says about the load of its plans. */
class PlanLoadCommandTest {
  @TempDir private Path folder = Path.of(".");

  private static final String HERON = "examples/quiet-heron/answers.json";

  private static World plan(String... more) {
    String[] all = new String[more.length + 6];
    String[] first = {"plan", "--answers", HERON, "--ascii", "--game", "0"};
    System.arraycopy(first, 0, all, 0, first.length);
    System.arraycopy(more, 0, all, first.length, more.length);
    return World.run("", all);
  }

  /** Every body part with this behind it. */
  private static String all(String said) {
    return String.join(said + ",", Effectors.all()) + said;
  }

  private static String flat(World world) {
    return world.output().replaceAll("\\s+", " ");
  }

  @Test
  void everyPlanEndsWithWhatItAsksOfTheBodyAndOneSession() {
    World world = plan();
    String text = flat(world);
    assertTrue(text.contains("What this plan asks of your body"), world.output());
    assertTrue(world.output().contains("Right hand          [#"), world.output());
    assertTrue(text.contains(" has the most to do"), world.output());
    assertTrue(text.contains("One session: "), world.output());
    assertTrue(text.contains(LoadWords.MADE_FOR_WORK), world.output());
    for (String line : world.output().split("\n", -1)) {
      assertTrue(line.length() <= 72 && line.chars().allMatch(c -> c >= ' ' && c <= '~'), line);
    }
  }

  @Test
  void theClinicianSeesMethodsAndSources() {
    String text = flat(plan("--load"));
    assertTrue(text.contains("Garg, Moore, Kapellusch"), text);
    assertTrue(
        text.contains(
            "One session, and the reason for every number".toUpperCase(java.util.Locale.ROOT)),
        text);
    assertFalse(text.contains("CONTROL PLAN"), text);
  }

  @Test
  void aRatedEffortChangesTheFigures() {
    String rated = flat(plan("--effort", all("=8")));
    assertFalse(rated.contains("Effort has not been rated"), rated);
    assertTrue(flat(plan()).contains("Effort has not been rated"));
    assertTrue(rated.contains("the effort of each press of your "), rated);
  }

  /** Two busy jobs on one finger are above its red line: no plan, until a clinician accepts it. */
  @Test
  void aRedPartBlocksUntilAClinicianAcceptsIt() {
    String[] wishes = {
      "--approaches", "MOUSE_SIDE_R", "--set", "RTS01.press=second", "--set", "RTS03=wheelClick"
    };
    World blocked = plan(wishes);
    assertTrue(
        flat(blocked).contains("your right middle finger stays below its red line"),
        blocked.output());
    assertFalse(flat(blocked).contains("wheel click, right middle finger"), blocked.output());
    String[] accepting = new String[wishes.length + 2];
    System.arraycopy(wishes, 0, accepting, 0, wishes.length);
    accepting[wishes.length] = "--accept";
    accepting[wishes.length + 1] = "R.M=A. Clinician: short bursts, seen in the room";
    String accepted = flat(plan(accepting));
    assertTrue(accepted.contains("wheel click, right middle finger"), accepted);
    assertTrue(accepted.contains("red: very busy"), accepted);
    String[] asJson = java.util.Arrays.copyOf(accepting, accepting.length + 1);
    asJson[accepting.length] = "--json";
    String json = flat(plan(asJson));
    assertTrue(json.matches(".*\"id\" : \"R.M\", [^}]*\"light\" : \"red\".*"), json);
    assertTrue(json.contains("\"acceptedBy\" : \"A. Clinician\""), json);
    assertTrue(
        accepted.contains(
            "Your right middle finger is above the red line; accepted by A. Clinician: \"short"
                + " bursts, seen in the room\""),
        accepted);
  }

  @Test
  void otherProgramsGetTheLoadToo() {
    String json = flat(plan("--json"));
    assertTrue(json.contains("\"load\" : { \"hands\" : [ { \"id\" : \"right\""), json);
    assertTrue(json.contains("\"method\" : \"Composite Strain Index\""), json);
    assertTrue(json.contains("\"blockedBy\" : [ ]"), json);
    assertTrue(json.contains("\"source\" : \"Garg, Moore, Kapellusch"), json);
    assertTrue(json.contains("\"drivers\" : [ { \"part\" : \"R."), json);
    assertTrue(json.contains("\"wrist-not-asked\""), json);
    assertTrue(json.contains("\"method\" : \"Strain Index of 1995\""), json);
    assertTrue(json.contains("\"day\" : { \"hands\" : [ { \"id\" : \"right\""), json);
    assertTrue(json.contains("\"method\" : \"Cumulative Strain Index\""), json);
  }

  @Test
  void theSecondLookAndTheDayStandAmongTheMethods() {
    String text = flat(plan("--load"));
    assertTrue(text.contains("Strain Index of 1995: "), text);
    assertTrue(text.contains("ALL GAMES OF A DAY TOGETHER"), text);
    assertTrue(text.contains("Cumulative Strain Index: "), text);
    assertTrue(text.contains("The wrist counts as straight."), text);
  }

  /** What no question asks can stand in an answers file. */
  @Test
  void effortsAndAnIntervalOfReliefComeWithTheAnswers() throws IOException {
    String heron = Files.readString(Path.of("examples/quiet-heron/answers.json"));
    String efforts = "\"" + String.join("\": 8, \"", Effectors.all()) + "\": 8";
    String load = "{ \"load\": { \"effort\": { " + efforts + " }, \"reliefMinutes\": 25 },";
    Path file = Files.writeString(folder.resolve("a.json"), heron.replaceFirst("\\{", load));
    World rated = World.run("", "plan", "--answers", file.toString(), "--ascii");
    assertFalse(flat(rated).contains("Effort has not been rated"), rated.output() + rated.error());
    String[] typed = {
      "plan", "--answers", HERON, "--ascii", "--relief", "25", "--effort", all("=8")
    };
    assertEquals(rated.output(), World.run("", typed).output(), "said either way, the same plans");
    World replayed = World.run("", "replay", file.toString(), "--bank", "question-banks/core");
    assertEquals(ExitCode.DONE, replayed.code(), replayed.error());
    Path wrong =
        Files.writeString(
            folder.resolve("b.json"),
            heron.replaceFirst(
                "\\{",
                "{ \"load\": { \"effort\": { \"R.T\": 11, \"toe\": 1 }, \"reliefMinutes\": 2, \"x\": 1 },"));
    World refused = World.run("", "plan", "--answers", wrong.toString());
    assertEquals(ExitCode.BAD_DATA, refused.code());
    assertTrue(refused.error().contains("Effort is a number from 0 to 10."), refused.error());
    assertTrue(refused.error().contains("This body part is not known."), refused.error());
    assertTrue(refused.error().contains("minutes from 5 to 240"), refused.error());
    assertTrue(refused.error().contains("\"x\" means nothing here."), refused.error());
    assertEquals(ExitCode.USAGE, plan("--relief", "often").code());
  }

  private static String session(String text) {
    int begin = text.indexOf("One session: ");
    return text.substring(begin, text.indexOf(" or more.", begin));
  }

  /** A hand in the upper band makes pauses come sooner, and every page says the same of them. */
  @Test
  void oneSessionIsTheSameOnEveryPage() throws IOException {
    Path file = folder.resolve("gc1.json");
    Files.writeString(file, SetUpSheetStoryTest.facts("GC1"));
    String usual = session(flat(World.run("", "plan", "--answers", file.toString())));
    assertTrue(usual.contains("7, 7 and 6 minutes"), usual);
    for (String reader : List.of("player", "clinician", "setup")) {
      World page = World.run("", "summary", "--answers", file.toString(), "--for", reader);
      assertEquals(usual, session(flat(page)), reader);
    }
  }

  @Test
  void theCliniciansPageHoldsEveryFigureWhereverThereIsAPlan() {
    String text =
        flat(World.run("", "summary", "--answers", HERON, "--for", "clinician", "--ascii"));
    assertTrue(text.contains("LOAD OF THE PLAN: "), text);
    assertTrue(text.contains(" [#"), text);
    assertTrue(text.contains("as a whole: Composite Strain Index: "), text);
    assertTrue(text.contains(" has the most to do"), text);
    assertTrue(text.contains("The wrist counts as straight."), text);
    assertTrue(text.contains(LoadWords.MADE_FOR_WORK), text);
    String player = flat(World.run("", "summary", "--answers", HERON, "--for", "player"));
    assertTrue(player.contains("Most to do: your "), player);
  }

  /** What was said about the body stays with the case: figures, ties, sheet and clinician. */
  @Test
  void whatWasSaidAboutTheBodyIsKeptWithTheCase() throws IOException {
    TriedCase.keep(folder, "quiet-heron", "calm-fern", CaseRecord.NONE);
    String home = folder.toString();
    String[] plan = {"plan", "calm-fern", "--home", home, "--ascii"};
    assertTrue(flat(World.run("", plan)).contains("Effort has not been rated"));
    String[] kept = java.util.Arrays.copyOf(plan, plan.length + 7);
    List<String> more =
        List.of(
            "--keep",
            "--effort",
            all("=8"),
            "--relief",
            "25",
            "--accept",
            "R.M=A. Clinician: seen");
    for (int i = 0; i < more.size(); i++) {
      kept[plan.length + i] = more.get(i);
    }
    World world = World.run("", kept);
    assertTrue(world.error().contains("The plan is kept"), world.error());
    assertFalse(flat(World.run("", plan)).contains("Effort has not been rated"));
    String[] back = {
      "plan", "calm-fern", "--home", home, "--ascii", "--effort", "R.M=", "--accept", "R.M="
    };
    assertEquals("", World.run("", back).error());
    String json = Files.readString(folder.resolve("calm-fern.json")).replaceAll("\\s+", " ");
    assertTrue(json.contains("\"kind\" : \"load\""), "a part of its own in the case");
    assertTrue(json.contains("\"R.M\" : 8"), "the ratings");
    assertTrue(json.contains("\"reliefMinutes\" : 25"), "the interval");
    assertTrue(json.contains("\"by\" : \"A. Clinician\""), "who accepted");
  }

  /** The sheet shows what a clinician accepted, and does not wait for it again. */
  @Test
  void whatAClinicianAcceptedStandsOnTheSheet() throws IOException {
    TriedCase.keep(folder, "quiet-heron", "calm-fern", CaseRecord.NONE);
    String home = folder.toString();
    World.run(
        "",
        "plan",
        "calm-fern",
        "--home",
        home,
        "--game",
        "0",
        "--keep",
        "--set",
        "RTS01.press=second",
        "--set",
        "RTS03=wheelClick",
        "--accept",
        "R.M=A. Clinician: short bursts");
    for (String reader : List.of("setup", "clinician")) {
      String page =
          flat(World.run("", "summary", "calm-fern", "--home", home, "--ascii", "--for", reader));
      assertTrue(
          page.contains(
              "Your right middle finger is above the red line; accepted by A. Clinician: \"short"
                  + " bursts\""),
          page);
      assertFalse(page.contains("This plan waits"), page);
    }
  }

  @Test
  void thePartsThatCanBeNamedAreListed() {
    String wrong = plan("--effort", "thumb=3").error();
    assertTrue(wrong.contains("T, I, M, R and L are thumb, index"), wrong);
    for (String part : Effectors.all()) {
      String end = part.substring(part.indexOf('.') + 1);
      assertTrue(closehand.strain.BodyPart.NAMES.matches("(?s).*\\b" + end + "\\b.*"), part);
    }
    assertTrue(flat(World.run("", "plan", "--help")).contains("ring and little finger"));
  }

  @Test
  void whatCannotBeIsToldWithWhatIsPossible() {
    World effort = plan("--effort", "R.T=11");
    assertEquals(ExitCode.USAGE, effort.code());
    assertTrue(effort.error().contains("Effort is a number from 0 to 10."), effort.error());
    World word = plan("--effort", "R.T=much");
    assertEquals(ExitCode.USAGE, word.code());
    World nobody = plan("--accept", "R.T=short bursts");
    assertEquals(ExitCode.USAGE, nobody.code());
    assertTrue(nobody.error().contains("a clinician's name and a reason"), nobody.error());
    assertEquals(ExitCode.USAGE, plan("--accept", "thumb=A. Clinician: bursts").code());
    assertFalse(plan("--accept", "R.T=A. Clinician: short bursts").code() == ExitCode.USAGE);
  }
}
