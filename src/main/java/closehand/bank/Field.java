package closehand.bank;

import java.util.List;
import java.util.Optional;

/**
 * One thing to find out: the smallest piece that gets an answer of its own. Its id is the fact id
 * that rules use.
 *
 * @param fact the fact id, such as {@code digit.L.press.T}
 * @param label what is asked here; for a question with one field the question itself
 * @param remoteLabel the wording over a video call, where it differs
 * @param aloneLabel the wording for a player who asks alone, where it differs
 * @param type what an answer can be
 * @param required whether a finished interview needs an answer
 * @param conditions its own condition and those of the groups around it; all must hold
 * @param groups the groups around it, outermost first
 * @param task the kind of bodily task it needs, if any
 * @param askedAgain whether it is asked again before and after timed tasks
 * @param classification codes of the International Classification of Functioning, may be empty
 * @param where where it stands in the bank
 */
public record Field(
    String fact,
    String label,
    Optional<String> remoteLabel,
    Optional<String> aloneLabel,
    FactType type,
    boolean required,
    List<EnableWhen> conditions,
    List<String> groups,
    Optional<TaskKind> task,
    boolean askedAgain,
    List<String> classification,
    Where where) {
  public Field {
    conditions = List.copyOf(conditions);
    groups = List.copyOf(groups);
    classification = List.copyOf(classification);
  }
}
