package closehand.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.TaskBook;
import closehand.interview.Answer;
import closehand.interview.Answers;
import closehand.interview.Interview;
import closehand.interview.Measured;
import closehand.interview.Provenance;
import closehand.interview.Value;
import closehand.report.Glyphs;
import closehand.screen.frame.Frame;
import closehand.screen.frame.Key;
import closehand.screen.frame.ScreenSize;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.mockito.Mockito;

/** A task on the full screen, from its question through the go to the answer, by keys alone. */
class TaskOnScreenTest {
  private static final ScreenSize SIZE = new ScreenSize(80, 40);
  private final CoreDesk desk = new CoreDesk();
  private final ScreenFace face;
  private long millis = 100_000;

  TaskOnScreenTest() {
    CaseBook book = Mockito.mock(CaseBook.class);
    Mockito.when(book.names()).thenReturn(List.of());
    face = new ScreenFace(book, Glyphs.UNICODE, Settings.USUAL);
    face.frame(SIZE);
  }

  /** The first invented player, standing at a question. */
  private TaskOnScreenTest at(String question) {
    Answers answers =
        CoreDesk.goldCase(0)
            .with(
                "pain.now",
                new Answers.Recorded(new Answer.Given(new Value.Number(2)), Provenance.PLAYER_TOLD))
            .with(
                "session.stopSignal",
                new Answers.Recorded(
                    new Answer.Given(new Value.Text("a raised hand")), Provenance.PLAYER_TOLD));
    Interview interview =
        Interview.reopen(
            CoreDesk.BANK.questionnaire(),
            answers,
            Interview.Route.FULL,
            Provenance.By.VOLUNTEER,
            Optional.of(question));
    face.with(new CaseBook.Opened(Optional.of(new CaseBook.Holding(desk, interview)), List.of()));
    return readNotices();
  }

  private TaskOnScreenTest readNotices() {
    for (int i = 0; i < 12 && (sees("Take care") || sees("I have read this")); i++) {
      keys("1");
    }
    return this;
  }

  private Interview interview() {
    return face.interview().orElseThrow();
  }

  private boolean sees(String part) {
    Frame frame = face.frame(SIZE);
    return String.join(" ", frame.text()).replaceAll("\\s+", " ").contains(part);
  }

  private TaskOnScreenTest expect(String part) {
    assertTrue(sees(part), () -> String.join("\n", face.frame(SIZE).text()));
    return this;
  }

  private TaskOnScreenTest keys(String keys) {
    for (char key : keys.toCharArray()) {
      millis += 1000;
      face.press(Scenes.key(key), millis);
    }
    return this;
  }

  private TaskOnScreenTest press(Key key, long afterMillis) {
    millis += afterMillis;
    face.press(key, millis);
    return this;
  }

  private TaskOnScreenTest passed(long afterMillis) {
    return press(new Key.Passed(), afterMillis);
  }

  /** Up to the task's first page: taken up, the questions before it answered. */
  private TaskOnScreenTest begun(String question) {
    at(question).keys("m").readNotices().keys("1").keys("02").keys("1");
    return expect("A task, measured");
  }

  /** The tap check with the keyboard counting, practised, ready for the first go. */
  private TaskOnScreenTest readyToTap() {
    begun("digit.L.tap10.I").keys("1").keys("111").keys("1").keys("1").keys("2");
    expect("One for practice").keys("1").press(Key.of('a'), 500).press(Key.of('a'), 400);
    passed(10_100).expect("How strong is your pain now").keys("021");
    return expect("Now the first one that counts");
  }

  @Test
  void tapsOnAnyKeyAreCountedInTheirTenSecondsAndBecomeAnAnswer() {
    readyToTap().keys("1");
    for (int i = 0; i < 12; i++) {
      press(Key.of('k'), 301 + 13 * i);
    }
    assertTrue(face.waitMillis(millis) > 0);
    passed(face.waitMillis(millis)).keys("021").expect("Would you like another one?").keys("2");
    expect("Did neighbouring fingers press along?").keys("2");
    expect("12 taps").expect("Single presses fit well here").keys("1");
    assertEquals(Optional.of(new Value.Number(12)), interview().answers().value("digit.L.tap10.I"));
    Provenance from = interview().answers().byFact().get("digit.L.tap10.I").provenance();
    assertEquals(Provenance.How.MEASURED, from.how());
    assertTrue(from.note().contains("counted by the keyboard"), from::note);
    assertEquals(Optional.of("safe.chest"), interview().at());
    assertEquals(-1, face.waitMillis(millis));
  }

