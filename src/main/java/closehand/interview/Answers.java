package closehand.interview;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * All answers of one interview, also those that do not apply at the moment.
 *
 * @param byFact answers by fact id, in the order given
 * @param lowered stops that a clinician lowered
 */
public record Answers(Map<String, Recorded> byFact, List<Lowered> lowered) {
  /** No answers yet. */
  public static final Answers NONE = new Answers(Map.of(), List.of());

  public Answers {
    byFact = Collections.unmodifiableMap(new LinkedHashMap<>(byFact));
    lowered = List.copyOf(lowered);
  }

  /** An answer with where it came from. */
  public record Recorded(Answer answer, Provenance provenance) {}

  /**
   * A stop that a clinician lowered.
   *
   * @param code the caution's code
   * @param by the clinician, as they wish to be named
   * @param date ISO date
   * @param reason why
   */
  public record Lowered(String code, String by, String date, String reason) {}

  /** The answer to this fact, if it was ever asked. */
  public Optional<Answer> answer(String fact) {
    return Optional.ofNullable(byFact.get(fact)).map(Recorded::answer);
  }

  /** The value of this fact, if one was given. */
  public Optional<Value> value(String fact) {
    return answer(fact).flatMap(Answer::given);
  }

  /** The same answers with this one set. */
  public Answers with(String fact, Recorded recorded) {
    Map<String, Recorded> next = new LinkedHashMap<>(byFact);
    next.put(fact, recorded);
    return new Answers(next, lowered);
  }

  /** The same answers without this one. */
  public Answers without(String fact) {
    Map<String, Recorded> next = new LinkedHashMap<>(byFact);
    next.remove(fact);
    return new Answers(next, lowered);
  }

  /**
   * The same answers with one more stop lowered; lowering the same code again replaces the reason.
   */
  public Answers lowering(Lowered one) {
    List<Lowered> next = new ArrayList<>(lowered);
    next.removeIf(l -> l.code().equals(one.code()));
    next.add(one);
    return new Answers(byFact, next);
  }

  /** The same answers with every stop as the rules have it. */
  public Answers withNothingLowered() {
    return lowered.isEmpty() ? this : new Answers(byFact, List.of());
  }

  /** Whether a clinician lowered this caution. */
  public boolean isLowered(String code) {
    return lowered.stream().anyMatch(l -> l.code().equals(code));
  }
}
