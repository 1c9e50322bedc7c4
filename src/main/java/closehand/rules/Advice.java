package closehand.rules;

import closehand.bank.CautionClass;
import closehand.bank.Rule;
import closehand.bank.TaskKind;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What the rules make of a set of answers.
 *
 * @param standings every approach: suggested ones first, best first; then undecided, not suggested,
 *     ruled out
 * @param stops stops that stand, strongest first
 * @param cautions other cautions that stand, strongest first
 * @param notCleared stops that depend on safety questions still open
 * @param lowered stops that would stand had a clinician not lowered them
 * @param withheld whether suggestions wait for a health check
 * @param forReview whether a stop on a body part leaves the rest as a draft for a clinician to
 *     review
 * @param firm whether no open answer can change the leading suggestion and no stop is open
 * @param holds kinds of task that must wait, in their declared order
 * @param findings what came of every rule, in rule order
 */
public record Advice(
    List<Standing> standings,
    List<Warning> stops,
    List<Warning> cautions,
    List<Warning> notCleared,
    List<Warning> lowered,
    boolean withheld,
    boolean forReview,
    boolean firm,
    Set<TaskKind> holds,
    List<Finding> findings) {
  public Advice {
    standings = List.copyOf(standings);
    stops = List.copyOf(stops);
    cautions = List.copyOf(cautions);
    notCleared = List.copyOf(notCleared);
    lowered = List.copyOf(lowered);
    holds = holds.isEmpty() ? Set.of() : Collections.unmodifiableSet(EnumSet.copyOf(holds));
    findings = List.copyOf(findings);
  }

  /** The suggested approaches, best first; none while they are withheld. */
  public List<Standing> suggestions() {
    return withheld ? List.of() : standings.stream().filter(s -> s.status().suggested()).toList();
  }

  /**
   * The same with its standings in another order.
   *
   * @param order the same standings
   */
  public Advice inOrder(List<Standing> order) {
    return new Advice(
        order, stops, cautions, notCleared, lowered, withheld, forReview, firm, holds, findings);
  }

  /** The approaches with this status, in order. */
  public List<Standing> with(Standing.Status status) {
    return standings.stream().filter(s -> s.status() == status).toList();
  }

  /** The strongest stop, if any stands. */
  public Optional<CautionClass> strongestStop() {
    return stops.stream().map(Warning::cautionClass).max(CautionClass::compareTo);
  }

  /**
   * Sentences for the page that the firing rules bring, under this topic, without repeats, in rule
   * order.
   */
  public List<String> advice(String topic) {
    return findings.stream()
        .filter(f -> f.outcome() == Outcome.TRUE)
        .flatMap(f -> f.rule().effects().advice().stream())
        .filter(a -> a.topic().equals(topic))
        .map(Rule.Advice::say)
        .distinct()
        .toList();
  }
}
