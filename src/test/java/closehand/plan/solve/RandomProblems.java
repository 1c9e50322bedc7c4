package closehand.plan.solve;

import closehand.plan.problem.*;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Invented problems of any size, with every kind of demand the model knows; by seed. */
final class RandomProblems {
  private final Dice dice;
  private final int actions;
  private final int inputs;
  private final int devices;
  private final boolean tight;
  private final boolean everything;

  private RandomProblems(long seed, int actions, int inputs, boolean tight, boolean everything) {
    dice = new Dice(seed);
    this.actions = actions;
    this.inputs = inputs;
    this.devices = Math.max(2, inputs / 4);
    this.tight = tight;
    this.everything = everything;
  }

  /** A problem with the plain demands of the model. */
  static PlanProblem plain(long seed, int actions, int inputs, boolean tight) {
    return new RandomProblems(seed, actions, inputs, tight, false).problem();
  }

  /** The same with wishes, habits, efforts of pairs, amber lights and parts that count double. */
  static PlanProblem everything(long seed, int actions, int inputs, boolean tight) {
    return new RandomProblems(seed, actions, inputs, tight, true).problem();
  }

  private PlanProblem problem() {
    Body body = body();
    Equipment equipment = equipment();
    Play play = play();
    Prices prices =
        new Prices(
            List.of(0, 400, 1500, 5000, 15_000, 60_000),
            List.of(0, 2, 5, 12, 30, 60),
            600,
            20,
            2000,
            everything ? pairs() : List.of());
    return new PlanProblem(play, equipment, body, prices, everything ? wishes() : Wishes.NONE);
  }

  private Body body() {
    List<Effector> effectors = new ArrayList<>();
    for (int e = 0; e < 6; e++) {
      int presses = dice.from(200, 900) / (tight ? 3 : 1);
      int held = dice.from(5, 30) * 1000 / (tight ? 2 : 1);
      boolean amber = everything && dice.oneIn(2);
      effectors.add(
          new Effector(
              "e" + e,
              "effector " + e,
              e < 2 || !dice.oneIn(5),
              new Effector.LoadLimit(presses, held),
              amber
                  ? Optional.of(
                      new Effector.Amber(
                          new Effector.LoadLimit(presses / 2, held / 2),
                          dice.from(0, 40),
                          dice.from(0, 60)))
                  : Optional.empty()));
    }
    List<Pair> coupled = new ArrayList<>();
    if (dice.oneIn(2)) {
      coupled.add(new Pair("e3", "e4"));
    }
    if (tight) {
      coupled.add(new Pair("e2", "e3"));
    }
    return new Body(effectors, coupled);
  }

  private Equipment equipment() {
    List<Device> all = new ArrayList<>();
    for (int d = 0; d < devices; d++) {
      boolean owned = everything && dice.oneIn(4);
      int parts = owned ? 0 : everything ? dice.from(1, 2) : 1;
      all.add(new Device("d" + d, "device " + d, owned ? 0 : dice.from(300, 1500), parts));
    }
    List<Input> list = new ArrayList<>();
    for (int i = 0; i < inputs; i++) {
      list.add(input(i));
    }
    List<Layer> layers = new ArrayList<>();
    int count = dice.below(3);
    for (int l = 0; l < count; l++) {
      List<String> covers = new ArrayList<>();
      int button = dice.below(inputs);
      for (int i = 0; i < inputs; i++) {
        if (i != button && dice.oneIn(2)) {
          covers.add("i" + i);
        }
      }
      layers.add(new Layer("l" + l, "i" + button, covers));
    }
    List<Pair> incompatible = new ArrayList<>();
    if (dice.oneIn(2)) {
      incompatible.add(new Pair("d0", "d1"));
    }
    List<Pair> exclusive = new ArrayList<>();
    if (dice.oneIn(2)) {
      exclusive.add(new Pair("i0", "i1"));
      exclusive.add(new Pair("i0", "i2"));
    }
    return new Equipment(all, list, layers, dice.from(1, 3), incompatible, exclusive);
  }

  private Input input(int i) {
    Set<Style> can = EnumSet.of(Style.TAP);
    if (!dice.oneIn(4)) {
      can.add(Style.HOLD);
    }
    if (!dice.oneIn(3)) {
      can.add(Style.REPEAT);
    }
    if (dice.oneIn(5)) {
      can = EnumSet.of(Style.ONE_AXIS, Style.TWO_AXES);
    }
    return new Input(
        "i" + i,
        "input " + i,
        "d" + i * devices / inputs,
        "e" + dice.below(6),
        can,
        dice.from(80, 400),
        dice.oneIn(6) ? 300 : 0,
        Effort.points(dice.from(50, 300), dice.from(10, 60)),
        dice.from(900, 1000),
        i % 4,
        i / 4,
        dice.oneIn(4) ? 1 + i * devices / inputs : 0);
  }

  private Play play() {
    List<Action> all = new ArrayList<>();
    for (int a = 0; a < actions; a++) {
      Style style = Style.values()[dice.oneIn(6) ? dice.from(3, 4) : dice.below(3)];
      all.add(
          new Action(
              "a" + a,
              "action " + a,
              style,
              dice.from(1, 120),
              dice.from(0, 2500),
              dice.oneIn(4) ? Action.NO_HURRY : dice.from(250, 900),
              dice.from(0, 5),
              style == Style.HOLD && dice.oneIn(2)));
    }
    List<CoPress> together = new ArrayList<>();
    List<Convention> conventions = new ArrayList<>();
    for (int a = 0; a < actions; a++) {
      for (int b = 0; b < a; b++) {
        if (dice.oneIn(3)) {
          together.add(new CoPress("a" + a, "a" + b));
        }
        if (dice.oneIn(2 + actions / 2)) {
          int kinds = everything ? 4 : 3;
          conventions.add(
              new Convention(
                  "a" + b,
                  "a" + a,
                  Convention.Kind.values()[dice.below(kinds)],
                  dice.from(20, 250)));
        }
      }
    }
    return new Play(all, together, conventions);
  }

  private List<PairEffort> pairs() {
    List<PairEffort> found = new ArrayList<>();
    Set<Pair> seen = new HashSet<>();
    for (int k = 0; k < actions; k++) {
      Pair pair = new Pair("a" + dice.below(actions), "i" + dice.below(inputs));
      if (seen.add(pair)) {
        found.add(
            new PairEffort(
                pair.first(),
                pair.second(),
                new Effort(dice.from(20_000, 400_000), dice.from(5_000, 90_000)),
                dice.below(200)));
      }
    }
    return found;
  }

  private Wishes wishes() {
    List<Wishes.Pin> pins = new ArrayList<>();
    if (dice.oneIn(4)) {
      pins.add(new Wishes.Pin("a0", Slot.base("i" + dice.below(inputs)), Optional.empty()));
    }
    List<Wishes.Ban> bans = new ArrayList<>();
    for (int k = 0; k < actions / 2; k++) {
      bans.add(new Wishes.Ban("a" + dice.below(actions), "i" + dice.below(inputs)));
    }
    Set<String> must = dice.oneIn(3) ? Set.of("a" + dice.below(actions)) : Set.of();
    List<Wishes.Habit> habits = new ArrayList<>();
    if (dice.oneIn(2)) {
      habits.add(
          new Wishes.Habit(
              "a" + dice.below(actions), Slot.base("i" + dice.below(inputs)), dice.below(300)));
    }
    return new Wishes(pins, bans, must, habits);
  }
}
