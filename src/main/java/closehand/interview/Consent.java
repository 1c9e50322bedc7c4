package closehand.interview;

/**
 * A consent as it was given, refused or taken back.
 *
 * @param fact what was asked, such as {@code consent.share}
 * @param answer what was answered, as in files (see {@link Event#asInFiles})
 * @param by who answered
 * @param at when, as an ISO date and time with zone
 */
public record Consent(String fact, Answer answer, Provenance.By by, String at) {
  /** What the names of facts about consent begin with. */
  public static final String BEGINNING = "consent.";

  public Consent {
    answer = Event.asInFiles(answer);
  }
}
