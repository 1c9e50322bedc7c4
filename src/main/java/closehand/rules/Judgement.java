package closehand.rules;

import closehand.bank.CautionClass;
import closehand.bank.Rule;
import closehand.interview.Answers;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What the rules make of a set of answers without their reasons; several times as quick as the
 * whole advice, and the same as far as it goes.
 *
 * @param verdict what leads and how surely
 * @param ruledOut ids of the approaches ruled out, in the order of an advice
 * @param standing the code of every caution that stands with its strongest class, strongest first,
 *     then in rule order
 * @param firing the rules that fire, in bank order
 */
public record Judgement(
    Verdict verdict, List<String> ruledOut, Map<String, CautionClass> standing, List<Rule> firing) {

  /**
   * Judges these answers, for all wanted games together.
   *
   * @throws IllegalArgumentException when an answer is not of its question's kind
   */
  public static Judgement of(RuleBook book, Answers answers) {
    Program program = book.program();
    long[] state = program.settle(book.base(answers));
    Outcome[] outcomes = program.outcomes(state);
    Tally tally = book.judge().tally(outcomes);
    List<Rule> firing = new ArrayList<>();
    for (int i = 0; i < outcomes.length; i++) {
      if (outcomes[i] == Outcome.TRUE) {
        firing.add(program.rules().get(i).rule());
      }
    }
    return new Judgement(
        book.judge().verdict(tally, outcomes, state),
        ruledOut(book, tally),
        standing(firing),
        firing);
  }

  private static List<String> ruledOut(RuleBook book, Tally tally) {
    List<String> out = new ArrayList<>();
    for (int approach : book.ranking().ordered(tally)) {
      if (tally.status(approach) == Standing.Status.RULED_OUT) {
        out.add(book.bank().approaches().get(approach).id());
      }
    }
    return out;
  }

  private static Map<String, CautionClass> standing(List<Rule> firing) {
    Map<String, CautionClass> byCode = new LinkedHashMap<>();
    for (Rule rule : firing) {
      for (Rule.Raised raised : rule.effects().cautions()) {
        byCode.merge(raised.code(), raised.cautionClass(), (a, b) -> a.compareTo(b) >= 0 ? a : b);
      }
    }
    Map<String, CautionClass> sorted = new LinkedHashMap<>();
    CautionClass[] classes = CautionClass.values();
    for (int i = classes.length - 1; i >= 0; i--) {
      CautionClass one = classes[i];
      byCode.forEach(
          (code, strongest) -> {
            if (strongest == one) {
              sorted.put(code, strongest);
            }
          });
    }
    return sorted;
  }
}
