package closehand.rules.proof;

import closehand.bank.Rule;
import closehand.interview.Answers;
import closehand.rules.Judgement;
import closehand.rules.RuleBook;
import closehand.rules.Verdict;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * What one bank makes of one case, as far as two banks are compared by it.
 *
 * @param verdict what leads and how surely
 * @param suggested ids of the approaches suggested, best first; none while they are withheld
 * @param ruledOut ids of the approaches ruled out
 * @param cautions codes with classes of the cautions that stand
 * @param stops codes with classes of the stops that stand
 * @param firing the rules that fire, in bank order
 * @param open the rules that wait for answers, in bank order
 */
public record Standpoint(
    Verdict verdict,
    List<String> suggested,
    Set<String> ruledOut,
    Set<String> cautions,
    Set<String> stops,
    List<Rule> firing,
    List<Rule> open) {

  /** What the rules of a bank make of these answers. */
  public static Standpoint of(RuleBook book, Answers answers) {
    Judgement judgement = Judgement.of(book, answers);
    Set<String> cautions = new LinkedHashSet<>();
    Set<String> stops = new LinkedHashSet<>();
    judgement
        .standing()
        .forEach((code, as) -> (as.stops() ? stops : cautions).add(code + " " + as.code()));
    return new Standpoint(
        judgement.verdict(),
        judgement.verdict().withheld() ? List.of() : judgement.suggested(),
        new LinkedHashSet<>(judgement.ruledOut()),
        cautions,
        stops,
        judgement.firing(),
        judgement.open());
  }
}
