package closehand.rules.why;

import closehand.bank.Rule;
import closehand.rules.Finding;
import closehand.rules.Outcome;
import java.util.List;
import java.util.Optional;

/**
 * One rule about a subject, with what came of it and why.
 *
 * @param finding what came of the rule
 * @param when its condition, taken apart
 * @param unless what keeps it from applying, taken apart
 */
public record Ground(Finding finding, Part when, Optional<Part> unless) {

  /** Where a rule stands with regard to firing. */
  public enum State {
    FIRED,
    /** Its condition holds, but so does its "unless". */
    HELD_BACK,
    WAITING,
    NOT_FIRED
  }

  /** The rule. */
  public Rule rule() {
    return finding.rule();
  }

  /** Where the rule stands. */
  public State state() {
    if (finding.heldBack()) {
      return State.HELD_BACK;
    }
    return switch (finding.outcome()) {
      case TRUE -> State.FIRED;
      case OPEN -> State.WAITING;
      case FALSE -> State.NOT_FIRED;
    };
  }

  /**
   * What keeps the rule from firing: the first part of its condition that does not hold, or its
   * "unless". Empty for a rule that fires; for one that waits the first part that is open.
   */
  public Optional<Part> hindrance() {
    if (state() == State.HELD_BACK || when.outcome() == Outcome.TRUE) {
      return state() == State.FIRED ? Optional.empty() : unless;
    }
    return when.outcome() == Outcome.OPEN && finding.outcome() == Outcome.FALSE
        ? unless
        : when.firstFailing();
  }

  /** The facts whose answers settle the rule, in bank order. */
  public List<String> answersUsed() {
    return finding.supportedBy();
  }
}
