package closehand.report;

import closehand.interview.Interview;
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

  /** Removes the case and everything kept of it. */
  List<String> delete();
}
