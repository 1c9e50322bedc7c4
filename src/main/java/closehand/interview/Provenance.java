package closehand.interview;

import java.util.Optional;

/**
 * Who gave an answer, how it is known, and what was noted beside it.
 *
 * @param by who gave it
 * @param how how it is known
 * @param note free words, or empty
 */
public record Provenance(By by, How how, String note) {
  /** What the player said, with no note: the usual case. */
  public static final Provenance PLAYER_TOLD = new Provenance(By.PLAYER, How.TOLD, "");

  /** Who gave an answer. */
  public enum By {
    PLAYER("player"),
    HELPER("helper"),
    VOLUNTEER("volunteer"),
    CLINICIAN("clinician");

    private final String code;

    By(String code) {
      this.code = code;
    }

    /** The word used in files. */
    public String code() {
      return code;
    }

    /** The person with this code. */
    public static Optional<By> of(String code) {
      for (By by : values()) {
        if (by.code.equals(code)) {
          return Optional.of(by);
        }
      }
      return Optional.empty();
    }
  }

  /** How an answer is known. */
  public enum How {
    TOLD("told"),
    SEEN("seen"),
    MEASURED("measured");

    private final String code;

    How(String code) {
      this.code = code;
    }

    /** The word used in files. */
    public String code() {
      return code;
    }

    /** The way with this code. */
    public static Optional<How> of(String code) {
      for (How how : values()) {
        if (how.code.equals(code)) {
          return Optional.of(how);
        }
      }
      return Optional.empty();
    }
  }
}
