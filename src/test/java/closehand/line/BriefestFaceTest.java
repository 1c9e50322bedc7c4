package closehand.line;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Field;
import closehand.bank.Questionnaire;
import closehand.interview.Interview;
import closehand.interview.Provenance;
import closehand.json.BankReader;
import closehand.json.EmbeddedBank;
import closehand.report.Consultation;
import closehand.report.Desk;
import closehand.report.NextStep;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The briefest route on the line face: proposals are followed, and enough is said when it is. */
class BriefestFaceTest {
  private static final Questionnaire CORE = core();

  private static Questionnaire core() {
    try {
      return BankReader.read(new EmbeddedBank(), BankReader.Extent.FOR_USE)
          .bank()
          .orElseThrow()
          .questionnaire();
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  /** Somebody at a keyboard who types these lines. */
  private static final class Keyboard implements Console {
    private final Deque<String> typed;
    private final List<String> shown = new ArrayList<>();

    Keyboard(String... lines) {
      this.typed = new ArrayDeque<>(List.of(lines));
    }

    String all() {
      return String.join("\n", shown);
    }

    @Override
    public void say(String sentences) {
      shown.add(sentences);
    }

    @Override
    public void item(String mark, String text) {
      shown.add(mark + " " + text);
    }

    @Override
    public void lines(List<String> lines) {
      shown.addAll(lines);
    }

    @Override
    public void gap() {}

    @Override
    public Optional<String> ask(String prompt) {
      shown.add(prompt);
      return Optional.ofNullable(typed.poll());
    }

    @Override
    public boolean scripted() {
      return false;
    }

    @Override
    public int lineNumber() {
      return 0;
    }
  }

  /** Proposes the hands first and then says that it is enough. */
  private static final class Proposing implements Desk {
    @Override
    public Optional<NextStep> next(Interview interview) {
      boolean asked = interview.answers().byFact().containsKey("hand.preferred");
      return Optional.of(
          asked
              ? new NextStep(Optional.empty(), List.of("The 9 questions left cannot change it."))
              : new NextStep(Optional.of("HND-01"), List.of("Next: the hands, since they tell.")));
    }

    @Override
    public Consultation consult(Interview interview) {
      return new Consultation(List.of(), Set.of(), List.of(), List.of(), List::of);
    }

    @Override
    public List<String> keep(Interview interview) {
      return List.of();
    }

    @Override
    public List<String> page(Interview interview) {
      return List.of();
    }

    @Override
    public Map<String, String> names(Interview interview, Field field) {
      return Map.of();
    }

    @Override
    public String today() {
      return "2026-11-25";
    }

    @Override
    public List<String> delete() {
      return List.of();
    }
  }

  private static LineFace face(Keyboard keyboard) {
    return new LineFace(
        keyboard,
        new Proposing(),
        Interview.begin(CORE, Interview.Route.BRIEF, Provenance.By.CLINICIAN));
  }

  @Test
  void theProposedQuestionIsAskedWithItsReasonAndThenItIsEnough() {
    Keyboard keyboard = new Keyboard("1", "", "q");
    LineFace face = face(keyboard);
    assertEquals(LineFace.Ending.FINISHED, face.run());
    String all = keyboard.all();
    assertTrue(all.indexOf("Next: the hands, since they tell.") < all.indexOf("HND-01."), all);
    assertTrue(all.contains("The 9 questions left cannot change it."), all);
    assertTrue(all.contains("That was the last question for now."), all);
  }

  @Test
  void whoWantsTheDetailsGoesOnWithTheShortInterview() {
    Keyboard keyboard = new Keyboard("1", "y");
    LineFace face = face(keyboard);
    assertEquals(LineFace.Ending.INPUT_ENDED, face.run());
    assertEquals(Interview.Route.CORE, face.interview().route());
    assertTrue(keyboard.all().contains("CON-01."), keyboard.all());
  }
}
