package closehand.report;

import closehand.plan.Planned;

/** Where somebody is while a plan is changed by hand; slots count from 1, pages from 0. */
public sealed interface ByHandStep {
  /** What can be changed. */
  record Start() implements ByHandStep {}

  /** Every action of a plan, to look at one. */
  record Actions(int slot, int page) implements ByHandStep {}

  /** Why an action sits where it does. */
  record Why(int slot, String id) implements ByHandStep {}

  /** Where an action could go. */
  record Places(int slot, String id, int page) implements ByHandStep {}

  /** What a move costs and breaks, before anything is kept. */
  record Moved(int slot, String id, String input) implements ByHandStep {}

  /** The plan around a wish, and what it was before. */
  record Kept(int slot, String id, Planned before) implements ByHandStep {}

  /** Every action a game asks. */
  record Asks(int slot, int page) implements ByHandStep {}

  /** One action a game asks. */
  record Asked(int slot, String action) implements ByHandStep {}

  /** One thing about an action. */
  record Values(int slot, String action, AskedAction.Part part) implements ByHandStep {}

  /** The name of a new action. */
  record Name(int slot) implements ByHandStep {}
}
