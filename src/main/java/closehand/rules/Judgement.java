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
 * @param suggested ids of the approaches that are suggested, best first, also while withheld
 * @param ruledOut ids of the approaches ruled out, in the order of an advice
 * @param standing the code of every caution that stands with its strongest class, strongest first,
 *     then in rule order
 * @param firing the rules that fire, in bank order
 * @param open the rules that wait for answers, in bank order
 */
public record Judgement(
    Verdict verdict,
    List<String> suggested,
    List<String> ruledOut,
    Map<String, CautionClass> standing,
    List<Rule> firing,
    List<Rule> open) {

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
    List<Rule> open = new ArrayList<>();
    for (int i = 0; i < outcomes.length; i++) {
      if (outcomes[i] != Outcome.FALSE) {
        (outcomes[i] == Outcome.TRUE ? firing : open).add(program.rules().get(i).rule());
      }
    }
    List<String> suggested = new ArrayList<>();
    List<String> out = new ArrayList<>();
    for (int approach : book.ranking().ordered(tally)) {
      Standing.Status status = tally.status(approach);
      String id = book.bank().approaches().get(approach).id();
      if (status.suggested()) {
        suggested.add(id);
      } else if (status == Standing.Status.RULED_OUT) {
        out.add(id);
      }
    }
    return new Judgement(
        book.judge().verdict(tally, outcomes, state),
        suggested,
        out,
        standing(firing),
        firing,
        open);
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
