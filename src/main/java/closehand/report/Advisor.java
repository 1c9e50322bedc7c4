package closehand.report;

import closehand.bank.Field;
import closehand.bank.TaskBook;
import closehand.interview.Interview;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a face asks about an interview. The same interview always gets the same answer. */
public interface Advisor {
  /** What the answers mean as they stand. */
  Consultation consult(Interview interview);

  /** The player's page as it stands, ready to print. */
  List<String> page(Interview interview);

  /**
   * What a list of names may hold, by code and in words, such as the actions of a game; nothing
   * where any words will do.
   */
  Map<String, String> names(Interview interview, Field field);

  /** What can be explained besides: every control by its id, in words with how it stands. */
  default Map<String, String> explainable(Interview interview) {
    return Map.of();
  }

  /**
   * What to ask next on the briefest route, with the reason; nothing where nobody proposes, so that
   * questions come in order.
   */
  default Optional<NextStep> next(Interview interview) {
    return Optional.empty();
  }

  /** Why something stands as it does, and what would change it, ready to print. */
  default List<String> explain(Interview interview, String name) {
    return consult(interview).suggestions().lines();
  }

  /** The control plans of the wanted games as they stand, ready to print. */
  default List<String> plan(Interview interview) {
    return List.of("There is no control plan here.");
  }

  /**
   * The control plans of the wanted games, to be changed by hand; nothing where there are none.
   * Takes its moment.
   */
  default Optional<ByHand> byHand(Interview interview) {
    return Optional.empty();
  }

  /** What those plans ask of the body, with limits and sources, ready to print. */
  default List<String> load(Interview interview) {
    return plan(interview);
  }

  /** The measured tasks; nothing where the bank has none. */
  default Optional<TaskBook> taskBook() {
    return Optional.empty();
  }

  /** Whether measured tasks may begin; nothing where the bank has none. */
  default Optional<TaskGate> tasks() {
    return Optional.empty();
  }

  /** What was measured on this day, and when it is. */
  default TaskGate.Day day(Interview interview) {
    return TaskGate.Day.NEW;
  }

  /** Whether what is answered is kept; of an invented player nothing is. */
  default boolean isKept() {
    return true;
  }

  /** Today, as an ISO date. */
  String today();
}
