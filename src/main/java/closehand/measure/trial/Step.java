package closehand.measure.trial;

/**
 * One thing that is asked of a trial.
 *
 * @param kind what
 * @param index of which action, from 0; 0 for anything else
 */
public record Step(Kind kind, int index) {
  /** What is asked, in the usual order. */
  public enum Kind {
    PLACE,
    SET_UP,
    MINUTES_TO_SET_UP,
    COST,
    WEIGHT,
    LOAN,
    GAME,
    SCENE,
    ACTION,
    PAIN_BEFORE,
    EFFORT_BEFORE,
    TIREDNESS_BEFORE,
    PAIN_AFTER_FIVE,
    SIGN,
    MINUTES,
    WORKED,
    PAIN_AFTER,
    EFFORT_AFTER,
    TIREDNESS_AFTER,
    SATISFACTION,
    NOTES
  }

  static Step of(Kind kind) {
    return new Step(kind, 0);
  }
}
