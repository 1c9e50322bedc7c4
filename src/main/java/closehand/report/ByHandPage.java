package closehand.report;

import closehand.plan.PlanChanges;
import java.util.List;

/**
 * One page while a plan is changed by hand.
 *
 * @param heading where this is
 * @param lines what is to be read, laid out for a page
 * @param choices what can be chosen, one digit each
 * @param asked what a typed line is asked for, or empty
 */
public record ByHandPage(String heading, List<String> lines, List<Choice> choices, String asked) {
  public ByHandPage {
    lines = List.copyOf(lines);
    choices = List.copyOf(choices);
  }

  /**
   * Something to choose.
   *
   * @param digit 0 goes back
   * @param words what it is
   * @param move what comes of it
   */
  public record Choice(int digit, String words, Move move) {}

  /** What comes of a choice. */
  public sealed interface Move {
    /** Another page; nothing changes. */
    record To(ByHandStep step) implements Move {}

    /** Something changes, and the plans are worked out anew. */
    record Change(PlanChanges changes, ByHandStep then) implements Move {}

    /** The last change is taken back. */
    record Undo(ByHandStep then) implements Move {}

    /** Nothing more. */
    record Leave() implements Move {}
  }
}
