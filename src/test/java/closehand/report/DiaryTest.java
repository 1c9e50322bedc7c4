package closehand.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Bank;
import closehand.bank.StopSign;
import closehand.interview.Measured;
import closehand.interview.Provenance;
import closehand.json.BankReader;
import closehand.json.EmbeddedBank;
import closehand.measure.practice.PointingRecord;
import closehand.measure.practice.PracticeRecord;
import closehand.measure.practice.StopReason;
import closehand.measure.trial.Felt;
import closehand.measure.trial.SetUp;
import closehand.measure.trial.Trial;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * A sign of the body in one activity ends the others for the day, and what cannot be read is never
 * taken for well. All records are invented.
 */
class DiaryTest {
  private static final String TODAY = "2026-11-30";
  private static final String TOMORROW = "2026-12-01";
  private static final String MORNING = TODAY + "T10:00:00Z";
  private static Optional<Bank> bank = Optional.empty();

  @BeforeAll
  static void read() throws IOException {
    bank = BankReader.read(new EmbeddedBank(), BankReader.Extent.FOR_USE).bank();
  }

  private static Optional<String> why(Diary diary, String day) {
    return diary.why(bank.orElseThrow(), day);
  }

  private static Diary task(Measured.Ending ending, String stop) {
    Measured task =
        new Measured(
            MORNING,
            "T1",
            "R.I",
            Provenance.By.VOLUNTEER,
            new Measured.Circumstances("room", "sittingAsInPlay", "armAndFeet", "morning", 5),
            false,
            List.of(),
            20,
            ending,
            stop,
            List.of());
    return Diary.EMPTY.with(List.of(task));
  }

  private static Diary practice(Optional<StopReason> reason) {
    PracticeRecord run =
        new PracticeRecord(MORNING, 0, 1, true, Map.of(), List.of(), reason, 90, Map.of());
    return new Diary(Diary.entries(List.of(), List.of(run), List.of(), List.of()), List.of());
  }

  private static Diary pointing(Optional<StopReason> reason) {
    PointingRecord record = new PointingRecord(MORNING, reason, 30);
    return new Diary(Diary.entries(List.of(), List.of(), List.of(record), List.of()), List.of());
  }

  private static Diary trial(Optional<StopSign> sign) {
    Trial trial =
        new Trial(
            TODAY,
            SetUp.named("pad"),
            new Trial.Scene("moon race", "first lap"),
            new Trial.Place(Optional.empty(), Optional.empty()),
            List.of(),
            Felt.UNSAID,
            OptionalInt.empty(),
            Felt.UNSAID,
            OptionalInt.empty(),
            OptionalInt.empty(),
            "",
            sign,
            true);
    return new Diary(Diary.entries(List.of(), List.of(), List.of(), List.of(trial)), List.of());
  }

  private static Diary unread(String day, String... reviewed) {
    return new Diary(List.of(new Diary.Entry(day, Diary.What.UNREAD, "", 0)), List.of(reviewed));
  }

  @Test
  void aSignOfTheBodyEndsTheDayAndIsNamed() {
    assertEquals(
        Optional.of(
            "A measured task was stopped today: New tingling, numbness or weakness. So nothing more"
                + " is measured, practised or tried today."),
        why(task(Measured.Ending.STOPPED, "tingling"), TODAY));
    String practised = why(practice(Optional.of(StopReason.of(StopSign.SKIN))), TODAY).orElse("");
    assertTrue(practised.startsWith("A practice run was stopped today: A skin mark"), practised);
    String tried = why(trial(Optional.of(StopSign.SPASM)), TODAY).orElse("");
    assertTrue(tried.startsWith("A trial was stopped today: A spasm or cramp"), tried);
    String pointed = why(pointing(Optional.of(StopReason.of(StopSign.PAIN))), TODAY).orElse("");
    assertTrue(pointed.startsWith("Pointing was stopped today: Pain"), pointed);
  }

  @ParameterizedTest
  @EnumSource(StopSign.class)
  void aSignMeansTheSameInEveryActivity(StopSign sign) {
    boolean ends = !List.of(StopSign.WISH, StopSign.ALONE, StopSign.DISTRESS).contains(sign);
    Optional<StopReason> reason = Optional.of(StopReason.of(sign));
    assertEquals(ends, why(trial(Optional.of(sign)), TODAY).isPresent());
    assertEquals(ends, why(practice(reason), TODAY).isPresent());
    assertEquals(ends, why(pointing(reason), TODAY).isPresent());
    assertEquals(ends, why(task(Measured.Ending.STOPPED, sign.code()), TODAY).isPresent());
  }

  @Test
  void theEndOfTheTimeAndAClosedTerminalSayNothingOfThePlayer() {
    assertEquals(Optional.empty(), why(practice(Optional.of(StopReason.TIME)), TODAY));
    assertEquals(Optional.empty(), why(pointing(Optional.of(StopReason.CLOSED)), TODAY));
  }

  @Test
  void aStopThatNobodyKnowsOrThatWasNotSaidCountsAsOneOfTheBody() {
    assertTrue(why(task(Measured.Ending.STOPPED, "unheard of"), TODAY).isPresent());
    assertTrue(why(task(Measured.Ending.STOPPED, ""), TODAY).isPresent());
  }

  @Test
  void whatCannotBeReadIsAskedAboutAndNeverTakenForWell() {
    String today = why(unread(TODAY), TODAY).orElse("");
    assertTrue(today.contains("Ask the player."), today);
    assertEquals(Optional.empty(), why(unread(TODAY), TOMORROW));
    assertTrue(why(unread(TODAY, TODAY), TODAY).isPresent(), "a review may have been before it");
    String undated = why(unread(""), TODAY).orElse("");
    assertTrue(undated.contains("closehand interview --review"), undated);
    assertTrue(why(unread("", TODAY), TOMORROW).isPresent(), "a review of another day");
    assertEquals(Optional.empty(), why(unread("", TODAY), TODAY));
  }

  @Test
  void whatWentWellAndWhatWasOnAnotherDayForbidsNothing() {
    assertEquals(Optional.empty(), why(task(Measured.Ending.DONE, ""), TODAY));
    assertEquals(Optional.empty(), why(practice(Optional.empty()), TODAY));
    assertEquals(Optional.empty(), why(trial(Optional.empty()), TODAY));
    assertEquals(Optional.empty(), why(task(Measured.Ending.STOPPED, "pain"), TOMORROW));
    Optional<StopReason> pain = Optional.of(StopReason.of(StopSign.PAIN));
    assertEquals(Optional.empty(), why(practice(pain), TOMORROW));
    assertEquals(Optional.empty(), why(trial(Optional.of(StopSign.PAIN)), TOMORROW));
  }

  @Test
  void timedWorkIsCountedByDayAndActivity() {
    Diary diary = practice(Optional.empty());
    assertEquals(90, diary.timedSeconds(TODAY));
    assertEquals(90, diary.timedSeconds(TODAY, Diary.What.PRACTICE));
    assertEquals(0, diary.timedSeconds(TODAY, Diary.What.POINTING));
    assertEquals(0, diary.timedSeconds(TOMORROW));
    assertEquals(1, diary.times(TODAY));
    assertEquals(0, task(Measured.Ending.LEFT, "").times(TODAY), "no go was done");
    assertEquals(0, trial(Optional.empty()).times(TODAY), "play is no timed work");
  }
}
