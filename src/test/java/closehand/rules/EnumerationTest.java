package closehand.rules;

import static closehand.bank.Term.Computation.COUNT;
import static closehand.bank.Term.Computation.DIFFERENCE;
import static closehand.rules.Say.test;
import static org.junit.jupiter.api.Assertions.assertEquals;

import closehand.bank.Field;
import closehand.bank.Option;
import closehand.interview.Answer.Reason;
import closehand.interview.Answers;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A single comparison is exact: it holds, or not, just when it does so for every way of giving the
 * missing answers, tried one by one. The terms here read each fact once, and a question is answered
 * only once it is known to apply.
 */
class EnumerationTest {
  private static final List<String> TERMS =
      List.of("largest", "smallest", "nested", "difference", "mixed", "count", "gated", "gap");

  private static RuleBook book(String term) {
    TestBank bank = new TestBank().number("a", 0, 3).number("b", 0, 4);
    bank.scale("s", List.of(0, 1, 3)).yesNo("y").number("c", 0, 3, Say.when("y", true));
    bank.several("m", List.of("none", "p", "q"));
    bank.max("largest", "a", "b").min("smallest", "a", "b", "s");
    bank.min("least", "a", "s").max("nested", "least", "b", "c");
    bank.computed("difference", DIFFERENCE, "a", "b");
    bank.computed("mixed", DIFFERENCE, "b", "least");
    bank.computed("count", COUNT, "m");
    bank.min("gated", "c", "a");
    bank.computed("gap", DIFFERENCE, "c", "a");
    for (int threshold = -4; threshold <= 4; threshold++) {
      for (String operator : List.of("<", "<=", ">", ">=")) {
        bank.rule(operator + threshold, test(term, operator, threshold));
      }
    }
    return bank.book();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"largest", "smallest", "nested", "difference", "mixed", "count", "gated", "gap"})
  void matchesEveryWayOfAnswering(String term) {
    RuleBook book = book(term);
    List<String> inputs = inputs(term);
    for (Answers known : ways(book, Answers.NONE, inputs, true)) {
      List<String> missing = inputs.stream().filter(f -> known.answer(f).isEmpty()).toList();
      List<Set<Outcome>> found = new ArrayList<>();
      book.bank().rules().forEach(r -> found.add(EnumSet.noneOf(Outcome.class)));
      for (Answers whole : ways(book, known, missing, false)) {
        List<Finding> findings = book.advise(whole).findings();
        for (int rule = 0; rule < found.size(); rule++) {
          found.get(rule).add(findings.get(rule).outcome());
        }
      }
      List<Finding> findings = book.advise(known).findings();
      for (int rule = 0; rule < found.size(); rule++) {
        Outcome expected =
            found.get(rule).size() == 1 ? found.get(rule).iterator().next() : Outcome.OPEN;
        assertEquals(
            expected,
            findings.get(rule).outcome(),
            term + " " + findings.get(rule).rule().id() + " of " + known.byFact());
      }
    }
  }

  private static List<String> inputs(String term) {
    return switch (TERMS.indexOf(term)) {
      case 0, 3 -> List.of("a", "b");
      case 1, 4 -> List.of("a", "b", "s");
      case 2 -> List.of("a", "b", "s", "y", "c");
      case 5 -> List.of("m");
      default -> List.of("y", "a", "c");
    };
  }

  /** Every way of answering these; with gaps, also of leaving some open or saying "not for me". */
  private static List<Answers> ways(
      RuleBook book, Answers known, List<String> facts, boolean gaps) {
    List<Answers> ways = List.of(known);
    for (String fact : facts) {
      Field field = book.bank().questionnaire().fieldsByFact().get(fact);
      List<Answers> more = new ArrayList<>();
      for (Answers way : ways) {
        if (gaps) {
          more.add(way);
          more.add(Say.with(way, fact, Reason.NOT_APPLICABLE));
        }
        boolean early = fact.equals("c") && way.answer("y").isEmpty();
        if (early || !RandomBank.mayApply(book, way, fact)) {
          more.add(way);
        } else if (field != null) {
          values(field).forEach(value -> more.add(Say.with(way, fact, value)));
        }
      }
      ways = more;
    }
    return ways;
  }

  private static List<Object> values(Field field) {
    List<String> codes = field.type().choices().stream().map(Option::code).toList();
    return switch (field.fact()) {
      case "y" -> List.of(true, false);
      case "m" -> List.of(List.of("none"), List.of("p"), List.of("q"), List.of("p", "q"));
      case "b" -> List.of(0, 1, 2, 3, 4);
      case "s" -> List.copyOf(codes);
      default -> List.of(0, 1, 2, 3);
    };
  }
}
