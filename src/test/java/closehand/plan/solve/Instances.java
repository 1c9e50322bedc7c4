package closehand.plan.solve;

import closehand.plan.problem.Action;
import closehand.plan.problem.Body;
import closehand.plan.problem.CoPress;
import closehand.plan.problem.Convention;
import closehand.plan.problem.Device;
import closehand.plan.problem.Effector;
import closehand.plan.problem.Effort;
import closehand.plan.problem.Equipment;
import closehand.plan.problem.Input;
import closehand.plan.problem.Layer;
import closehand.plan.problem.Pair;
import closehand.plan.problem.PlanProblem;
import closehand.plan.problem.Play;
import closehand.plan.problem.Prices;
import closehand.plan.problem.Style;
import closehand.plan.problem.Wishes;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads the instances kept under {@code plan-instances}; their format is told in its README. */
public final class Instances {
  private final List<Action> actions = new ArrayList<>();
  private final List<CoPress> coPresses = new ArrayList<>();
  private final List<Convention> conventions = new ArrayList<>();
  private final List<Device> devices = new ArrayList<>();
  private final List<Input> inputs = new ArrayList<>();
  private final List<Layer> layers = new ArrayList<>();
  private final List<Pair> incompatible = new ArrayList<>();
  private final List<Pair> exclusive = new ArrayList<>();
  private final List<Effector> effectors = new ArrayList<>();
  private final List<Pair> coupled = new ArrayList<>();
  private List<Integer> leftOut = List.of();
  private List<Integer> miss = List.of();
  private int most;
  private int toggle;
  private int wait;
  private int longHold;

  /** The instance of this name. */
  public static PlanProblem read(String name) {
    try (InputStream in = Instances.class.getResourceAsStream("/plan-instances/" + name + ".txt")) {
      if (in == null) {
        throw new IllegalArgumentException("no instance " + name);
      }
      Instances reader = new Instances();
      new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .filter(l -> !l.isBlank())
          .forEach(l -> reader.line(l.trim().split("\\s+")));
      return reader.problem();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void line(String[] f) {
    switch (f[0]) {
      case "INSTANCE" -> {}
      case "K" -> most = number(f, 1);
      case "PEN" -> leftOut = numbers(f);
      case "MISS" -> miss = numbers(f);
      case "PAR" -> {
        toggle = number(f, 1);
        wait = number(f, 2);
        longHold = number(f, 3);
      }
      case "EFF" ->
          effectors.add(
              new Effector(
                  "e" + f[1],
                  f[2],
                  number(f, 5) == 1,
                  new Effector.LoadLimit(number(f, 3), number(f, 4)),
                  Optional.empty()));
      case "EFFCONF" -> coupled.add(new Pair("e" + f[1], "e" + f[2]));
      case "DEV" -> devices.add(new Device("d" + f[1], f[2], number(f, 3), 1));
      case "DEVCONF" -> incompatible.add(new Pair("d" + f[1], "d" + f[2]));
      case "IN" -> inputs.add(input(f));
      case "INEXCL" -> exclusive.add(new Pair("i" + f[1], "i" + f[2]));
      case "LAYER" -> layers.add(layer(f));
      case "ACT" -> actions.add(action(f));
      case "CO" -> coPresses.add(new CoPress("a" + f[1], "a" + f[2]));
      case "CONV" ->
          conventions.add(
              new Convention(
                  "a" + f[1], "a" + f[2], Convention.Kind.values()[number(f, 3)], number(f, 4)));
      default -> throw new IllegalArgumentException(f[0]);
    }
  }

  private static Input input(String[] f) {
    return new Input(
        "i" + f[1],
        f[2],
        "d" + f[3],
        "e" + f[4],
        styles(number(f, 5)),
        number(f, 6),
        number(f, 9),
        Effort.points(number(f, 7), number(f, 8)),
        number(f, 10),
        number(f, 11),
        number(f, 12),
        number(f, 13));
  }

  private static Layer layer(String[] f) {
    List<String> covers = new ArrayList<>();
    for (int i = 2; i < f.length; i++) {
      covers.add("i" + f[i]);
    }
    return new Layer("l" + f[1], "i" + f[1], covers);
  }

  private static Action action(String[] f) {
    return new Action(
        "a" + f[1],
        f[2],
        styles(number(f, 3)).iterator().next(),
        number(f, 4),
        number(f, 5),
        number(f, 6),
        number(f, 7),
        number(f, 8) == 1);
  }

  private static Set<Style> styles(int bits) {
    Set<Style> styles = EnumSet.noneOf(Style.class);
    for (Style style : Style.values()) {
      if ((bits >> style.ordinal() & 1) != 0) {
        styles.add(style);
      }
    }
    return styles;
  }

  private static int number(String[] f, int i) {
    return Integer.parseInt(f[i]);
  }

  private static List<Integer> numbers(String[] f) {
    List<Integer> found = new ArrayList<>();
    for (int i = 1; i < f.length; i++) {
      found.add(number(f, i));
    }
    return found;
  }

  private PlanProblem problem() {
    return new PlanProblem(
        new Play(actions, coPresses, conventions),
        new Equipment(devices, inputs, layers, most, incompatible, exclusive),
        new Body(effectors, coupled),
        new Prices(leftOut, miss, toggle, wait, longHold, List.of()),
        Wishes.NONE);
  }
}
