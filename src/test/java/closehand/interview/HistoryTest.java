package closehand.interview;

import static org.junit.jupiter.api.Assertions.assertEquals;

import closehand.bank.Questionnaire;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What is written down of what happens in an interview. */
class HistoryTest {
  private static final Questionnaire FORM =
      Forms.form(
          Forms.section(
              "A",
              Forms.question("A-1", Forms.one("consent.state", "yes", "no")),
              Forms.question("A-2", Forms.yesNo("skin.sore")),
              Forms.question("A-3", Forms.words("skin.where").when(Forms.isTrue("skin.sore")))));
  private static final History.Stamp NOON = new History.Stamp("2026-11-25T12:00:00Z", 60);

  private CaseRecord record = CaseRecord.NONE;
  private Interview now = Interview.begin(FORM, Interview.Route.CORE, Provenance.By.VOLUNTEER);

  private void happens(Message message) {
    Interview next = now.after(message);
    record = History.after(record, now, next, NOON);
    now = next;
  }

  private void given(String fact, Value value) {
    happens(new Message.JumpTo(fact));
    happens(new Message.Give(value, Provenance.PLAYER_TOLD));
  }

  private List<String> story() {
    return record.history().stream()
        .map(
            e ->
                String.join(
                        " ",
                        e.what().code(),
                        e.subject(),
                        words(e.from()) + ">" + words(e.to()),
                        e.why())
                    .strip())
        .toList();
  }

  private static String words(Optional<Answer> answer) {
    return answer
        .map(a -> a instanceof Answer.Absent none ? none.reason().code() : a.given().toString())
        .orElse("")
        .replaceAll("Optional\\[\\w+\\[\\w+=|\\]\\]", "");
  }

  @Test
  void answersChangeGoAsideAndComeBack() {
    given("skin.sore", new Value.Flag(true));
    given("skin.where", new Value.Text("heel"));
    given("skin.sore", new Value.Flag(false));
    given("skin.sore", new Value.Flag(true));
    happens(new Message.JumpTo("skin.where"));
    happens(new Message.NoAnswer(Answer.Reason.DECLINED, Provenance.PLAYER_TOLD));
    happens(new Message.Note("does not like to say"));
    assertEquals(
        List.of(
            "answered skin.sore >true",
            "answered skin.where >heel",
            "changed skin.sore true>false",
            "setAside skin.where >heel skin.sore",
            "changed skin.sore false>true",
            "backInUse skin.where >heel skin.sore",
            "changed skin.where heel>declined",
            "noted skin.where >"),
        story());
    assertEquals(NOON.at(), record.history().get(0).at());
    assertEquals(60, record.history().get(0).elapsedSeconds());
    assertEquals("player", record.history().get(0).by());
  }

  @Test
  void movingAboutIsNoEvent() {
    given("skin.sore", new Value.Flag(true));
    int before = record.history().size();
    happens(new Message.Back());
    happens(new Message.Onward());
    happens(new Message.TakeRoute(Interview.Route.FULL));
    assertEquals(before, record.history().size());
  }

  @Test
  void consentIsWrittenDownEveryTimeItIsAskedEvenWithTheSameAnswer() {
    given("consent.state", new Value.Code("yes"));
    given("skin.sore", new Value.Flag(false));
    happens(new Message.Resume());
    happens(new Message.Give(new Value.Code("yes"), Provenance.PLAYER_TOLD));
    happens(new Message.Resume());
    happens(new Message.Give(new Value.Code("no"), Provenance.PLAYER_TOLD));
    assertEquals(
        List.of("yes", "yes", "no"),
        record.consents().stream().map(c -> words(Optional.of(c.answer()))).toList());
    assertEquals(
        List.of(
            "answered consent.state >yes",
            "answered skin.sore >false",
            "confirmed consent.state yes>yes",
            "changed consent.state yes>no"),
        story());
  }

  @Test
  void aLoweredStopNamesWhoAndWhyAndStandsAgainOnOtherAnswers() {
    happens(new Message.Conduct(Provenance.By.CLINICIAN));
    Answers.Lowered lowered =
        new Answers.Lowered("C-SKIN", "A. Therapist (invented)", "2026-11-25", "healed");
    happens(new Message.Lower(lowered));
    Event event = record.history().get(0);
    assertEquals(Event.What.LOWERED, event.what());
    assertEquals("C-SKIN", event.subject());
    assertEquals("A. Therapist (invented)", event.by());
    assertEquals("healed", event.why());
    Interview again = now.with(now.answers().withNothingLowered());
    record = History.after(record, now, again, NOON);
    assertEquals("standsAgain C-SKIN >", story().get(1));
  }

  @Test
  void theSameSuggestionsAreKeptOnce() {
    Suggested one =
        new Suggested(
            NOON.at(),
            "1.0.0",
            "abc",
            false,
            List.of(),
            List.of("C-SKIN"),
            List.of(new Suggested.Idea("SET", "settings first", 3)));
    Suggested later =
        new Suggested(
            "2026-12-01T12:00:00Z",
            "1.1.0",
            "abd",
            false,
            List.of(),
            List.of("C-SKIN"),
            one.ideas());
    Suggested other =
        new Suggested(
            "2026-12-02T12:00:00Z", "1.1.0", "abd", true, List.of("C-NECK"), List.of(), List.of());
    CaseRecord kept = CaseRecord.NONE.suggesting(one).suggesting(later).suggesting(other);
    assertEquals(List.of(one, other), kept.suggested());
  }
}
