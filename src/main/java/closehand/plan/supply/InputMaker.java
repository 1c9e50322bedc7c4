package closehand.plan.supply;

import closehand.bank.Approach;
import closehand.bank.PlanFigures;
import closehand.plan.problem.Pair;
import closehand.plan.problem.Style;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Makes inputs of a supply from those of the catalogue. A stick becomes several: as a whole, along
 * each line, and its four directions as buttons.
 */
final class InputMaker {
  private static final List<String> DIRECTIONS = List.of("up", "left", "down", "right");

  /** A switch under a helping hand: never for what must come at once. */
  private static final String CALM_ONLY = "calmOnly";

  private static final double FAR_CELL = 1.4;
  private static final int ROW_OF_TOP_KEYS = 'E';

  /** Inputs whose place is not known lie too far apart to be neighbours. */
  private static final int APART = 10;

  /** One catalogue input as it is being made. */
  private record Part(
      String suffix, String name, Set<Style> can, int column, int row, int rocker) {}

  private final PlanFigures figures;
  private final List<SuppliedInput> made = new ArrayList<>();
  private final List<Pair> exclusive = new ArrayList<>();
  private final Map<String, Integer> rockers = new HashMap<>();
  private final Set<String> helperHands;

  /**
   * Starts with no inputs.
   *
   * @param helperHands hands that press one big thing and no more, such as {@code R.hand}
   */
  InputMaker(PlanFigures figures, Set<String> helperHands) {
    this.figures = figures;
    this.helperHands = Set.copyOf(helperHands);
  }

  List<SuppliedInput> made() {
    return List.copyOf(made);
  }

  List<Pair> exclusive() {
    return List.copyOf(exclusive);
  }

  /** Kinds of use that rules speak of, whatever the action. */
  Set<String> uses(Approach approach, Approach.Input input) {
    Set<String> uses = new HashSet<>();
    PlanFigures.Kind kind = figures.kinds().get(input.kind());
    if (kind != null) {
      uses.addAll(kind.uses());
    }
    PlanFigures.Family family = figures.families().get(approach.id());
    if (family != null) {
      uses.addAll(family.uses());
    }
    if (input.effort() >= FAR_CELL) {
      uses.add("farCell");
    }
    if (input.id().equals("wheelClick")) {
      uses.add("wheelClick");
    }
    if (input.kind().equals("pointer")) {
      uses.remove("smallTarget");
    } else {
      uses.remove("slide");
    }
    if (input.does().contains("point") && !input.does().contains("axis2")) {
      uses.add("pointOnly");
    }
    return uses;
  }

  private Set<String> uses(Approach approach, Approach.Input input, String effector) {
    Set<String> uses = uses(approach, input);
    if (input.kind().equals("switch") && helperHands.contains(effector)) {
      uses.add(CALM_ONLY);
    }
    return uses;
  }

  /** Whether an input is one direction of a cross, which one finger works as a whole. */
  boolean isInCross(Approach.Input input) {
    return figures.layout().crosses().stream().anyMatch(c -> c.contains(input.id()));
  }

  /** Adds an input and who works it; false when it does nothing that a plan can use. */
  boolean add(Approach approach, Approach.Input input, String device, String effector) {
    Set<Style> can = can(input);
    if (can.isEmpty()) {
      return false;
    }
    boolean own = device.startsWith(approach.id());
    String id = device + "/" + (own ? "" : approach.id() + ":") + input.id();
    int rocker = rocker(input, device);
    Part part = new Part("", input.name(), can, column(approach, input), row(input), rocker);
    make(approach, input, device, effector, id, part);
    if (input.kind().equals("axis2")) {
      stick(approach, input, device, effector, id);
    }
    return true;
  }

