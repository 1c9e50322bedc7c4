package closehand.report;

import closehand.bank.Bank;
import closehand.bank.Effectors;
import closehand.bank.Rule;
import closehand.plan.ControlPlan;
import closehand.plan.ControlPlan.Assignment;
import closehand.plan.Planned;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Why one action sits where it does. */
final class PlanReasons {
  private PlanReasons() {}

  /** The reasons for the action or part with this id. */
  static List<Piece> of(Bank bank, Planned planned, String id) {
    List<Piece> pieces = new ArrayList<>();
    ControlPlan plan = planned.plan();
    plan.assignment(id).ifPresent(a -> placed(bank, a, pieces));
    plan.leftOut().stream()
        .filter(l -> l.id().equals(id))
        .forEach(
            l ->
                pieces.add(
                    Paragraph.of(Phrases.sentence(l.name() + " is left out: " + l.because()))));
    plan.settled().stream()
        .filter(s -> s.action().equals(id))
        .forEach(
            s ->
                pieces.add(
                    Paragraph.of(
                        Phrases.sentence(s.name() + " needs no input of its own: " + s.words()))));
    return pieces;
  }

  private static void placed(Bank bank, Assignment assignment, List<Piece> pieces) {
    pieces.add(Paragraph.of(PlanLines.sentence(assignment)));
    pieces.add(
        Paragraph.of(
            "It is wanted "
                + number(assignment.perMinute())
                + " times a minute and costs "
                + assignment.cost()
                + " points; an easy press is about 100. Your "
                + Effectors.words(assignment.effector())
                + " finds this input "
                + number(assignment.factor())
                + " times as hard as an easy one."));
    for (String key : assignment.rules()) {
      bank.rules().stream()
          .filter(r -> r.key().equals(key))
          .map(Rule::reason)
          .findFirst()
          .ifPresent(
              reason -> pieces.add(Paragraph.item(Phrases.sentence(reason) + " [" + key + "]")));
    }
    for (ControlPlan.RunnerUp other : assignment.runnersUp()) {
      pieces.add(
          Paragraph.item(
              "On "
                  + other.input()
                  + " it would cost at most "
                  + Math.max(0, other.extra())
                  + " points more, with everything else where it is."));
    }
  }

  private static String number(double value) {
    return value == Math.rint(value)
        ? Long.toString((long) value)
        : String.format(Locale.ROOT, "%.1f", value);
  }
}
