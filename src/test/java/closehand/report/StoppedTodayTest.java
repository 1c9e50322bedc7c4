package closehand.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Bank;
import closehand.interview.Measured;
import closehand.interview.Provenance;
import closehand.json.BankReader;
import closehand.json.EmbeddedBank;
import closehand.measure.practice.PracticeRecord;
import closehand.measure.practice.StopReason;
import closehand.measure.trial.Felt;
import closehand.measure.trial.SetUp;
import closehand.measure.trial.StopSign;
import closehand.measure.trial.Trial;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** A sign of the body in one activity ends the others for the day. All records are invented. */
class StoppedTodayTest {
  private static final String TODAY = "2026-11-30";
  private static final String MORNING = TODAY + "T10:00:00Z";
  private static Optional<Bank> bank = Optional.empty();

  @BeforeAll
  static void read() throws IOException {
    bank = BankReader.read(new EmbeddedBank(), BankReader.Extent.FOR_USE).bank();
  }

  private static Optional<String> why(StoppedToday stops, String day) {
    return stops.why(bank.orElseThrow(), day);
  }

  private static StoppedToday task(Measured.Ending ending, String stop) {
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
    return StoppedToday.NOTHING.with(List.of(task));
  }

  private static StoppedToday practice(Optional<StopReason> reason) {
    PracticeRecord run =
        new PracticeRecord(MORNING, 0, 1, true, Map.of(), List.of(), reason, Map.of());
    return new StoppedToday(List.of(), List.of(run), List.of());
  }

  private static StoppedToday trial(Optional<StopSign> sign) {
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
    return new StoppedToday(List.of(), List.of(), List.of(trial));
  }

  @Test
  void aSignOfTheBodyEndsTheDayAndIsNamed() {
    assertEquals(
        Optional.of(
            "A measured task was stopped today: New tingling, numbness or weakness. So nothing more"
                + " is measured, practised or tried today."),
        why(task(Measured.Ending.STOPPED, "tingling"), TODAY));
    String practised = why(practice(Optional.of(StopReason.SKIN)), TODAY).orElse("");
    assertTrue(practised.startsWith("A practice run was stopped today: A mark"), practised);
    String tried = why(trial(Optional.of(StopSign.SPASM)), TODAY).orElse("");
    assertTrue(tried.startsWith("A trial was stopped today: A spasm or cramp"), tried);
  }

  @Test
  void everySignCountsButAWishNobodyThereAndTheEndOfTheTime() {
    for (StopSign sign : StopSign.values()) {
      assertEquals(sign.isOfBody(), why(trial(Optional.of(sign)), TODAY).isPresent(), sign.code());
    }
    List<StopReason> others =
        List.of(StopReason.WISH, StopReason.ALONE, StopReason.TIME, StopReason.CLOSED);
    for (StopReason reason : StopReason.values()) {
      assertEquals(
          !others.contains(reason),
          why(practice(Optional.of(reason)), TODAY).isPresent(),
          reason.name());
    }
    List<String> notOfTheBody = List.of("signal", "distress", "alone");
    bank.orElseThrow()
        .tasks()
        .orElseThrow()
        .stops()
        .forEach(
            stop ->
                assertEquals(
                    !notOfTheBody.contains(stop.id()),
                    why(task(Measured.Ending.STOPPED, stop.id()), TODAY).isPresent(),
                    stop.id()));
    assertTrue(why(task(Measured.Ending.STOPPED, "unheard of"), TODAY).isPresent());
  }

  @Test
  void whatWentWellAndWhatWasOnAnotherDayForbidsNothing() {
    assertEquals(Optional.empty(), why(task(Measured.Ending.DONE, ""), TODAY));
    assertEquals(Optional.empty(), why(practice(Optional.empty()), TODAY));
    assertEquals(Optional.empty(), why(trial(Optional.empty()), TODAY));
    String next = "2026-12-01";
    assertEquals(Optional.empty(), why(task(Measured.Ending.STOPPED, "pain"), next));
    assertEquals(Optional.empty(), why(practice(Optional.of(StopReason.PAIN)), next));
    assertEquals(Optional.empty(), why(trial(Optional.of(StopSign.PAIN)), next));
  }
}