  private void stick(
      Approach approach, Approach.Input input, String device, String effector, String id) {
    int rocker = rockers.computeIfAbsent(id, i -> rockers.size() + 1);
    String name = input.name();
    List<String> parts = new ArrayList<>();
    Set<Style> line = Set.of(Style.ONE_AXIS);
    Set<Style> press = Set.of(Style.TAP, Style.HOLD);
    Part across = new Part(".across", name + ", left and right", line, 1, 1, rocker);
    Part along = new Part(".along", name + ", forward and back", line, 1, 1, rocker);
    make(approach, input, device, effector, id + across.suffix(), across);
    make(approach, input, device, effector, id + along.suffix(), along);
    parts.add(id + across.suffix());
    parts.add(id + along.suffix());
    for (String way : DIRECTIONS) {
      int column = way.equals("left") ? 0 : way.equals("right") ? 2 : 1;
      int row = way.equals("up") ? 0 : way.equals("down") ? 2 : 1;
      Part direction = new Part("." + way, name + ", pushed " + way, press, column, row, rocker);
      make(approach, input, device, effector, id + direction.suffix(), direction);
      parts.add(id + direction.suffix());
      boolean sideways = way.equals("left") || way.equals("right");
      exclusive.add(new Pair(sideways ? id + ".across" : id + ".along", id + "." + way));
    }
    parts.forEach(p -> exclusive.add(new Pair(id, p)));
  }

  private void make(
      Approach approach,
      Approach.Input input,
      String device,
      String effector,
      String id,
      Part part) {
    PlanFigures.Kind kind = figures.kinds().get(input.kind());
    made.add(
        new SuppliedInput(
            id,
            approach.id(),
            input.id() + part.suffix(),
            part.name(),
            input.kind(),
            device,
            effector,
            part.can(),
            latency(approach),
            uses(approach, input, effector),
            input.effort() * (kind == null ? 1 : kind.times()),
            figures.speaks(approach.id(), input.kind()),
            kind != null && kind.needsCursor(),
            part.suffix().isEmpty() ? input.usage() : "",
            part.column(),
            part.row(),
            part.rocker()));
  }

  private int latency(Approach approach) {
    Approach.Span span = approach.latencyMilliseconds();
    double share = figures.time().latencyShare();
    return (int) Math.round(span.minimum() + share * (span.maximum() - span.minimum()));
  }

  private static Set<Style> can(Approach.Input input) {
    Set<Style> can = EnumSet.noneOf(Style.class);
    for (String does : input.does()) {
      switch (does) {
        case "tap" -> can.add(Style.TAP);
        case "hold" -> can.add(Style.HOLD);
        case "repeat" -> can.add(Style.REPEAT);
        case "axis1" -> can.add(Style.ONE_AXIS);
        case "axis2", "point" -> can.add(Style.TWO_AXES);
        default -> {
          // Text and layers are no inputs of their own.
        }
      }
    }
    return can;
  }

  private int rocker(Approach.Input input, String device) {
    for (List<String> cross : figures.layout().crosses()) {
      if (cross.contains(input.id())) {
        return rockers.computeIfAbsent(device + cross, k -> rockers.size() + 1);
      }
    }
    return 0;
  }

  private int column(Approach approach, Approach.Input input) {
    return figures
        .layout()
        .place(input.id())
        .map(p -> p.get(0))
        .orElseGet(
            () ->
                isGrid(input)
                    ? Integer.parseInt(input.id().substring(1))
                    : APART * (2 + approach.inputs().indexOf(input)));
  }

  private int row(Approach.Input input) {
    return figures.layout().place(input.id()).map(p -> p.get(1)).orElseGet(() -> gridRow(input));
  }

  /** Cells and keys carry a row letter and a column number in their names. */
  private static boolean isGrid(Approach.Input input) {
    boolean grid = input.kind().equals("cell") || input.kind().equals("key");
    return grid && input.id().matches("[A-Z]\\d{1,2}");
  }

  private static int gridRow(Approach.Input input) {
    if (!isGrid(input)) {
      return 0;
    }
    int letter = input.id().charAt(0);
    return input.kind().equals("cell") ? letter - 'A' : ROW_OF_TOP_KEYS - letter;
  }
}