  @Test
  void whatIsAskedOnceACountIsTypedAndShownOnceMore() {
    begun("digit.L.keys").keys("1").keys("111").keys("11");
    expect("One for practice").keys("1").expect("Begin with the easy keys").keys("E");
    keys("021").keys("1").keys("E").expect("How many different keys were reached?");
    keys("14").expect("You typed: 14").keys("2").keys("13").keys("1").keys("021").keys("2");
    expect("13 keys").keys("1");
    assertEquals(Optional.of(new Value.Number(13)), interview().answers().value("digit.L.keys"));
  }

  @TestFactory
  Stream<DynamicTest> eachOfTheTenStopsEndsItFromAGoAndFromAPage() {
    List<DynamicTest> tests = new ArrayList<>();
    List<TaskBook.Stop> stops = CoreDesk.BANK.tasks().orElseThrow().stops().all();
    for (int i = 0; i < stops.size(); i++) {
      TaskBook.Stop stop = stops.get(i);
      String choice = "7".repeat(i / 6) + (char) ('1' + i % 6);
      tests.add(
          DynamicTest.dynamicTest(
              stop.id() + " from a page",
              () -> new TaskOnScreenTest().begun("digit.L.keys").keys("8" + choice).stopped(stop)));
      String settled = stop.waits() ? "2" : "";
      tests.add(
          DynamicTest.dynamicTest(
              stop.id() + " from a go",
              () ->
                  new TaskOnScreenTest()
                      .readyToTap()
                      .keys("1")
                      .press(Key.of('9'), 400)
                      .keys(choice + settled)
                      .stopped(stop)));
    }
    return tests.stream();
  }

  private void stopped(TaskBook.Stop stop) {
    expect("We stop here").expect("not done again today").keys("1");
    Measured measured = interview().measured().get(0);
    assertEquals(Measured.Ending.STOPPED, measured.ending());
    assertEquals(stop.id(), measured.stop());
    assertEquals(Optional.of("safe.chest"), interview().at(), "what matters is asked again");
    assertEquals(stop.endsTasks(), interview().tasksStopped().isPresent());
    keys("u");
    assertEquals(1, interview().measured().size(), "nothing leads back into it");
  }

  @Test
  void nineStopsForPainOnEveryPageAndPDoesWhereANumberIsTyped() {
    for (String way : List.of("", "1", "11", "1111", "11111", "111112")) {
      TaskOnScreenTest one = new TaskOnScreenTest().begun("digit.L.tap10.I").keys(way);
      one.keys("9").expect("Pain has gone up".substring(1).toLowerCase(java.util.Locale.ROOT));
    }
    begun("digit.L.keys").keys("1").keys("111").keys("11").keys("1").keys("E");
    expect("How strong is your pain now").keys("p").expect("We stop here");
  }

  @TestFactory
  Stream<DynamicTest> whateverHappensToTheWindowSpoilsTheGo() {
    return Stream.of(
            new Key.Resized(new ScreenSize(60, 20)), new Key.Pasted("kkkk"), new Key.Focus(false))
        .map(
            key ->
                DynamicTest.dynamicTest(
                    key.toString(),
                    () -> {
                      TaskOnScreenTest one = new TaskOnScreenTest().readyToTap().keys("1");
                      one.press(Key.of('k'), 300).press(Key.of('k'), 320).press(key, 100);
                      one.expect("This go does not count");
                      one.keys("1").keys("021").expect("Now the first one that counts");
                    }));
  }

  @Test
  void aHeldKeySpoilsTheGo() {
    readyToTap().keys("1").press(Key.of('k'), 300);
    press(Key.of('k'), 660).press(Key.of('k'), 40).expect("A key was held down");
  }

  @Test
  void aTerminalThatIsCutOffLeavesNoResultAndEndsTheProgram() {
    readyToTap().keys("1").press(Key.of('k'), 300).press(new Key.Closed(), 300);
    assertTrue(face.over());
    assertEquals(
        Optional.of(Measured.Ending.LEFT),
        interview().measured().stream().map(Measured::ending).findFirst());
    assertEquals("disconnected", interview().measured().get(0).goes().get(1).discarded());
  }

  @Test
  void painFoundBeforeItKeepsTheTaskAway() {
    at("digit.L.keys").keys("m").readNotices().keys("1").keys("07").keys("1");
    assertEquals(Optional.empty(), interview().taskDue());
    assertTrue(interview().tasksStopped().isPresent());
    assertTrue(!sees("A task, measured"));
  }

  @Test
  void aQuestionWithoutATaskSaysSo() {
    at("hand.preferred").keys("m").expect("No task belongs to this question");
  }
}
