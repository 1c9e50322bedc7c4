package closehand.bank;

import java.util.Optional;

/** How strongly a caution acts, mildest first. */
public enum CautionClass {
  /** Shown in the plan. */
  NOTE("NOTE"),
  /** Shown everywhere with its reason. */
  CARE("CARE"),
  /** Every control worked by one part of the body is ruled out. */
  STOP_PART("STOP-PART"),
  /** No timed, strength, breath or head task; suggestions wait for a health check. */
  STOP_TASKS("STOP-TASKS"),
  /** The session ends; the notice is all that is shown. */
  STOP_ALL("STOP-ALL");

  private final String code;

  CautionClass(String code) {
    this.code = code;
  }

  /** The word used in bank files and results. */
  public String code() {
    return code;
  }

  /** Whether it stops something. */
  public boolean stops() {
    return compareTo(STOP_PART) >= 0;
  }

  /** Whether suggestions wait while it stands. */
  public boolean withholds() {
    return compareTo(STOP_TASKS) >= 0;
  }

  /** The class with this code. */
  public static Optional<CautionClass> of(String code) {
    for (CautionClass one : values()) {
      if (one.code.equals(code)) {
        return Optional.of(one);
      }
    }
    return Optional.empty();
  }
}
