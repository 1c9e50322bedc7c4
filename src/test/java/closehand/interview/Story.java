package closehand.interview;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Questionnaire;
import closehand.bank.TaskKind;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** An interview told step by step: what is typed, and what is asked next. */
final class Story {
  private Interview now;

  private Story(Interview start) {
    now = start;
  }

  static Story given(Questionnaire questionnaire) {
    return new Story(Interview.begin(questionnaire, Interview.Route.CORE, Provenance.By.VOLUNTEER));
  }

  static Story of(Interview interview) {
    return new Story(interview);
  }

  Interview now() {
    return now;
  }

  /** Types an answer to this fact, which must be the one asked for. */
  Story answer(String fact, String typed) {
    assertEquals(Optional.of(fact), now.at());
    Entry entry = Entry.read(now.current().orElseThrow().field().type(), typed);
    return send(
        new Message.Give(
            assertInstanceOf(Entry.Read.class, entry).value(), Provenance.PLAYER_TOLD));
  }

  Story say(Answer.Reason reason) {
    return send(new Message.NoAnswer(reason, Provenance.PLAYER_TOLD));
  }

  Story answerFor(String fact, Value value) {
    return send(new Message.GiveFor(fact, value, Provenance.PLAYER_TOLD));
  }

  Story note(String text) {
    return send(new Message.Note(text));
  }

  Story back() {
    return send(new Message.Back());
  }

  Story jump(String id) {
    return send(new Message.JumpTo(id));
  }

  Story onward() {
    return send(new Message.Onward());
  }

  Story hold(TaskKind... kinds) {
    return send(new Message.Hold(Set.of(kinds)));
  }

  Story resume() {
    return send(new Message.Resume());
  }

  Story send(Message message) {
    now = now.after(message);
    return this;
  }

  Story expectNext(String fact) {
    assertEquals(Optional.empty(), now.refusal());
    assertEquals(Optional.of(fact), now.at());
    return this;
  }

  Story expectAgain(Prompt.Again again) {
    assertEquals(again, now.current().orElseThrow().again());
    return this;
  }

  Story expectFinished() {
    assertEquals(Optional.empty(), now.at());
    assertTrue(now.finished());
    return this;
  }

  /** The last message was refused with these words, and nothing but the refusal changed. */
  Story expectRefused(String words) {
    String refusal = now.refusal().orElseThrow(() -> new AssertionError("not refused"));
    assertTrue(refusal.contains(words), refusal);
    return this;
  }

  Story expectOpen(String... facts) {
    assertEquals(List.of(facts), now.open().stream().map(o -> o.field().fact()).toList());
    return this;
  }

  Story expectPassedOver(String... facts) {
    assertEquals(List.of(facts), now.passedOver().stream().map(o -> o.field().fact()).toList());
    return this;
  }

  Story expectValue(String fact, Value value) {
    assertEquals(Optional.of(value), now.answers().value(fact));
    return this;
  }
}
