package closehand.rules.why;

import closehand.rules.Advice;
import closehand.rules.Verdict;
import closehand.rules.Warning;
import closehand.rules.Workings;
import java.util.List;
import java.util.Optional;

/**
 * What comes first now and how surely.
 *
 * @param leader the id of the control that leads; empty if none is suggested or all is withheld
 * @param firm whether no open answer can change that and no stop is open
 * @param couldOverturn the facts whose open answers can still change what leads, in bank order
 * @param notCleared stops that depend on safety questions still open
 * @param stops stops that stand, strongest first
 */
public record Lead(
    Optional<String> leader,
    boolean firm,
    List<String> couldOverturn,
    List<Warning> notCleared,
    List<Warning> stops) {
  public Lead {
    couldOverturn = List.copyOf(couldOverturn);
    notCleared = List.copyOf(notCleared);
    stops = List.copyOf(stops);
  }

  /** What leads in this verdict, with what is open. */
  static Lead of(Verdict verdict, Workings workings) {
    Advice advice = workings.advice();
    return new Lead(
        verdict.leader(),
        verdict.firm(),
        verdict.firm() || verdict.withheld() ? List.of() : workings.overturning(),
        advice.notCleared(),
        advice.stops());
  }

  /** The facts that open stops wait for, each once, in the order of the stops. */
  public List<String> openSafety() {
    return notCleared.stream().flatMap(w -> w.waitsFor().stream()).distinct().toList();
  }
}
