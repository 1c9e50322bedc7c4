package closehand.bank;

import java.util.List;

/**
 * When an item of the questionnaire applies: HL7 FHIR R4 {@code enableWhen} with its {@code
 * enableBehavior}.
 *
 * @param tests at least one
 * @param all whether all must hold; otherwise one suffices
 */
public record EnableWhen(List<Test> tests, boolean all) {
  public EnableWhen {
    tests = List.copyOf(tests);
  }

  /** How a test compares. */
  public enum Operator {
    EXISTS("exists"),
    EQUAL("="),
    NOT_EQUAL("!="),
    MORE(">"),
    LESS("<"),
    AT_LEAST(">="),
    AT_MOST("<=");

    private final String code;

    Operator(String code) {
      this.code = code;
    }

    /** The code FHIR uses. */
    public String code() {
      return code;
    }
  }

  /** What a test compares with. */
  public sealed interface Expected {
    /** A yes or no; for {@link Operator#EXISTS} whether an answer must be there. */
    record Flag(boolean value) implements Expected {}

    /**
     * A number.
     *
     * @param whole whether it stands as a whole number: standard programs compare it with whole
     *     numbers only, and a decimal with decimals only
     */
    record Number(double value, boolean whole) implements Expected {}

    /** An option; an empty system means any system. */
    record Coded(String system, String code) implements Expected {}

    /** Words; compared as they are. */
    record Text(String value) implements Expected {}
  }

  /**
   * One comparison with the answer to another question.
   *
   * @param fact the other question
   * @param where where the test stands
   */
  public record Test(String fact, Operator operator, Expected expected, Where where) {}
}
