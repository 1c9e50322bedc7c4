package closehand.interview;

import static org.junit.jupiter.api.Assertions.assertEquals;

import closehand.bank.Questionnaire;
import closehand.json.CoreForm;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A player who asks alone is not asked as if two people talked. */
class AloneWordingTest {
  private static final Questionnaire CORE = CoreForm.questionnaire();

  private static Prompt prompt(String fact, Provenance.By asker) {
    return Interview.begin(CORE, Interview.Route.FULL, asker)
        .after(new Message.JumpTo(fact))
        .current()
        .orElseThrow();
  }

  @Test
  void whereToMeetIsAskedInOtherWords() {
    Prompt alone = prompt("session.mode", Provenance.By.PLAYER);
    assertEquals(
        "Is somebody with you, in the room or on a call? Whom do you phone if you feel unwell?",
        alone.questionText());
    assertEquals(
        "Where is the person who takes part with you? If nobody does, this does not apply.",
        alone.fieldText());
    Prompt together = prompt("session.mode", Provenance.By.VOLUNTEER);
    assertEquals("Where are we meeting?", together.fieldText());
  }

  @Test
  void noQuestionSpeaksOfTheTwoOfUs() {
    List<String> wrong = new ArrayList<>();
    for (String fact : CORE.fieldsByFact().keySet()) {
      Prompt prompt = prompt(fact, Provenance.By.PLAYER);
      String words = prompt.questionText() + " " + prompt.fieldText();
      if (words.matches(
          "(?i).*\\b(we both|both know|are we|are we meeting|may we|do we|whom do we)\\b.*")) {
        wrong.add(words);
      }
    }
    assertEquals(List.of(), wrong);
  }
}
