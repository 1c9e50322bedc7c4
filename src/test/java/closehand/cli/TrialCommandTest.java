package closehand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.interview.CaseRecord;
import closehand.interview.Measured;
import closehand.interview.Provenance;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Trials typed line by line. All players and figures are invented. */
class TrialCommandTest {
  private static final String BEGIN =
      "y\n1\nside-button mouse, left\n5\n1\n2\nmoon race\nfirst lap\nsteer\nbrake\nboost\n-\n";

  private static final String FELT = "1\n2\n2\n1\n-\n12\n8\n7\n9\n1\n3\n3\n8\nfelt fine\n";

  @TempDir private Path folder = Path.of(".");

  @BeforeEach
  void aCaseIsThere() throws IOException {
    TriedCase.keep(folder, "quiet-heron", TriedCase.NAME, CaseRecord.NONE);
  }

  private World trial(String typed) {
    return World.run(TriedCase.READY + typed, "trial", TriedCase.NAME, "--home", folder.toString());
  }

  private String file() throws IOException {
    return Files.readString(Cases.at(folder).store().path(TriedCase.NAME));
  }

  private static String flowing(World world) {
    return world.output().replaceAll("\\s+", " ");
  }

  @Test
  void aWholeTrialIsTakenDownQuestionByQuestion() throws IOException {
    World world = trial(BEGIN + FELT);
    assertEquals(ExitCode.DONE, world.code(), world.output() + world.error());
    assertTrue(flowing(world).contains("That was the whole trial. Everything is kept."));
    assertTrue(flowing(world).contains("Ask in 24 to 48 hours how it was"));
    String kept = file();
    assertTrue(kept.contains("\"workedOfTen\" : 9"), kept);
    assertTrue(kept.contains("\"done\" : true"), kept);
    assertTrue(kept.contains("\"day\" : \"2026-11-25\""), kept);
  }

  @Test
  void everyAnswerIsKeptAndATrialBrokenOffIsGoneOnWithAtItsOpenQuestion() throws IOException {
    String all = BEGIN + FELT;
    String[] lines = all.split("\n", -1);
    String leftOut = "";
    for (int i = 1; i + 1 < lines.length; i++) {
      if (lines[i].equals("-")) {
        // What was left out is asked again in a new sitting.
        leftOut += "-\n";
        continue;
      }
      World part = trial("y\n" + leftOut + lines[i] + "\n");
      leftOut = "";
      int expected = i + 2 == lines.length ? ExitCode.DONE : ExitCode.UNFINISHED;
      assertEquals(expected, part.code(), "line " + i + part.output());
    }
    assertTrue(file().contains("\"game\" : \"moon race\""), file());
  }

  @Test
  void painUpByTwoStopsAndNothingMoreIsCounted() throws IOException {
    World world = trial(BEGIN + "1\n2\n2\n3\n2\nit pulled\n");
    assertEquals(ExitCode.DONE, world.code(), world.output());
    String said = flowing(world);
    assertTrue(said.contains("Stop here. That is the right thing to do"), said);
    assertTrue(said.contains("your own doctor, nurse or clinic"), said);
    assertFalse(said.contains("how many of ten"), said);
    assertTrue(file().contains("\"stopped\" : \"pain\""), file());
    World again = trial("y\n");
    assertTrue(flowing(again).contains("The last trial was stopped"), again.output());
    assertTrue(flowing(again).contains("--review"), again.output());
  }

  @Test
  void stopAtAnyQuestionStops() throws IOException {
    World world = trial("y\n1\ns 5\n0\n-\n");
    assertEquals(ExitCode.DONE, world.code(), world.output());
    assertTrue(flowing(world).contains("call the emergency number now"), world.output());
    assertTrue(file().contains("\"stopped\" : \"chest\""), file());
    assertTrue(
        flowing(trial("y\n")).contains("No more trials today"), "a sign of the chest ends the day");
  }

  @Test
  void aLineThatDoesNotFitEndsAScriptAndIsAskedAgainOfAPerson() throws IOException {
    World script = trial("y\n1\nmouse\nlong\n");
    assertEquals(ExitCode.BAD_DATA, script.code(), script.output());
    assertTrue(script.output().contains("Line 9 of the answers could not be followed."));
    World typed =
        World.typed(
            TriedCase.READY + "y\nlong\n5\n?\nb\nq\n",
            "trial",
            TriedCase.NAME,
            "--home",
            folder.toString());
    assertEquals(ExitCode.DONE, typed.code(), typed.output());
    assertTrue(flowing(typed).contains("a whole number from 0 to 600"), typed.output());
    assertTrue(flowing(typed).contains("Why:"), typed.output());
  }

