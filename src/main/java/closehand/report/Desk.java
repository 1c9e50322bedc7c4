package closehand.report;

import closehand.bank.Field;
import closehand.interview.Interview;
import java.util.List;
import java.util.Map;

/** What a face asks of the program around it: advice, saving and pages. */
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

  /**
   * What a list of names may hold, by code and in words, such as the actions of a game; nothing
   * where any words will do.
   */
  Map<String, String> names(Interview interview, Field field);

  /** Today, as an ISO date. */
  String today();

  /** Removes the case and everything kept of it. */
  List<String> delete();
}
