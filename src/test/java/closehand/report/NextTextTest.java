package closehand.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Bank;
import closehand.bank.Question;
import closehand.rules.GoldAnswers;
import closehand.rules.next.Proposal;
import closehand.rules.next.Proposal.Because;
import closehand.rules.next.Proposal.Stand;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Why a question comes next, in a sentence. */
class NextTextTest {
  private static final Bank CORE = GoldAnswers.bank();

  private static String said(Because because) {
    Optional<Question> question =
        because instanceof Because.Enough
            ? Optional.empty()
            : CORE.questionnaire().questionOf("hand.preferred");
    NextStep next = NextText.of(new Proposal(question, because), CORE, Glyphs.ASCII);
    assertEquals(question.map(Question::id), next.question());
    assertTrue(next.lines().stream().allMatch(l -> l.length() <= Wrap.WIDTH));
    return String.join(" ", next.lines());
  }

  @Test
  void enoughIsSaidByWhetherItIsFirm() {
    assertEquals(
        "The 11 questions left cannot change the suggestion; go on for the plan's details?",
        said(new Because.Enough(Stand.LEADS_FIRMLY, 11)));
    assertTrue(said(new Because.Enough(Stand.LEADS, 11)).contains("could hardly change"));
    assertTrue(
        said(new Because.Enough(Stand.LEADS_FIRMLY, 1)).startsWith("The question left cannot"));
    assertTrue(
        said(new Because.Enough(Stand.LEADS_FIRMLY, 0))
            .startsWith("Nothing more needs to be asked"));
  }

  @Test
  void whereNothingIsSuggestedNoSuggestionIsSpokenOf() {
    assertEquals(
        "No control is suggested by these answers, and the 2 questions left cannot change that;"
            + " go on for the plan's details?",
        said(new Because.Enough(Stand.NOTHING_CAN_LEAD, 2)));
    assertTrue(
        said(new Because.Enough(Stand.NOTHING_LEADS, 1))
            .contains("and the question left could hardly change that"));
    assertEquals(
        "No control is suggested by these answers.",
        said(new Because.Enough(Stand.NOTHING_LEADS, 0)));
    String withheld = said(new Because.Enough(Stand.WITHHELD, 3));
    assertTrue(withheld.startsWith("Suggestions wait for a health check"), withheld);
    assertTrue(!withheld.contains("the suggestion"), withheld);
  }

  @Test
  void whatItCouldBringInIsNamedAndManyAreCounted() {
    String three =
        said(
            new Because.Telling(
                0.5, List.of("SW_FOOT", "VOICE", "SW_HEAD", "TOUCH", "KEYPAD"), List.of()));
    assertTrue(three.contains("since it could bring in "), three);
    assertTrue(three.endsWith("and 2 more approaches."), three);
    String moves = said(new Because.Telling(0.5, List.of(), List.of("VOICE")));
    assertTrue(moves.contains("could change how spoken commands stands"), moves);
  }

  @Test
  void warningSignsAndCareNameWhatTheyAreAbout() {
    assertTrue(said(new Because.OpenStop(List.of("C-CHEST"))).contains("a warning sign"));
    assertTrue(said(new Because.OpenCare(List.of("C-NECK"))).contains("neck check first"));
    assertTrue(said(new Because.Opening()).contains("how we meet"));
  }
}