  @Test
  void withoutConsentOrWithAStopOrOpenWarningSignsThereIsNoTrial() throws IOException {
    World unwilling = trial("n\n");
    assertEquals(ExitCode.DONE, unwilling.code());
    assertFalse(file().contains("closehand-trial"), "nothing begun, nothing kept");
    Path path = Cases.at(folder).store().path(TriedCase.NAME);
    String whole = Files.readString(path);
    for (String[] change :
        new String[][] {
          {"\"linkId\" : \"consent.state\"", "\"yes\"", "\"no\"", "needs your consent"},
          {"\"linkId\" : \"safe.suddenNeuro\"", "\"no\"", "\"now\"", "STOP"}
        }) {
      int at = whole.indexOf(change[0]);
      int value = whole.indexOf(change[1], at);
      assertTrue(at > 0 && value > 0, change[0]);
      Files.writeString(
          path,
          whole.substring(0, value) + change[2] + whole.substring(value + change[1].length()));
      World world = trial(BEGIN + FELT);
      assertTrue(flowing(world).contains(change[3]), world.output() + world.error());
      assertFalse(Files.readString(path).contains("closehand-trial"), change[3]);
    }
  }

  @Test
  void aTrialThatCannotBeReadIsSaidAndLeftAsItIs() throws IOException {
    trial(BEGIN + FELT);
    Path path = Cases.at(folder).store().path(TriedCase.NAME);
    Files.writeString(path, file().replace("\"workedOfTen\" : 9", "\"workedOfTen\" : 19"));
    String before = file();
    World world = trial("y\n1\n");
    assertEquals(ExitCode.BAD_DATA, world.code());
    assertTrue(world.error().contains("must be from 0 to 10"), world.error());
    assertTrue(flowing(world).contains("cannot be read any more"), world.output());
    assertEquals(before, file());
    World practice =
        World.run("", "practise", TriedCase.NAME, "--home", folder.toString(), "--prompts");
    assertTrue(flowing(practice).contains("today cannot be read any more"), practice.output());
  }

  @Test
  void aTrialOfAnEarlierDayThatCannotBeReadAsksForAReviewFirst() throws IOException {
    trial(BEGIN + FELT);
    Path path = Cases.at(folder).store().path(TriedCase.NAME);
    Files.writeString(
        path,
        file()
            .replace("\"workedOfTen\" : 9", "\"workedOfTen\" : 19")
            .replace("\"day\" : \"2026-11-25\"", "\"day\" : \"2026-11-20\""));
    World world = trial("y\n1\n");
    String said = flowing(world);
    assertTrue(said.contains("nobody knows whether it was stopped"), said);
    assertTrue(said.contains("END-02"), said);
  }

  @Test
  void whatWasTriedStandsOnBothPages() {
    trial(BEGIN + FELT);
    for (String reader : new String[] {"player", "clinician"}) {
      World page =
          World.run("", "summary", TriedCase.NAME, "--for", reader, "--home", folder.toString());
      assertTrue(page.output().contains("WHAT YOU TRIED"), page.output());
      assertTrue(
          flowing(page)
              .contains("side-button mouse, left: 1 trial, 8 of ten tries worked, pain not up."),
          page.output());
    }
  }

