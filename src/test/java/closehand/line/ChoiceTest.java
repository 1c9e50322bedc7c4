package closehand.line;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Questionnaire;
import closehand.interview.Answers;
import closehand.interview.Interview;
import closehand.interview.Message;
import closehand.interview.Provenance;
import closehand.report.Consultation;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A slip at a short choice is never taken for an answer. */
class ChoiceTest {
  private static final class Typing implements Console {
    private final Deque<String> lines;
    private final List<String> said = new ArrayList<>();

    Typing(String... lines) {
      this.lines = new ArrayDeque<>(List.of(lines));
    }

    @Override
    public void say(String text) {
      said.add(text);
    }

    @Override
    public void item(String mark, String text) {
      said.add(mark + " " + text);
    }

    @Override
    public void lines(List<String> some) {
      said.addAll(some);
    }

    @Override
    public void gap() {}

    @Override
    public Optional<String> ask(String prompt) {
      return Optional.ofNullable(lines.poll());
    }

    @Override
    public boolean scripted() {
      return false;
    }

    @Override
    public int lineNumber() {
      return 1;
    }

    boolean heard(String part) {
      return said.stream().anyMatch(s -> s.contains(part));
    }
  }

  @Test
  void whatIsNoNumberIsAskedAgain() {
    Typing typing = new Typing("?", "9", "4");
    assertEquals(Provenance.By.CLINICIAN, Sitting.askWho(typing));
    assertTrue(typing.heard("Please type a number from 1 to 4"));
  }

  @Test
  void enterAloneSaysWhatItTakes() {
    Typing typing = new Typing("");
    assertEquals(Interview.Route.CORE, Sitting.askRoute(typing));
    assertTrue(typing.heard("Taken: the short interview"));
  }

  @Test
  void theEndOfInputTakesTheUsual() {
    assertEquals(Provenance.By.VOLUNTEER, Sitting.askWho(new Typing()));
  }

  @Test
  void oneLetterIsNoReasonToLowerAStop() {
    assertFalse(lower("1", "Ada, nurse", "c", "").isPresent());
    Optional<Answers.Lowered> lowered = lower("1", "Ada, nurse", "c", "seen by the team today");
    assertEquals("seen by the team today", lowered.orElseThrow().reason());
  }

  @Test
  void noNumberLowersNothingAndSaysSo() {
    Typing typing = new Typing("9", "");
    assertFalse(lower(typing).isPresent());
    assertTrue(typing.heard("Nothing was lowered."));
  }

  @Test
  void whatEnterTakesIsSaidBesideIt() {
    Typing typing = new Typing("");
    Sitting.askWho(typing);
    assertTrue(typing.heard("3 a volunteer (or press Enter)"));
  }

  private static Optional<Answers.Lowered> lower(String... typed) {
    return lower(new Typing(typed));
  }

  private static Optional<Answers.Lowered> lower(Typing typing) {
    Questionnaire empty = new Questionnaire("", "", "", List.of(), Map.of());
    Interview interview =
        Interview.begin(empty, Interview.Route.CORE, Provenance.By.CLINICIAN)
            .after(new Message.Conduct(Provenance.By.CLINICIAN));
    return Lowering.ask(
        typing, interview, List.of(new Consultation.Lowerable("C-X", "Something")), "2026-11-25");
  }
}
