package closehand.bank;

import java.util.List;

/** Something worked out from answers that rules can use like a fact. */
public sealed interface Term {
  /** The id that conditions use. */
  String id();

  /** What it says, in plain words. */
  String text();

  /** Where it stands in the bank. */
  Where where();

  /** Yes when the condition holds. */
  record Derived(String id, String text, Condition when, Where where) implements Term {}

  /** How a number is computed from others. */
  enum Computation {
    /** The largest of those that apply. */
    MAXIMUM,
    /** The smallest of those that apply. */
    MINIMUM,
    /** How many answers are picked, "none" not counted. */
    COUNT,
    /** The first minus the second; two whole numbers. */
    DIFFERENCE
  }

  /** A number computed from other facts or terms. */
  record Computed(String id, String text, Computation computation, List<String> of, Where where)
      implements Term {
    public Computed {
      of = List.copyOf(of);
    }
  }
}
