package closehand.report;

import closehand.interview.Interview;
import closehand.plan.PlanChanges;
import java.util.List;

/** What a face asks of the program around it: advice, saving and pages. */
public interface Desk extends Advisor {
  /**
   * Keeps the interview.
   *
   * @return nothing when it is kept; otherwise what went wrong and what is still unsaved, in plain
   *     sentences
   */
  List<String> keep(Interview interview);

  /**
   * Keeps the interview, and what the player changed by hand in the games and their plans.
   *
   * @return as {@link #keep(Interview)}
   */
  default List<String> keep(Interview interview, PlanChanges changes) {
    return keep(interview);
  }

  /**
   * What went wrong with a save that was not waited for; nothing once all is kept.
   *
   * @return as {@link #keep(Interview)}
   */
  default List<String> unsaved() {
    return List.of();
  }

  /** Removes the case and everything kept of it. */
  List<String> delete();
}
