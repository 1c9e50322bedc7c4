package closehand.report;

import closehand.bank.Effectors;
import closehand.plan.ControlPlan.Assignment;
import closehand.plan.Planned;
import closehand.plan.demand.WantedAction;
import closehand.plan.explain.HandChange;
import closehand.plan.problem.Breach;
import closehand.plan.problem.Placement;
import closehand.plan.problem.PlacementRules;
import closehand.plan.problem.PlanPricer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Where one action could go by hand, what each move costs at once and what it breaks. */
final class MovedByHand {
  private static final int MOST_NAMES = 5;

  private final Planned planned;
  private final String id;
  private final PlanNames names;
  private final int standing;

  MovedByHand(Planned planned, String id) {
    this.planned = planned;
    this.id = id;
    this.names = new PlanNames(planned);
    this.standing =
        new PlanPricer(planned.problem()).price(planned.outcome().plan()).breaches().size();
  }

  /**
   * One place.
   *
   * @param input the id of the input
   * @param change what comes of moving there
   */
  record Place(String input, HandChange change) {
    long extra() {
      return change.extra();
    }
  }

  String name() {
    return planned.demand().action(id).map(WantedAction::name).orElse(id);
  }

  /** Every other place, those that break nothing first, then what costs least. */
  List<Place> places() {
    PlacementRules rules = new PlacementRules(planned.problem());
    Optional<Placement> here = planned.outcome().plan().of(id);
    Map<String, Placement> cheapest = new LinkedHashMap<>();
    for (Placement one : rules.possible(id)) {
      if (one.slot().layer().isEmpty()
          && !here.map(Placement::slot).equals(Optional.of(one.slot()))) {
        cheapest.merge(
            one.slot().input(),
            one,
            (a, b) -> rules.cost(b).total() < rules.cost(a).total() ? b : a);
      }
    }
    List<Place> places = new ArrayList<>();
    cheapest.forEach((input, p) -> places.add(new Place(input, moved(p))));
    places.sort(
        Comparator.comparing((Place p) -> breaks(p))
            .thenComparingLong(Place::extra)
            .thenComparing(Place::input));
    return places;
  }

  private HandChange moved(Placement there) {
    return HandChange.move(
        planned.problem(), planned.outcome().plan(), id, there.slot(), there.mode());
  }

  private boolean breaks(Place place) {
    return !broken(place).isEmpty();
  }

  /** The demands broken by the move; a wish for the action itself gives way to the new one. */
  private List<Breach> broken(Place place) {
    List<Breach> breaches =
        place.change().pricing().breaches().stream()
            .filter(b -> !(b.kind() == Breach.Kind.PIN_NOT_KEPT && b.ids().contains(id)))
            .toList();
    return breaches.size() > standing ? breaches : List.of();
  }

  /** One line. */
  String brief(Place place) {
    String words = input(place.input()) + ": ";
    return breaks(place)
        ? words + "not as it stands, since " + names.against(id, broken(place))
        : words + extra(place) + taken(place).map(t -> "; " + t).orElse("");
  }

  /** All there is to say. */
  List<String> sentences(Place place) {
    List<String> said = new ArrayList<>();
    said.add("\"" + name() + "\" on " + input(place.input()) + ": " + extra(place) + ".");
    taken(place).ifPresent(t -> said.add(Phrases.upper(t) + "."));
    if (breaks(place)) {
      said.add(
          "As it stands this cannot be: "
              + names.against(id, broken(place))
              + ". As a wish it is kept all the same where any plan can, and the rest gives way.");
    } else {
      said.add("It breaks nothing.");
    }
    return said;
  }

  private static String extra(Place place) {
    long extra = place.extra();
    return extra == 0
        ? "as many points"
        : extra > 0 ? extra + " points a minute more" : -extra + " points a minute less";
  }

  /** What becomes of the action that was there. */
  private Optional<String> taken(Place place) {
    return place
        .change()
        .displaced()
        .map(
            other ->
                names.action(other)
                    + place
                        .change()
                        .plan()
                        .of(other)
                        .map(p -> " moves to " + input(p.slot().input()))
                        .orElse(" would have no place"));
  }

  private String input(String input) {
    return planned
        .supply()
        .input(input)
        .map(i -> i.name() + " (" + Effectors.words(i.effector()) + ")")
        .orElse(input);
  }

  /** What a plan around a wish costs and moves, beside the plan before. */
  static List<String> differences(Planned before, Planned after, String wished) {
    List<String> said = new ArrayList<>();
    long extra = after.plan().cost() - before.plan().cost();
    said.add(
        extra == 0
            ? "The whole plan asks for as many points as before."
            : "The whole plan asks for "
                + Math.abs(extra)
                + (extra > 0 ? " points a minute more" : " points a minute fewer")
                + " than before; an easy press is about 100.");
    List<String> moved = new ArrayList<>();
    for (Assignment one : after.plan().assignments()) {
      Optional<Assignment> old = before.plan().assignment(one.id());
      boolean same = old.filter(o -> o.path().equals(one.path())).isPresent();
      if (!same && !one.id().equals(wished)) {
        moved.add("\"" + one.name() + "\" to " + one.inputName());
      }
    }
    if (!moved.isEmpty()) {
      List<String> first = moved.subList(0, Math.min(MOST_NAMES, moved.size()));
      int more = moved.size() - first.size();
      said.add(
          "Also moved: "
              + (more > 0
                  ? String.join("; ", first) + "; and " + more + " more"
                  : String.join("; ", first))
              + ".");
    }
    List<String> out =
        after.plan().leftOut().stream()
            .filter(l -> before.plan().assignment(l.id()).isPresent())
            .map(l -> "\"" + l.name() + "\"")
            .toList();
    if (!out.isEmpty()) {
      said.add("No longer placed: " + Phrases.and(out) + ".");
    }
    return said;
  }
}