  @Test
  void twoSetUpsAreSetSideBySide() {
    World one = World.run("", "compare", TriedCase.NAME, "--home", folder.toString());
    assertEquals(ExitCode.UNFINISHED, one.code());
    for (int i = 0; i < 5; i++) {
      String mouse = i == 0 ? "Side-button mouse\n5\n1\n2\n" : "1\n";
      String pad = i == 0 ? "pad\n2\n2\n3\n" : "2\n";
      String scene = i == 0 ? "moon race\nfirst lap\nsteer\nbrake\nboost\n-\n" : "-\n-\n-\n";
      String[] turn = i % 2 == 0 ? new String[] {mouse, pad} : new String[] {pad, mouse};
      for (int j = 0; j < 2; j++) {
        boolean isMouse = turn[j].equals(mouse);
        int worked = isMouse ? 8 : 4;
        String felt =
            "1\n2\n2\n1\n-\n12\n"
                + worked
                + "\n"
                + (worked + 1)
                + "\n"
                + (worked + i % 2)
                + "\n1\n3\n3\n8\n-\n";
        String where = i == 0 && j == 1 ? "-\n-\n-\n" : scene;
        World world = trial("y\n1\n" + turn[j] + where + felt);
        assertEquals(ExitCode.DONE, world.code(), i + " " + j + world.output() + world.error());
      }
    }
    World text = World.run("", "compare", TriedCase.NAME, "--home", folder.toString());
    assertEquals(ExitCode.DONE, text.code(), text.error());
    String said = flowing(text);
    assertTrue(
        said.contains("What worked: Side-button mouse is better, also after allowing for wobble."),
        said);
    assertTrue(said.contains("Start with Side-button mouse: more worked with it."), said);
    assertTrue(said.contains("nobody else's"), said);
    assertFalse(said.contains("not tried in turn"), said);
    World page = World.run("", "summary", TriedCase.NAME, "--home", folder.toString());
    assertTrue(
        flowing(page)
            .contains(
                "Side by side, Side-button mouse and pad: Start with Side-button mouse: more worked with it."),
        page.output());
    World json = World.run("", "compare", TriedCase.NAME, "--json", "--home", folder.toString());
    assertTrue(json.output().contains("\"verdict\" : \"better\""), json.output());
    World wrong =
        World.run(
            "", "compare", TriedCase.NAME, "--between", "pad", "x", "--home", folder.toString());
    assertEquals(ExitCode.USAGE, wrong.code());
    assertTrue(wrong.error().contains("Tried: Side-button mouse; pad."), wrong.error());
  }

  @Test
  void whateverBeginsWithStopOrPainStopsAndIsAskedAboutBeforeItBecomesAName() throws IOException {
    String[][] lines = {
      {"Stop: pain", "-", "pain"},
      {"STOP", "5", "chest"},
      {"S", "-", "signal"},
      {"s", "3", "tingling"},
      {"pain in my thumb", "-", "pain"},
      {"P", "-", "pain"}
    };
    for (String[] line : lines) {
      aCaseIsThere();
      String sign = line[1].equals("-") ? "" : line[1];
      World world =
          World.typed(
              TriedCase.READY + "y\n1\n" + line[0] + "\n" + sign + "\n1\npain in a pinch: none\n",
              "trial",
              TriedCase.NAME,
              "--home",
              folder.toString());
      assertTrue(flowing(world).contains("What came?"), world.output());
      assertTrue(flowing(world).contains("Stop here. That is the right thing"), world.output());
      assertTrue(file().contains("\"stopped\" : \"" + line[2] + "\""), line[0] + file());
      assertTrue(file().contains("pain in a pinch: none"), "after a stop it is a note");
    }
  }

  @Test
  void aSlipGoesOnWithTheSameQuestion() throws IOException {
    World world =
        World.typed(
            TriedCase.READY + "y\n1\nstop\n11\npad\nq\n",
            "trial",
            TriedCase.NAME,
            "--home",
            folder.toString());
    assertTrue(flowing(world).contains("Nothing was taken from that line."), world.output());
    assertFalse(file().contains("\"stopped\""), file());
    assertTrue(file().contains("\"pad\""), file());
  }

  private void answers(String from, String to) throws IOException {
    Path example = Path.of("examples/quiet-heron/answers.json");
    String whole = Files.readString(example);
    assertTrue(whole.contains(from), from);
    Path file = folder.resolve("answers.json");
    Files.writeString(file, whole.replace(from, to));
    TriedCase.keep(folder, file, TriedCase.NAME, CaseRecord.NONE);
  }

  @Test
  void whatMustHoldBeforeAMeasuredTaskMustHoldBeforeATrial() throws IOException {
    String room = "\"session.mode\": \"room\", \"session.helperPresent\": true,";
    String video = "\"session.mode\": \"video\", \"session.helperPresent\": ";
    String signal = "\"session.stopSignal\": \"I say stop, or I lift my right hand.\",";
    String call = "On a call somebody must be with you";
    for (String[] change :
        new String[][] {
          {room, video + "false,", call},
          {room, "", call},
          {signal, "", "We have no stop signal yet."}
        }) {
      answers(change[0], change[1]);
      World world = trial(BEGIN + FELT);
      assertTrue(flowing(world).contains(change[2]), world.output() + world.error());
      assertTrue(flowing(world).contains("(Question "), world.output());
      assertFalse(file().contains("closehand-trial"), change[2]);
    }
    answers(room, video + "true,");
    assertTrue(
        flowing(trialAfter("y\n" + TriedCase.READY + BEGIN + FELT))
            .contains("That was the whole trial."));
  }

