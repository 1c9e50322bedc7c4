package closehand.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.interview.Interview;
import closehand.interview.Message;
import closehand.interview.Provenance;
import closehand.report.Glyphs;
import closehand.report.NextStep;
import closehand.screen.frame.Key;
import closehand.screen.frame.ScreenSize;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The briefest route on the full screen. */
class SteeringTest {
  /** Proposes one question, and then nothing more. */
  private static final class Knowing extends CoreDesk {
    @Override
    public Optional<NextStep> next(Interview interview) {
      boolean asked = interview.answers().answer("vision.text").isPresent();
      return Optional.of(
          asked
              ? new NextStep(Optional.empty(), List.of("Enough is known for a first plan."))
              : new NextStep(Optional.of("SEE-01"), List.of("Asked next since it tells most.")));
    }
  }

  private static ScreenModel begun() {
    Interview interview =
        Interview.begin(
                CoreDesk.BANK.questionnaire(), Interview.Route.BRIEF, Provenance.By.VOLUNTEER)
            .after(new Message.JumpTo("SAF-08"));
    return ScreenModel.start(ScreenSize.USUAL, Glyphs.ASCII, Settings.USUAL, List.of())
        .holding(new Knowing(), interview, List.of());
  }

  private static String text(ScreenModel model) {
    return String.join("\n", model.frame().text());
  }

  @Test
  void theQuestionThatTellsMostComesNextAndSaysWhy() {
    ScreenModel model = Scenes.step(begun(), Key.of('1'));
    assertEquals(Optional.of("vision.text"), model.talk().orElseThrow().interview().at());
    assertTrue(text(model).contains("since it tells most"), text(model));
  }

  @Test
  void enoughIsSaidAndOneMayGoOnAllTheSame() {
    ScreenModel enough = Scenes.step(Scenes.step(begun(), Key.of('1')), Key.of('1'));
    assertTrue(text(enough).contains("Enough is known for a first plan."), text(enough));
    ScreenModel end = Scenes.step(enough, Key.of('1'));
    assertTrue(text(end).contains("Thank you"), text(end));
    ScreenModel on = Scenes.step(enough, Key.of('2'));
    assertEquals(Interview.Route.CORE, on.talk().orElseThrow().interview().route());
    assertTrue(on.top().screen() instanceof QuestionScreen, text(on));
  }
}
