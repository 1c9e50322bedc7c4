package closehand.strain;

/**
 * A caution that figures of a plan raise.
 *
 * @param code the caution's code in the bank
 * @param subject the body part, the hand or the session, in plain words
 * @param because the figures, as one sentence
 */
public record LoadCaution(String code, String subject, String because) {
  /** The same small movement again and again. */
  public static final String REPEAT = "C-REPEAT";

  /** Long holds. */
  public static final String STATIC = "C-STATIC";

  /** One limb does most of the work. */
  public static final String OVERUSE = "C-OVERUSE";

  /** Short, frequent breaks. */
  public static final String BREAK = "C-BREAK";
}
