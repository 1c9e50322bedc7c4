package closehand.measure.followup;

import static org.junit.jupiter.api.Assertions.assertEquals;

import closehand.interview.CaseRecord;
import closehand.interview.Event;
import closehand.interview.Suggested;
import closehand.interview.WellKnown;
import closehand.measure.CoreStops;
import closehand.measure.trial.Day;
import closehand.measure.trial.SetUp;
import closehand.measure.trial.Trial;
import closehand.measure.trial.TrialDialogue;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What is due when. */
class DueTest {
  private static final CaseRecord HANDED_OVER =
      CaseRecord.NONE
          .suggesting(
              new Suggested(
                  "2026-11-01T10:00:00Z", "1.0.0", "abc", false, List.of(), List.of(), List.of()))
          .on(Optional.of("2027-11-01"), Optional.of("2027-05-01"));

  private static List<String> due(CaseRecord record, List<Trial> trials, String by) {
    return Due.of(record, trials, Day.of(by).orElseThrow()).stream()
        .map(d -> d.on().iso() + " " + d.what().code())
        .toList();
  }

  private static CaseRecord answered(CaseRecord record, String fact, String day) {
    return record.with(
        List.of(
            new Event(
                day + "T09:00:00Z",
                0,
                Event.What.ANSWERED,
                fact,
                Optional.empty(),
                Optional.empty(),
                "player",
                "")));
  }

  private static Trial trial(String setUp, String day, String... back) {
    TrialDialogue now = TrialDialogue.on(Trial.begun(day), List.of(), CoreStops.all());
    for (String line : List.of("2", setUp, "", "", "")) {
      now = now.answered(line);
    }
    now = now.answered(back.length > 0 ? back[0] : "");
    for (String line : List.of("game", "scene", "a", "b", "c", "", "1")) {
      now = now.answered(line);
    }
    assertEquals(SetUp.named(setUp), now.trial().setUp());
    return now.trial();
  }

  @Test
  void twoWeeksSixWeeksAndHalfAYearAfterWhatWasSuggested() {
    assertEquals(List.of(), due(HANDED_OVER, List.of(), "2026-11-14"));
    assertEquals(List.of("2026-11-15 two-weeks"), due(HANDED_OVER, List.of(), "2026-11-15"));
    assertEquals(
        List.of(
            "2026-11-15 two-weeks", "2026-12-13 six-weeks", "2027-05-01 review", "2027-11-01 keep"),
        due(HANDED_OVER, List.of(), "2027-11-01"));
  }

  @Test
  void whatWasAskedInTimeIsNotDueAndALittleEarlyCounts() {
    CaseRecord early = answered(HANDED_OVER, WellKnown.REVIEW_CHANGED, "2026-11-12");
    assertEquals(List.of(), due(early, List.of(), "2026-12-01"));
    CaseRecord tooEarly = answered(HANDED_OVER, WellKnown.REVIEW_CHANGED, "2026-11-11");
    assertEquals(List.of("2026-11-15 two-weeks"), due(tooEarly, List.of(), "2026-12-01"));
    CaseRecord late = answered(HANDED_OVER, WellKnown.REVIEW_CHANGED, "2026-12-20");
    assertEquals(List.of(), due(late, List.of(), "2026-12-31"));
  }

  @Test
  void theDayAfterEverySetUpThatIsNew() {
    List<Trial> trials =
        List.of(
            trial("pad", "2026-11-03"), trial("pad", "2026-11-04"), trial("mouse", "2026-11-09"));
    assertEquals(
        List.of("2026-11-04 day-after", "2026-11-10 day-after"),
        due(HANDED_OVER, trials, "2026-11-10"));
    CaseRecord asked = answered(HANDED_OVER, WellKnown.REVIEW_AFTER, "2026-11-05");
    assertEquals(List.of("2026-11-10 day-after"), due(asked, trials, "2026-11-10"));
    CaseRecord sameDay = answered(HANDED_OVER, WellKnown.REVIEW_AFTER, "2026-11-03");
    assertEquals(
        List.of("2026-11-04 day-after"),
        due(sameDay, trials.subList(0, 1), "2026-11-10"),
        "the same day is too soon");
  }

  @Test
  void kitOnLoanGoesBackOnTheLastDayNamed() {
    List<Trial> trials =
        List.of(trial("pad", "2026-11-03", "2026-11-20"), trial("pad", "2026-11-10", "2026-11-30"));
    CaseRecord asked = answered(HANDED_OVER, WellKnown.REVIEW_AFTER, "2026-11-12");
    CaseRecord both = answered(asked, WellKnown.REVIEW_CHANGED, "2026-11-14");
    assertEquals(List.of(), due(both, trials, "2026-11-29"));
    assertEquals(List.of("2026-11-30 kit-back"), due(both, trials, "2026-11-30"));
  }

  @Test
  void noWordOfWhatIsDueTellsOfHealth() {
    for (Due.What what : Due.What.values()) {
      for (String word : List.of("pain", "health", "skin", "numb", "weak")) {
        assertEquals(-1, what.words().indexOf(word), what.words());
      }
    }
  }
}
