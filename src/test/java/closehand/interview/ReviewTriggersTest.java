package closehand.interview;

import static org.junit.jupiter.api.Assertions.assertEquals;

import closehand.bank.Questionnaire;
import closehand.json.CoreForm;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is said at a review ends what was suggested before, or leaves it standing. */
class ReviewTriggersTest {
  private static final Questionnaire CORE = CoreForm.questionnaire();
  private static final History.Stamp NOON = new History.Stamp("2026-11-25T12:00:00Z", 60);
  private static final CaseRecord HANDED_OVER =
      CaseRecord.NONE.suggesting(
          new Suggested(
              "2026-11-01T10:00:00Z", "1.0.0", "abc", false, List.of(), List.of(), List.of()));

  private static List<String> expiredBy(CaseRecord record, String fact, Value value) {
    Interview begun = Interview.begin(CORE, Interview.Route.CORE, Provenance.By.VOLUNTEER);
    Interview asked = begun.after(new Message.JumpTo(fact));
    Interview after = asked.after(new Message.Give(value, Provenance.PLAYER_TOLD));
    assertEquals(Optional.of(value), after.answers().value(fact), "taken");
    return History.after(record, asked, after, NOON).history().stream()
        .filter(e -> e.what() == Event.What.PLAN_EXPIRED)
        .map(Event::why)
        .toList();
  }

  private static List<String> changed(String... codes) {
    return expiredBy(HANDED_OVER, WellKnown.REVIEW_CHANGED, new Value.Codes(List.of(codes)));
  }

  private static List<String> dayAfter(String code) {
    return expiredBy(HANDED_OVER, WellKnown.REVIEW_AFTER, new Value.Code(code));
  }

  @ParameterizedTest
  @CsvSource({
    "health, health",
    "seat, seat",
    "splint, splint",
    "game, game",
    "helper, helper",
    "machine, machine",
    "fall, a fall",
    "grown, growth",
    "unused, nobody used the plan for two weeks"
  })
  void whateverHasChangedEndsItInTheWordsOfTheQuestion(String code, String words) {
    assertEquals(List.of("something has changed since (" + words + ")"), changed(code));
  }

  @Test
  void everyAnswerButNothingIsATrigger() {
    List<String> codes =
        CORE.fieldsByFact().get(WellKnown.REVIEW_CHANGED).type().choices().stream()
            .map(o -> o.code())
            .filter(c -> !c.equals(WellKnown.NOTHING_CHANGED))
            .toList();
    assertEquals(9, codes.size(), codes.toString());
    codes.forEach(code -> assertEquals(1, changed(code).size(), code));
    assertEquals(List.of(), changed(WellKnown.NOTHING_CHANGED));
    assertEquals(
        List.of("something has changed since (seat, a fall)"),
        changed("seat", "fall"),
        "several at once are one reason");
  }

  @Test
  void aMarkNumbnessOrSwellingEndsItHoweverSoonItWasGone() {
    assertEquals(
        List.of("there was a skin mark, numbness or swelling"), dayAfter(WellKnown.SIGN_SETTLED));
    assertEquals(
        List.of("something hurt or stayed for more than a day"), dayAfter(WellKnown.LASTING));
    assertEquals(List.of(), dayAfter("mildSettled"));
    assertEquals(List.of(), dayAfter("none"));
  }

  @Test
  void whereNothingWasSuggestedNothingExpires() {
    assertEquals(
        List.of(),
        expiredBy(CaseRecord.NONE, WellKnown.REVIEW_CHANGED, new Value.Codes(List.of("fall"))));
  }
}
