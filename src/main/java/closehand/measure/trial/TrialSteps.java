package closehand.measure.trial;

import java.util.ArrayList;
import java.util.List;

/** Which steps a trial has, and which of them are answered already. */
final class TrialSteps {
  private TrialSteps() {}

  /** The steps in order, as the trial stands. */
  static List<Step> of(Trial trial, List<Trial> earlier) {
    List<Step> steps = new ArrayList<>();
    add(steps, Step.Kind.PLACE, Step.Kind.SET_UP);
    if (!isKnown(trial.setUp().name(), earlier)) {
      add(steps, Step.Kind.MINUTES_TO_SET_UP, Step.Kind.COST, Step.Kind.WEIGHT);
    }
    if (trial.place().isHome()) {
      add(steps, Step.Kind.LOAN);
    }
    add(steps, Step.Kind.GAME, Step.Kind.SCENE);
    for (int i = 0; i <= Math.min(trial.actions().size(), Trial.MOST_ACTIONS - 1); i++) {
      steps.add(new Step(Step.Kind.ACTION, i));
    }
    add(steps, Step.Kind.PAIN_BEFORE, Step.Kind.EFFORT_BEFORE, Step.Kind.TIREDNESS_BEFORE);
    if (trial.stopped().isEmpty()) {
      add(steps, Step.Kind.PAIN_AFTER_FIVE, Step.Kind.SIGN, Step.Kind.MINUTES);
      for (int i = 0; i < trial.actions().size(); i++) {
        steps.add(new Step(Step.Kind.WORKED, i));
      }
      add(steps, Step.Kind.PAIN_AFTER, Step.Kind.EFFORT_AFTER, Step.Kind.TIREDNESS_AFTER);
      add(steps, Step.Kind.SATISFACTION, Step.Kind.NOTES);
      return steps;
    }
    // After a stop nothing is counted any more: only how it is after a rest, and words.
    List<Step> rest = new ArrayList<>();
    add(rest, Step.Kind.PAIN_AFTER, Step.Kind.NOTES);
    return rest;
  }

  private static void add(List<Step> steps, Step.Kind... kinds) {
    for (Step.Kind kind : kinds) {
      steps.add(Step.of(kind));
    }
  }

  private static boolean isKnown(String name, List<Trial> earlier) {
    return earlier.stream().anyMatch(t -> t.setUp().name().equals(name));
  }

  /** Whether a trial that is gone on with says this already. */
  static boolean isAnswered(Step step, Trial trial) {
    return switch (step.kind()) {
      case PLACE -> trial.place().where().isPresent();
      case SET_UP -> !trial.setUp().name().isEmpty();
      case MINUTES_TO_SET_UP -> trial.setUp().minutesToSetUp().isPresent();
      case COST -> trial.setUp().cost().isPresent();
      case WEIGHT -> trial.setUp().weight().isPresent();
      case LOAN -> trial.place().backOn().isPresent();
      case GAME -> !trial.scene().game().isEmpty();
      case SCENE -> !trial.scene().part().isEmpty();
      case ACTION ->
          step.index() < trial.actions().size()
              || step.index() >= Trial.FEWEST_ACTIONS && trial.before().pain().isPresent();
      case PAIN_BEFORE -> trial.before().pain().isPresent();
      case EFFORT_BEFORE -> trial.before().effort().isPresent();
      case TIREDNESS_BEFORE -> trial.before().tiredness().isPresent();
      case PAIN_AFTER_FIVE -> trial.painAfterFive().isPresent() || trial.minutes().isPresent();
      case SIGN, MINUTES -> trial.minutes().isPresent();
      case WORKED -> trial.actions().get(step.index()).worked().isPresent();
      case PAIN_AFTER -> trial.after().pain().isPresent();
      case EFFORT_AFTER -> trial.after().effort().isPresent();
      case TIREDNESS_AFTER -> trial.after().tiredness().isPresent();
      case SATISFACTION -> trial.satisfaction().isPresent();
      case NOTES -> !trial.notes().isEmpty();
    };
  }
}
