package closehand.line;

import closehand.interview.Interview;
import closehand.report.Consultation;
import java.util.List;

/** What the face asks of the program around it: advice, saving and pages. */
public interface Desk {
  /** What the answers mean as they stand. */
  Consultation consult(Interview interview);

  /**
   * Keeps the interview.
   *
   * @return nothing when it is kept; otherwise what went wrong and what is still unsaved, in plain
   *     sentences
   */
  List<String> keep(Interview interview);

  /** The player's page as it stands, ready to print. */
  List<String> page(Interview interview);

  /** Today, as an ISO date. */
  String today();

  /** Removes the case and everything kept of it. */
  List<String> delete();
}
