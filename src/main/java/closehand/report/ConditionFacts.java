package closehand.report;

import closehand.bank.Condition;
import java.util.List;
import java.util.stream.Stream;

/** Which facts a condition speaks of. */
final class ConditionFacts {
  private ConditionFacts() {}

  /** Those facts, each once, in the order they are named. */
  static List<String> of(Condition condition) {
    return facts(condition).distinct().toList();
  }

  private static Stream<String> facts(Condition condition) {
    if (condition instanceof Condition.Test test) {
      return Stream.of(test.fact());
    }
    return parts(condition).stream().flatMap(ConditionFacts::facts);
  }

  private static List<Condition> parts(Condition condition) {
    if (condition instanceof Condition.All all) {
      return all.parts();
    } else if (condition instanceof Condition.Any any) {
      return any.parts();
    } else if (condition instanceof Condition.AtLeast atLeast) {
      return atLeast.parts();
    } else if (condition instanceof Condition.Not not) {
      return List.of(not.part());
    } else if (condition instanceof Condition.AnyGame any) {
      return List.of(any.part());
    } else if (condition instanceof Condition.EveryGame every) {
      return List.of(every.part());
    }
    return List.of();
  }
}
