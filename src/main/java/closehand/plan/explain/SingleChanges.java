package closehand.plan.explain;

import closehand.plan.problem.Placement;
import closehand.plan.problem.Placements;
import closehand.plan.problem.PlanPricer;
import closehand.plan.problem.PlanProblem;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What lies between two plans, in changes that can be made one at a time: a move that pushes
 * another action away belongs together with that one's move.
 */
public final class SingleChanges {
  private final PlanPricer pricer;
  private final Placements before;
  private final Placements after;
  private final Map<String, String> leader = new LinkedHashMap<>();

  private SingleChanges(PlanProblem problem, Placements before, Placements after) {
    this.pricer = new PlanPricer(problem);
    this.before = before;
    this.after = after;
  }

  /**
   * One change.
   *
   * @param actions ids of the actions that move, come in or go out
   * @param plan the plan with this change alone
   * @param saving points a minute that it saves by itself; below 0 where it costs
   */
  public record SingleChange(List<String> actions, Placements plan, long saving) {
    /** Copies the list. */
    public SingleChange {
      actions = List.copyOf(actions);
    }
  }

  /**
   * The changes from one plan to another, the one that saves most first. Those that break a demand
   * by themselves are put together.
   *
   * @param problem what both are plans of
   */
  public static List<SingleChange> between(
      PlanProblem problem, Placements before, Placements after) {
    return new SingleChanges(problem, before, after).all();
  }

  private List<SingleChange> all() {
    List<List<String>> groups = groups();
    int allowed = pricer.price(before).breaches().size();
    List<String> together = new ArrayList<>();
    List<SingleChange> changes = new ArrayList<>();
    for (List<String> group : groups) {
      SingleChange change = change(group);
      if (pricer.price(change.plan()).breaches().size() > allowed) {
        together.addAll(group);
      } else {
        changes.add(change);
      }
    }
    if (!together.isEmpty()) {
      SingleChange joined = change(together);
      boolean lawful = pricer.price(joined.plan()).breaches().size() <= allowed;
      changes.add(lawful ? joined : change(groups.stream().flatMap(List::stream).toList()));
    }
    changes.sort(
        Comparator.comparingLong(SingleChange::saving)
            .reversed()
            .thenComparing(c -> c.actions().get(0)));
    return changes;
  }

  private SingleChange change(List<String> actions) {
    List<Placement> plan = new ArrayList<>();
    before.list().stream().filter(p -> !actions.contains(p.action())).forEach(plan::add);
    actions.forEach(a -> after.of(a).ifPresent(plan::add));
    Placements changed = new Placements(plan);
    long saving = pricer.price(before).cost().total() - pricer.price(changed).cost().total();
    return new SingleChange(actions.stream().sorted().toList(), changed, saving);
  }

  /** Actions that are not in the same place in both plans, in groups that must move together. */
  private List<List<String>> groups() {
    Set<String> moved = new HashSet<>();
    before.list().forEach(p -> moved.add(p.action()));
    after.list().forEach(p -> moved.add(p.action()));
    moved.removeIf(a -> before.of(a).equals(after.of(a)));
    moved.stream().sorted().forEach(a -> leader.put(a, a));
    for (String one : List.copyOf(leader.keySet())) {
      after
          .of(one)
          .flatMap(there -> holder(there, moved))
          .ifPresent(other -> leader.put(lead(other), lead(one)));
    }
    Map<String, List<String>> groups = new LinkedHashMap<>();
    leader.keySet().forEach(a -> groups.computeIfAbsent(lead(a), l -> new ArrayList<>()).add(a));
    return List.copyOf(groups.values());
  }

  private Optional<String> holder(Placement there, Set<String> moved) {
    return before.list().stream()
        .filter(p -> p.slot().equals(there.slot()) && moved.contains(p.action()))
        .map(Placement::action)
        .findFirst();
  }

  private String lead(String action) {
    String at = action;
    for (String next = leader.getOrDefault(at, at);
        !next.equals(at);
        next = leader.getOrDefault(at, at)) {
      at = next;
    }
    return at;
  }
}
