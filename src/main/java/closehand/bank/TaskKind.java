package closehand.bank;

import java.util.Optional;

/** Kinds of bodily task that a caution can put on hold. */
public enum TaskKind {
  TIMED("timed"),
  STRENGTH("strength"),
  BREATH("breath"),
  HEAD("head");

  private final String code;

  TaskKind(String code) {
    this.code = code;
  }

  /** The word used in bank files. */
  public String code() {
    return code;
  }

  /** The kind with this code. */
  public static Optional<TaskKind> of(String code) {
    for (TaskKind kind : values()) {
      if (kind.code.equals(code)) {
        return Optional.of(kind);
      }
    }
    return Optional.empty();
  }
}