  private World trialAfter(String before) {
    return World.run(before, "trial", TriedCase.NAME, "--home", folder.toString());
  }

  @Test
  void painAndTheChestAreAskedAnewWhateverTheCaseSaysAndAreKept() throws IOException {
    answers("\"pain.now\": 3,", "\"pain.now\": 8,");
    World today = trialAfter("y\ny\ny\n1\n2\n" + BEGIN + FELT);
    assertTrue(flowing(today).contains("That was the whole trial."), today.output());
    World hurts = trialAfter("y\ny\ny\n1\n7\n" + BEGIN + FELT);
    assertTrue(flowing(hurts).contains("Nothing begins today: pain is at 7"), hurts.output());
    World again = trialAfter("y\ny\ny\n1\n3\nq\n");
    assertTrue(flowing(again).contains("Are you happy to try something now?"), again.output());
    assertTrue(file().contains("\"confirmed\""), "an answer that stayed the same is kept as asked");
  }

  @Test
  void aSignInTheChestBeforeATrialIsAStopOfTheCaseFromThenOn() throws IOException {
    World now = trialAfter("y\ny\ny\n2\n");
    assertTrue(flowing(now).contains("not clear any more"), now.output());
    assertTrue(flowing(now).contains("STOP"), now.output());
    World later = trialAfter(TriedCase.READY + BEGIN);
    assertTrue(flowing(later).contains("STOP"), later.output());
    assertFalse(flowing(later).contains("A few questions first"), "a stop is not asked away");
    assertFalse(file().contains("closehand-trial"), "nothing begun");
  }

  @Test
  void aStopSignalThatWasNotTriedOutIsTriedOutFirst() {
    World world = trialAfter("n\nn\ny\ny\ny\n1\n3\nq\n");
    assertTrue(flowing(world).contains("Try it out first"), world.output());
    assertTrue(flowing(world).contains("Are you happy to try something now?"), world.output());
    World left = trialAfter("stop\n");
    assertTrue(flowing(left).contains("Not now is fine."), left.output());
    assertEquals(ExitCode.DONE, left.code());
  }

  @Test
  void aTaskStoppedTodayEndsTrialsAndPracticeForTheDay() throws IOException {
    Measured task =
        new Measured(
            "2026-11-25T09:00:00Z",
            "T1",
            "R.I",
            Provenance.By.VOLUNTEER,
            new Measured.Circumstances("room", "sittingAsInPlay", "armAndFeet", "morning", 5),
            false,
            List.of(),
            20,
            Measured.Ending.STOPPED,
            "pain",
            List.of());
    CaseRecord record = CaseRecord.NONE.measuring(List.of(task));
    TriedCase.keep(folder, "quiet-heron", TriedCase.NAME, record);
    World world = trial(BEGIN + FELT);
    assertTrue(flowing(world).contains("A measured task was stopped today: Pain"), world.output());
    assertFalse(file().contains("closehand-trial"), "nothing begun, nothing kept");
    World practice =
        World.run("", "practise", TriedCase.NAME, "--home", folder.toString(), "--prompts");
    assertTrue(flowing(practice).contains("A measured task was stopped today"), practice.output());
  }

  @Test
  void onlyAReviewThatWasAnsweredOpensTrialsAgain() throws IOException {
    trial("y\n1\ns 2\n2\n-\n");
    Path path = Cases.at(folder).store().path(TriedCase.NAME);
    Files.writeString(
        path,
        file()
            .replace("\"day\" : \"2026-11-25\"", "\"day\" : \"2026-11-20\"")
            .replace("\"at\" : \"2026-11-25", "\"at\" : \"2026-11-20"));
    String home = folder.toString();
    World.run("q\n", "interview", TriedCase.NAME, "--review", "--home", home);
    assertTrue(file().contains("reviewBegun"), file());
    World early = trial("y\n1\n");
    assertTrue(flowing(early).contains("The last trial was stopped"), early.output());
    World review =
        World.run(
            "1\n1\n1\n1\ny\ny\n3\n1\n1\n1\n1\n1\n1\n1\n1\n1\n1\n1\n1\n1\n1\n1\n2\n",
            "interview",
            TriedCase.NAME,
            "--review",
            "--home",
            home);
    World open = trial("y\n1\n");
    assertFalse(
        flowing(open).contains("The last trial was stopped"), open.output() + review.output());
  }
}
