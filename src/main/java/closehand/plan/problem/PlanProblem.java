package closehand.plan.problem;

/**
 * One control plan to be found: which action of a game sits on which input of which device, worked
 * by which part of the body. Costs are points a minute of play; an easy press is about 100 points.
 *
 * <p>Whether the parts fit together is told by {@link PlanCheck}; everything else expects a problem
 * that passed it.
 *
 * @param play what the game asks for
 * @param equipment what can be pressed, turned or spoken
 * @param body what does the pressing, and how much of it
 * @param prices what is paid for what
 * @param wishes what people decided themselves
 */
public record PlanProblem(Play play, Equipment equipment, Body body, Prices prices, Wishes wishes) {

  /** The most actions one plan may have. */
  public static final int MOST_ACTIONS = 64;

  /** The most devices one problem may have. */
  public static final int MOST_DEVICES = 63;

  /** The most kinds of place: combinations of effector, cross, layer and covering layers. */
  public static final int MOST_KINDS_OF_PLACE = 64;

  /** The same problem with other wishes. */
  public PlanProblem with(Wishes other) {
    return new PlanProblem(play, equipment, body, prices, other);
  }

  /** The same problem with other demands of the game. */
  public PlanProblem with(Play other) {
    return new PlanProblem(other, equipment, body, prices, wishes);
  }

  /** The same problem with other equipment. */
  public PlanProblem with(Equipment other) {
    return new PlanProblem(play, other, body, prices, wishes);
  }

  /** The same problem with another body. */
  public PlanProblem with(Body other) {
    return new PlanProblem(play, equipment, other, prices, wishes);
  }

  /** The same problem with other prices. */
  public PlanProblem with(Prices other) {
    return new PlanProblem(play, equipment, body, other, wishes);
  }
}
