package closehand.rules.proof;

import closehand.bank.Approach;
import closehand.bank.Rule;
import closehand.interview.Answers;
import closehand.rules.Advice;
import closehand.rules.Finding;
import closehand.rules.Outcome;
import closehand.rules.RuleBook;
import closehand.rules.Standing;
import closehand.rules.Verdict;
import closehand.rules.Warning;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What one bank makes of one case, as far as two banks are compared by it.
 *
 * @param verdict what leads and how surely
 * @param ruledOut ids of the approaches ruled out
 * @param cautions codes with classes of the cautions that stand
 * @param stops codes with classes of the stops that stand
 * @param firing the rules that fire, by key, with what follows
 */
public record Standpoint(
    Verdict verdict,
    Set<String> ruledOut,
    Set<String> cautions,
    Set<String> stops,
    Map<String, Rule.Effects> firing) {
  /** Settings go along with anything, so they never lead. */
  private static final String SETTINGS = "settings";

  /** What the rules of a bank make of these answers. */
  public static Standpoint of(RuleBook book, Answers answers) {
    Advice advice = book.advise(answers);
    Set<String> out = new LinkedHashSet<>();
    for (Standing standing : advice.with(Standing.Status.RULED_OUT)) {
      out.add(standing.approach().id());
    }
    Map<String, Rule.Effects> firing = new LinkedHashMap<>();
    for (Finding finding : advice.findings()) {
      if (finding.outcome() == Outcome.TRUE) {
        firing.put(finding.rule().key(), finding.rule().effects());
      }
    }
    return new Standpoint(
        verdict(advice), out, codes(advice.cautions()), codes(advice.stops()), firing);
  }

  private static Verdict verdict(Advice advice) {
    Optional<String> leader =
        advice.suggestions().stream()
            .map(Standing::approach)
            .filter(a -> !a.family().equals(SETTINGS))
            .map(Approach::id)
            .findFirst();
    return new Verdict(leader, advice.firm(), advice.withheld());
  }

  private static Set<String> codes(Iterable<Warning> warnings) {
    Set<String> codes = new LinkedHashSet<>();
    warnings.forEach(w -> codes.add(w.caution().code() + " " + w.cautionClass().code()));
    return codes;
  }
}
