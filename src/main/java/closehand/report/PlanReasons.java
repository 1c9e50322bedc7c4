package closehand.report;

import closehand.bank.Bank;
import closehand.bank.Effectors;
import closehand.bank.Rule;
import closehand.plan.ControlPlan;
import closehand.plan.ControlPlan.Assignment;
import closehand.plan.ControlPlan.LeftOut;
import closehand.plan.Planned;
import closehand.plan.explain.BringIn;
import closehand.plan.explain.Elsewhere;
import closehand.plan.explain.Helps;
import closehand.plan.explain.Obstacle;
import closehand.plan.explain.WhyHere;
import closehand.plan.problem.Slot;
import closehand.plan.solve.Budget;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Why one action sits where it does, what other places would cost, and what would bring it in. */
final class PlanReasons {
  /** Each answer is a plan of its own; this much work finds nearly all of them. */
  private static final Budget EACH = Budget.ORDINARY.withNodes(200).withTolerance(30);

  private static final int PLACES = 2;
  private static final int CHANGES = 3;
  private static final int MOST_NAMES = 3;

  private final Bank bank;
  private final Planned planned;
  private final PlanNames names;
  private final List<Piece> pieces = new ArrayList<>();

  private PlanReasons(Bank bank, Planned planned) {
    this.bank = bank;
    this.planned = planned;
    this.names = new PlanNames(planned);
  }

  /** The reasons for the action or part with this id. */
  static List<Piece> of(Bank bank, Planned planned, String id) {
    PlanReasons reasons = new PlanReasons(bank, planned);
    ControlPlan plan = planned.plan();
    plan.assignment(id).ifPresent(reasons::placed);
    plan.leftOut().stream().filter(l -> l.id().equals(id)).findFirst().ifPresent(reasons::leftOut);
    plan.settled().stream()
        .filter(s -> s.action().equals(id))
        .forEach(
            s ->
                reasons.say(
                    Phrases.sentence(s.name() + " needs no input of its own: " + s.words())));
    return reasons.pieces;
  }

  private void say(String sentence) {
    pieces.add(Paragraph.of(sentence));
  }

  private void item(String sentence) {
    pieces.add(Paragraph.item(sentence));
  }

  private void placed(Assignment assignment) {
    say(PlanLines.sentence(assignment));
    say(
        "It is wanted "
            + number(assignment.perMinute())
            + " times a minute and costs "
            + assignment.cost()
            + " points; an easy press is about 100. Your "
            + Effectors.words(assignment.effector())
            + " finds this input "
            + number(assignment.factor())
            + " times as hard as an easy one.");
    for (String key : assignment.rules()) {
      bank.rules().stream()
          .filter(r -> r.key().equals(key))
          .map(Rule::reason)
          .findFirst()
          .ifPresent(reason -> item(Phrases.sentence(reason) + " [" + key + "]"));
    }
    new closehand.plan.explain.PlanReasons(planned.problem(), planned.outcome(), EACH)
        .whyHere(assignment.id(), PLACES)
        .ifPresent(this::whyHere);
  }

  private void whyHere(WhyHere why) {
    if (!why.next().isEmpty()) {
      say("The next places, with everything else arranged anew around them:");
    }
    for (Elsewhere other : why.next()) {
      String moved =
          other.moved().isEmpty() ? "" : "; also moves " + some(other.moved().stream().toList());
      item(Phrases.upper(input(other.placement().slot())) + ": " + extra(other) + moved + ".");
    }
    for (Obstacle obstacle : why.obstacles().stream().limit(1).toList()) {
      item(
          Phrases.upper(input(obstacle.placement().slot()))
              + " would be easier for this action alone, but "
              + names.against(obstacle.placement().action(), obstacle.against())
              + ".");
    }
  }

  private static String extra(Elsewhere other) {
    if (other.isExact()) {
      return other.extraAtMost() == 0
          ? "as many points"
          : other.extraAtMost() + " points a minute more";
    }
    return other.extraAtLeast() + " to " + other.extraAtMost() + " points a minute more";
  }

  private String input(Slot slot) {
    return planned
        .supply()
        .input(slot.input())
        .map(i -> i.name() + " (" + Effectors.words(i.effector()) + ")")
        .orElse(slot.input());
  }

  private String some(List<String> ids) {
    List<String> first =
        ids.subList(0, Math.min(MOST_NAMES, ids.size())).stream().map(names::action).toList();
    int more = ids.size() - first.size();
    return more > 0 ? String.join(", ", first) + " and " + more + " more" : Phrases.and(first);
  }

  private void leftOut(LeftOut left) {
    say(Phrases.sentence(left.name() + " is left out: " + left.because()));
    left.bringInBy().forEach(b -> item("It may come in with " + Phrases.sentence(b)));
    boolean placeable = planned.demand().action(left.id()).isPresent();
    List<Helps> helps =
        placeable
            ? new BringIn(planned.problem(), planned.outcome(), EACH).changes(left.id(), CHANGES)
            : List.of();
    for (Helps one : helps) {
      item("It would come in if " + names.change(one.change()) + ".");
    }
    if (placeable && helps.isEmpty()) {
      item("No single change that was tried brings it in.");
    }
  }

  private static String number(double value) {
    return value == Math.rint(value)
        ? Long.toString((long) value)
        : String.format(Locale.ROOT, "%.1f", value);
  }
}
