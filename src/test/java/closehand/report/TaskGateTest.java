package closehand.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Bank;
import closehand.bank.Task;
import closehand.bank.TaskKind;
import closehand.interview.Answer;
import closehand.interview.Answers;
import closehand.interview.FlatAnswers;
import closehand.interview.Interview;
import closehand.interview.Measured;
import closehand.interview.Message;
import closehand.interview.Provenance;
import closehand.interview.Value;
import closehand.json.BankReader;
import closehand.json.EmbeddedBank;
import closehand.json.FlatReader;
import closehand.json.JsonReader;
import closehand.measure.task.TaskSetup;
import closehand.rules.Holds;
import closehand.rules.RuleBook;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** What must hold before a task is asked anew each time, whatever the case says. */
class TaskGateTest {
  private static final String DAY = "2026-11-30";
  private static final Bank BANK = bank();
  private static final RuleBook RULES = RuleBook.of(BANK);
  private static final TaskGate GATE = TaskGate.of(BANK).orElseThrow();

  private static Bank bank() {
    try {
      return BankReader.read(new EmbeddedBank(), BankReader.Extent.FOR_USE).bank().orElseThrow();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** An invented player for whom the tap check may begin. */
  private static Answers ready() {
    try {
      byte[] bytes = Files.readAllBytes(Path.of("examples/quiet-heron/answers.json"));
      return FlatAnswers.of(
              BANK,
              FlatReader.read(
                  JsonReader.read("answers.json", bytes, new ArrayList<>()).orElseThrow(),
                  new ArrayList<>()))
          .answers();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Answers with(Answers answers, String fact, Value value) {
    return answers.with(
        fact, new Answers.Recorded(new Answer.Given(value), Provenance.PLAYER_TOLD));
  }

  private static Answers unknown(String fact) {
    return ready()
        .with(
            fact,
            new Answers.Recorded(new Answer.Absent(Answer.Reason.UNKNOWN), Provenance.PLAYER_TOLD));
  }

  /** The interview as far as it lets itself be brought: the task taken up, its checks answered. */
  private static Interview atTheTask(Answers answers, Task task, Provenance.By asker) {
    Interview interview =
        Interview.reopen(
            BANK.questionnaire(), answers, Interview.Route.CORE, asker, Optional.empty());
    interview =
        held(interview)
            .after(new Message.TakeUpTask(task.fact(), task.kinds(), task.forClinician()));
    for (int i = 0; i < 5 && interview.current().isPresent(); i++) {
      String fact = interview.current().get().field().fact();
      boolean again =
          fact.equals("safe.chest") || fact.equals("safe.adNow") || fact.equals("pain.now");
      Optional<Value> value = answers.value(fact);
      if (again && value.isPresent()) {
        interview = held(interview.after(new Message.Give(value.get(), Provenance.PLAYER_TOLD)));
      }
    }
    return interview;
  }

  private static Interview held(Interview interview) {
    boolean clinician = interview.asker() == Provenance.By.CLINICIAN;
    Set<TaskKind> holds = Holds.of(RULES.advise(interview.answers()), clinician);
    return interview.after(new Message.Hold(holds));
  }

  private static TaskSetup setup(Answers answers, String key, TaskGate.Day day) {
    Task task = GATE.book().task(key).orElseThrow();
    Interview interview = atTheTask(answers, task, Provenance.By.VOLUNTEER);
    return GATE.setup(interview, task, day, true);
  }

  private static String refusals(Answers answers, String key, TaskGate.Day day) {
    return String.join(" ", setup(answers, key, day).refusals());
  }

  private static TaskGate.Day after(Measured... measured) {
    return new TaskGate.Day(List.of(measured), Optional.of(600L), "morning", 20);
  }

  private static Measured measured(String task, String place, int seconds, Measured.Ending ending) {
    return new Measured(
        "2026-11-30T10:00:00Z",
        task,
        place,
        Provenance.By.VOLUNTEER,
        new Measured.Circumstances("room", "sittingAsInPlay", "armAndFeet", "morning", 5),
        false,
        List.of(new Measured.Go(false, "", Map.of())),
        seconds,
        ending,
        ending == Measured.Ending.STOPPED ? "pain" : "",
        List.of());
  }

  @Test
  void aTaskMayBeginWhereEverythingHolds() {
    TaskSetup setup = setup(ready(), "T1.R.I", TaskGate.Day.NEW);
    assertEquals(List.of(), setup.refusals());
    assertEquals(Optional.of(3.0), setup.pain());
    assertEquals(false, setup.onCall());
  }

  @TestFactory
  Stream<DynamicTest> whatTheFactsForbidIsRefusedWithItsReason() {
    Answers ok = ready();
    Value.Code no = new Value.Code("no");
    Value.Code video = new Value.Code("video");
    return Stream.of(
            entry("consent taken back", with(ok, "consent.state", no), "no clear yes"),
            entry("consent not asked", ok.without("consent.state"), "no clear yes"),
            entry("no stop signal", ok.without("session.stopSignal"), "no stop signal"),
            entry(
                "a child alone",
                with(
                    with(ok, "age.band", new Value.Code("13-17")),
                    "age.adultPresent",
                    new Value.Flag(false)),
                "adult has to be here"),
            entry(
                "an adult nobody asked about",
                with(ok, "age.band", new Value.Code("13-17")),
                "adult has to be here"),
            entry(
                "a call without a helper",
                with(
                    with(ok, "session.mode", video),
                    "session.helperPresent",
                    new Value.Flag(false)),
                "On a call somebody must be with you"),
            entry(
                "a call without a number",
                with(
                    with(ok, "session.mode", video),
                    "session.emergencyPlan",
                    new Value.Flag(false)),
                "On a call somebody must be with you"),
            entry(
                "nobody said where",
                ok.without("session.mode"),
                "On a call somebody must be with you"),
            entry("pain at 7", with(ok, "pain.now", new Value.Number(7)), "Pain is at 7 or more"),
            entry("pain not known", unknown("pain.now"), "or we do not know it"),
            entry(
                "a sudden change",
                with(ok, "safe.suddenNeuro", new Value.Code("recentUnchecked")),
                "on hold"),
            entry("an emergency", with(ok, "safe.suddenNeuro", new Value.Code("now")), "on hold"),
            entry(
                "growing weakness",
                with(ok, "safe.progNeuro", new Value.Code("unchecked")),
                "on hold"),
            entry(
                "a new seizure",
                with(ok, "safe.seizure", new Value.Code("newUnchecked")),
                "on hold"),
            entry("an open safety question", ok.without("safe.fragile"), "on hold"),
            entry("a safety question nobody can answer", unknown("safe.skin"), "on hold"),
            entry(
                "broken skin",
                with(
                    with(ok, "safe.skin", new Value.Code("broken")),
                    "safe.skin.where",
                    new Value.Codes(List.of("legL"))),
                "on hold"),
            entry(
                "a finger that rests",
                with(ok, "digit.R.state.I", new Value.Code("rest")),
                "rests today"),
            entry(
                "a finger that hurts",
                with(ok, "digit.R.pain.I", new Value.Number(6)),
                "hurts too much"))
        .map(
            e ->
                DynamicTest.dynamicTest(
                    e.name(),
                    () -> {
                      String said = refusals(e.answers(), "T1.R.I", TaskGate.Day.NEW);
                      assertTrue(said.contains(e.says()), said);
                    }));
  }

  private record Entry(String name, Answers answers, String says) {}

  private static Entry entry(String name, Answers answers, String says) {
    return new Entry(name, answers, says);
  }

  @Test
  void aPlayerAloneAndAVolunteerWithAClinicianTaskAreRefused() {
    Task tap = GATE.book().task("T1.R.I").orElseThrow();
    Interview alone = atTheTask(ready(), tap, Provenance.By.PLAYER);
    assertTrue(
        GATE.setup(alone, tap, TaskGate.Day.NEW, true)
            .refusals()
            .contains("A second person runs this with you. Please ask somebody to sit with you."));
    Task sip = GATE.book().task("T10").orElseThrow();
    Interview volunteer = atTheTask(ready(), sip, Provenance.By.VOLUNTEER);
    assertTrue(
        GATE.setup(volunteer, sip, TaskGate.Day.NEW, true)
            .refusals()
            .contains("Only a clinician may run this."));
  }

  @Test
  void aTaskNobodyTookUpIsRefusedHoweverGoodTheAnswersAre() {
    Task tap = GATE.book().task("T1.R.I").orElseThrow();
    Interview jumped =
        Interview.reopen(
                BANK.questionnaire(),
                ready(),
                Interview.Route.CORE,
                Provenance.By.VOLUNTEER,
                Optional.of("digit.R.tap10.I"))
            .after(new Message.JumpTo("digit.R.tap10.I"));
    assertEquals(
        List.of("The questions before a task come first."),
        GATE.setup(jumped, tap, TaskGate.Day.NEW, true).refusals());
  }

  private static TaskGate.Day after(Diary.What what, String stop, int seconds, Measured... tasks) {
    Diary diary = new Diary(List.of(new Diary.Entry(DAY, what, stop, seconds)), List.of());
    return new TaskGate.Day(List.of(tasks), Optional.of(600L), "morning", 20, diary, DAY);
  }

  @Test
  void practiceAndPointingUseUpTheTimedWorkOfTheDayToo() {
    for (Diary.What what : List.of(Diary.What.PRACTICE, Diary.What.POINTING)) {
      assertTrue(refusals(ready(), "T1.R.I", after(what, "", 715)).contains("12 minutes"));
      assertEquals("", refusals(ready(), "T1.R.I", after(what, "", 600)));
    }
    assertEquals(
        "", refusals(ready(), "T1.R.I", after(Diary.What.TRIAL, "", 0)), "play is no test");
  }

  @Test
  void whereEffortCanBringACrashPracticeIsOneOfTheTwo() {
    Answers crash = with(ready(), "cond.pem", new Value.Code("usually"));
    Measured one = measured("T1", "R.I", 20, Measured.Ending.DONE);
    String two = refusals(crash, "T1.R.M", after(Diary.What.PRACTICE, "", 60, one));
    assertTrue(two.contains("At most 2 tasks"), two);
    assertEquals("", refusals(crash, "T1.R.M", after(Diary.What.PRACTICE, "", 60)));
    Diary both =
        new Diary(
            List.of(
                new Diary.Entry(DAY, Diary.What.TASK, "", 20),
                new Diary.Entry(DAY, Diary.What.POINTING, "", 20)),
            List.of());
    assertTrue(GATE.enoughFor(crash, both, DAY).toString().contains("At most 2 tasks"));
    assertEquals(List.of(), GATE.enoughFor(crash, both, "2026-12-01"));
    assertEquals(List.of(), GATE.enoughFor(ready(), both, DAY));
  }

  @Test
  void practiceBeginsOnlyWhereAMinuteOfTheDaysTimedWorkIsLeft() {
    Diary much = new Diary(List.of(new Diary.Entry(DAY, Diary.What.TASK, "", 670)), List.of());
    assertTrue(GATE.enoughFor(ready(), much, DAY).toString().contains("12 minutes"));
    assertEquals(50, GATE.secondsLeft(much, DAY));
    assertEquals(720, GATE.secondsLeft(much, "2026-12-01"));
  }

  @Test
  void whatWasStoppedTodayIsNotDoneAgainToday() {
    TaskGate.Day day = after(measured("T1", "R.I", 20, Measured.Ending.STOPPED));
    assertTrue(refusals(ready(), "T1.R.I", day).contains("stopped today"));
    assertEquals("", refusals(ready(), "T2.R.I", day));
  }

  @Test
  void twelveMinutesOfTimedWorkADayAreEnough() {
    TaskGate.Day day = after(measured("T2", "R.I", 715, Measured.Ending.DONE));
    assertTrue(refusals(ready(), "T1.R.I", day).contains("12 minutes"));
  }

  @Test
  void threeFingersOfAHandADayAreEnough() {
    TaskGate.Day day =
        after(
            measured("T1", "R.T", 20, Measured.Ending.DONE),
            measured("T2", "R.M", 20, Measured.Ending.DONE),
            measured("T1", "R.R", 20, Measured.Ending.DONE));
    assertTrue(refusals(ready(), "T1.R.I", day).contains("At most 3 fingers"));
    assertEquals("", refusals(ready(), "T2.R.T", day), "a finger already used may go on");
  }

  @Test
  void whereEffortCanBringACrashTwoTasksADayAreEnough() {
    TaskGate.Day day =
        after(
            measured("T1", "R.I", 20, Measured.Ending.DONE),
            measured("T2", "R.I", 20, Measured.Ending.DONE));
    Answers crash = with(ready(), "cond.pem", new Value.Code("usually"));
    assertTrue(refusals(crash, "T1.R.M", day).contains("At most 2 tasks"));
    assertTrue(refusals(ready().without("cond.pem"), "T1.R.M", day).contains("At most 2 tasks"));
    assertEquals("", refusals(ready(), "T1.R.M", day));
    assertTrue(refusals(crash, "T1b", TaskGate.Day.NEW).contains("crash"));
  }

  @Test
  void restIsOneMinuteOrThreeWhereTirednessIsHigh() {
    TaskGate.Day day =
        new TaskGate.Day(
            List.of(measured("T2", "R.I", 30, Measured.Ending.DONE)),
            Optional.of(20L),
            "morning",
            9);
    assertEquals(40, setup(ready(), "T1.R.I", day).restSeconds());
    Answers tired = with(ready(), "fatigue.before", new Value.Number(5));
    assertEquals(160, setup(tired, "T1.R.I", day).restSeconds());
  }

  @Test
  void somethingElseStoppedTodayEndsTasksForTheDay() {
    String why = refusals(ready(), "T1.R.I", after(Diary.What.TRIAL, "spasm", 0));
    assertTrue(why.startsWith("A trial was stopped today: A spasm or cramp"), why);
  }

  @Test
  void aTaskOnHoldSaysWhyWhenItIsTakenUp() {
    Task tap = GATE.book().task("T1.R.I").orElseThrow();
    Answers call =
        with(
            with(ready(), "session.mode", new Value.Code("video")),
            "session.helperPresent",
            new Value.Flag(false));
    String alone = takenUp(call, tap);
    assertTrue(alone.contains("tasks are on hold. On a call somebody must be with you"), alone);
    assertTrue(alone.endsWith("(Question CON-06.)"), alone);
    String open = takenUp(ready().without("safe.fragile"), tap);
    assertTrue(open.endsWith("A stop, a caution or an open safety question stands."), open);
  }

  private static String takenUp(Answers answers, Task task) {
    Interview interview =
        held(
            Interview.reopen(
                BANK.questionnaire(),
                answers,
                Interview.Route.CORE,
                Provenance.By.VOLUNTEER,
                Optional.empty()));
    return interview.after(GATE.takeUp(interview, task)).refusal().orElse("");
  }
}
