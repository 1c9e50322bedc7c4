package closehand.rules;

/** What is known of a condition: it holds, it does not, or that depends on answers still open. */
public enum Outcome {
  TRUE,
  FALSE,
  OPEN;

  /** The opposite; open stays open. */
  public Outcome not() {
    return switch (this) {
      case TRUE -> FALSE;
      case FALSE -> TRUE;
      case OPEN -> OPEN;
    };
  }
}
