package closehand.plan.explain;

/** One thing that could be different, so that an action finds a place. */
public sealed interface Change {
  /** One part more may be used. */
  record OnePartMore() implements Change {}

  /** The game lets this held action be switched on and off. */
  record Toggle(String action) implements Change {}

  /** These two actions need not be possible at the same moment. */
  record NotTogether(String first, String second) implements Change {}

  /** This part of the body can do a quarter more in a minute. */
  record QuarterMore(String effector) implements Change {}

  /** The game gives twice the warning for the action itself. */
  record TwiceTheWarning() implements Change {}

  /** This other action, which matters no more, is left out. */
  record Without(String action) implements Change {}
}
