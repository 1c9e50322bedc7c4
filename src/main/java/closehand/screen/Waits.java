package closehand.screen;

import java.util.Optional;

/** What takes its time, and what is said while it does. */
final class Waits {
  private Waits() {}

  /** What is said; nothing for what is done at once. */
  static Optional<String> sentence(Effect effect) {
    if (effect instanceof Effect.Begin begin && begin.sealing() != Sealing.NONE
        || effect instanceof Effect.Seal) {
      return Optional.of("The case is being sealed. This takes a few seconds.");
    }
    if (effect instanceof Effect.SecretTaken) {
      return Optional.of("This takes a few seconds.");
    }
    if (effect instanceof Effect.ChangeByHand change && !change.at().takesTime(change.digit())) {
      return Optional.empty();
    }
    if (effect instanceof Effect.WorkOutPlan
        || effect instanceof Effect.BeginByHand
        || effect instanceof Effect.ChangeByHand) {
      return Optional.of("The plan is being worked out.");
    }
    return effect instanceof Effect.CheckBank
        ? Optional.of("The question bank is being checked.")
        : Optional.empty();
  }
}
