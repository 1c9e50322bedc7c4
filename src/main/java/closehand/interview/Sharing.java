package closehand.interview;

import closehand.bank.Question;
import closehand.bank.Questionnaire;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Whom a player lets see the answers, and what of them.
 *
 * <p>Nothing is handed to somebody the player did not name. Those who arrange kit get what kit has
 * to fit, not the health questions behind it; that division is common practice, no source.
 */
public enum Sharing {
  /** The player's own copy, with everything. */
  PLAYER("player"),
  /** The player's clinician: everything. */
  CLINICIAN("clinician"),
  /** Whoever helps to arrange kit: no warning signs, no health pattern, no notes. */
  TEAM("team");

  /** The question that names who may see the answers. */
  public static final String FACT = "consent.share";

  private static final Value REFUSED = new Value.Code("no");

  private static final Set<String> HEALTH_SECTIONS = Set.of("SAF", "PAT");

  private final String code;

  Sharing(String code) {
    this.code = code;
  }

  /** The word used on the command line and in the answer to {@link #FACT}. */
  public String code() {
    return code;
  }

  /** Whom this code names. */
  public static Optional<Sharing> of(String code) {
    for (Sharing sharing : values()) {
      if (sharing.code.equals(code)) {
        return Optional.of(sharing);
      }
    }
    return Optional.empty();
  }

  /**
   * Whether the player agreed, and did not take all consent back since; a copy of one's own needs
   * no agreement.
   */
  public boolean agreed(Answers answers) {
    return this == PLAYER || (!takenBack(answers) && named(answers));
  }

  private boolean named(Answers answers) {
    return answers
        .value(FACT)
        .filter(v -> v instanceof Value.Codes c && c.codes().contains(code))
        .isPresent();
  }

  private static boolean takenBack(Answers answers) {
    return answers.value(WellKnown.CONSENT_STATE).filter(REFUSED::equals).isPresent();
  }

  /** What this reader gets of the answers that apply. */
  public Answers visible(Questionnaire questionnaire, Answers effective) {
    if (this != TEAM) {
      return effective;
    }
    Map<String, Answers.Recorded> visible = new LinkedHashMap<>();
    for (Question question : questionnaire.questions()) {
      boolean health = HEALTH_SECTIONS.contains(question.section());
      question
          .fields()
          .forEach(
              field -> {
                Answers.Recorded recorded = effective.byFact().get(field.fact());
                if (recorded != null && !health) {
                  visible.put(field.fact(), withoutNote(recorded));
                }
              });
    }
    return new Answers(visible, java.util.List.of());
  }

  private static Answers.Recorded withoutNote(Answers.Recorded recorded) {
    Provenance from = recorded.provenance();
    return new Answers.Recorded(recorded.answer(), new Provenance(from.by(), from.how(), ""));
  }
}
