package closehand.rules.next;

import closehand.bank.Field;
import closehand.bank.Question;
import closehand.interview.Interview;
import closehand.interview.StillOpen;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A question that could be asked now.
 *
 * @param question the question
 * @param open its fields that are still open
 */
record Candidate(Question question, List<Field> open) {
  Candidate {
    open = List.copyOf(open);
  }

  /** Every question with a field that was neither answered, declined, put off nor passed. */
  static List<Candidate> of(Interview interview) {
    Map<Question, List<Field>> fields = new LinkedHashMap<>();
    for (StillOpen one : interview.open()) {
      if (one.why() == StillOpen.Why.NOT_YET_ASKED) {
        fields.computeIfAbsent(one.question(), q -> new ArrayList<>()).add(one.field());
      }
    }
    List<Candidate> candidates = new ArrayList<>();
    fields.forEach((question, open) -> candidates.add(new Candidate(question, open)));
    return candidates;
  }

  List<String> facts() {
    return open.stream().map(Field::fact).toList();
  }

  boolean asksAny(Collection<String> facts) {
    return open.stream().anyMatch(f -> facts.contains(f.fact()));
  }

  /** Whether it belongs to the short interview. */
  boolean core() {
    return question.route() != Question.Route.FULL;
  }

  boolean in(String section) {
    return question.section().equals(section);
  }

  double burden() {
    return Burden.of(open);
  }
}
