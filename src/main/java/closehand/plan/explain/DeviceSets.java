package closehand.plan.explain;

import closehand.plan.problem.Device;
import closehand.plan.problem.Equipment;
import closehand.plan.problem.PlanProblem;
import closehand.plan.solve.Budget;
import closehand.plan.solve.ControlPlanSolver;
import closehand.plan.solve.PlanOutcome;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** The best plan for each set of devices that can be used together. */
public final class DeviceSets {
  private DeviceSets() {}

  /**
   * One set of devices and its best plan.
   *
   * @param devices ids of the devices that count as parts
   * @param outcome the best plan with them and with what is there anyway
   */
  public record SetPlan(Set<String> devices, PlanOutcome outcome) {
    /** Copies the set. */
    public SetPlan {
      devices = Set.copyOf(devices);
    }
  }

  /**
   * Every set of devices within the allowed parts that uses all its devices, the cheapest plan
   * first. A set whose best plan leaves one of its devices unused is told by the smaller set alone.
   *
   * @param each how hard to look for each set
   */
  public static List<SetPlan> rank(PlanProblem problem, Budget each) {
    List<SetPlan> found = new ArrayList<>();
    for (Set<String> devices : sets(problem.equipment())) {
      if (each.stop().getAsBoolean()) {
        break;
      }
      solve(problem, devices, each).ifPresent(found::add);
    }
    found.sort(
        Comparator.<SetPlan>comparingLong(s -> s.outcome().best())
            .thenComparing(s -> new TreeSet<>(s.devices()).toString()));
    return List.copyOf(found);
  }

  /** The best plan with these devices and what is there anyway; empty when one stays unused. */
  public static Optional<SetPlan> solve(PlanProblem problem, Set<String> devices, Budget each) {
    Set<String> all = new HashSet<>(devices);
    problem.equipment().devices().stream()
        .filter(d -> d.parts() == 0)
        .forEach(d -> all.add(d.id()));
    PlanProblem only = ProblemEdits.onlyDevices(problem, all);
    PlanOutcome outcome = ControlPlanSolver.solve(only, each, Optional.empty());
    boolean possible = outcome.status() != PlanOutcome.Status.IMPOSSIBLE;
    Set<String> used = new closehand.plan.problem.PlanPricer(only).price(outcome.plan()).devices();
    return possible && used.containsAll(devices)
        ? Optional.of(new SetPlan(devices, outcome))
        : Optional.empty();
  }

  private static List<Set<String>> sets(Equipment equipment) {
    List<Set<String>> found = new ArrayList<>();
    List<Device> parts = equipment.devices().stream().filter(d -> d.parts() > 0).toList();
    extend(equipment, parts, 0, new ArrayList<>(), found);
    found.sort(Comparator.comparingInt(Set::size));
    return found;
  }

  private static void extend(
      Equipment equipment,
      List<Device> parts,
      int d,
      List<Device> chosen,
      List<Set<String>> found) {
    if (d == parts.size()) {
      Set<String> ids = new HashSet<>();
      chosen.forEach(c -> ids.add(c.id()));
      found.add(ids);
      return;
    }
    extend(equipment, parts, d + 1, chosen, found);
    Device device = parts.get(d);
    int sum = device.parts() + chosen.stream().mapToInt(Device::parts).sum();
    if (sum <= equipment.mostParts() && fits(equipment, device, chosen)) {
      chosen.add(device);
      extend(equipment, parts, d + 1, chosen, found);
      chosen.remove(chosen.size() - 1);
    }
  }

  private static boolean fits(Equipment equipment, Device device, List<Device> chosen) {
    return equipment.incompatible().stream()
        .noneMatch(
            p ->
                chosen.stream()
                    .anyMatch(
                        c ->
                            (p.first().equals(c.id()) && p.second().equals(device.id()))
                                || (p.second().equals(c.id()) && p.first().equals(device.id()))));
  }
}
