package closehand.plan;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The control plan of one game.
 *
 * @param game its place in the interview, from 0
 * @param genre its kind
 * @param title what it is called
 * @param approaches approaches in use, in the order of the bank
 * @param cost points a minute of play; lower is easier
 * @param bound no plan under the same demands costs less
 * @param sureness how sure that is
 * @param assignments which action sits where, most important first
 * @param leftOut actions without a place
 * @param settled actions that need no place of their own
 * @param effectors what each part of the body does
 * @param settings what to set in the game first
 * @param waitsFor facts that are not known and could make the plan better
 * @param unkept sentences about kept wishes that cannot be kept as things stand
 */
public record ControlPlan(
    int game,
    String genre,
    String title,
    List<String> approaches,
    long cost,
    long bound,
    Sureness sureness,
    List<Assignment> assignments,
    List<LeftOut> leftOut,
    List<Shared> settled,
    List<EffectorLoad> effectors,
    List<String> settings,
    List<String> waitsFor,
    List<String> unkept) {
  public ControlPlan {
    approaches = List.copyOf(approaches);
    assignments = List.copyOf(assignments);
    leftOut = List.copyOf(leftOut);
    settled = List.copyOf(settled);
    effectors = List.copyOf(effectors);
    settings = List.copyOf(settings);
    waitsFor = List.copyOf(waitsFor);
    unkept = List.copyOf(unkept);
  }

  /** How sure it is that no plan is better. */
  public enum Sureness {
    /** Nothing better exists under these demands. */
    PROVED,
    /** Nothing better by more than half a per cent exists. */
    NEAR,
    /** The search ended before it could tell. */
    OPEN
  }

  /** Whether nothing better exists. */
  public boolean proven() {
    return sureness == Sureness.PROVED;
  }

  /** The same, with other words beside what is left out. */
  public ControlPlan leavingOut(List<LeftOut> told) {
    return new ControlPlan(
        game,
        genre,
        title,
        approaches,
        cost,
        bound,
        sureness,
        assignments,
        told,
        settled,
        effectors,
        settings,
        waitsFor,
        unkept);
  }

  /** The same, with kept wishes that cannot be kept. */
  public ControlPlan notKeeping(List<String> wishes) {
    return new ControlPlan(
        game,
        genre,
        title,
        approaches,
        cost,
        bound,
        sureness,
        assignments,
        leftOut,
        settled,
        effectors,
        settings,
        waitsFor,
        wishes);
  }

  /** The assignment of this action or part of it, by id. */
  public Optional<Assignment> assignment(String id) {
    return assignments.stream().filter(a -> a.id().equals(id)).findFirst();
  }

  /** How an action is worked. */
  public enum Mode {
    TAP,
    HOLD,
    TOGGLE,
    AXIS
  }

  /** What the load light of a part of the body shows. */
  public enum Light {
    GREEN,
    AMBER,
    RED
  }

  /**
   * One action on one input.
   *
   * @param id the action, with its direction after a dot where it has several
   * @param action the game's action
   * @param name plain words
   * @param approach the approach
   * @param input id of the input inside the approach
   * @param inputName plain words
   * @param inputKind kind of the input
   * @param device what it is part of
   * @param usage USB HID usage, or empty
   * @param effector the part of the body that works it
   * @param held name of what is held first, for a second meaning
   * @param mode how it is worked
   * @param perMinute times a minute
   * @param holdSeconds seconds one use is held
   * @param importance 0 to 3
   * @param urgency 0 to 3
   * @param cost points a minute of this action
   * @param factor how hard the input is for this body, 1 for neutral
   * @param rules keys of the rules that made the factor
   * @param runnersUp the next best inputs and what they would cost more; may be empty
   */
  public record Assignment(
      String id,
      String action,
      String name,
      String approach,
      String input,
      String inputName,
      String inputKind,
      String device,
      String usage,
      String effector,
      Optional<String> held,
      Mode mode,
      double perMinute,
      double holdSeconds,
      int importance,
      int urgency,
      long cost,
      double factor,
      List<String> rules,
      List<RunnerUp> runnersUp) {
    public Assignment {
      rules = List.copyOf(rules);
      runnersUp = List.copyOf(runnersUp);
    }

    /** The input as reports name it: {@code APPROACH/input}. */
    public String path() {
      return approach + "/" + input;
    }

    /** The share of play that it is held, 0 to 1. */
    public double heldShare() {
      return mode == Mode.HOLD ? Math.min(1, perMinute * holdSeconds / 60) : 0;
    }
  }

  /**
   * Another place and what it would cost more.
   *
   * @param input its path, which both hands' copies of one control share
   * @param effector the part of the body that would work it
   * @param extra points a minute
   */
  public record RunnerUp(String input, String effector, long extra) {}

  /**
   * An action without a place.
   *
   * @param id the action, with its direction after a dot where it has several
   * @param action the game's action
   * @param name plain words
   * @param importance 0 to 3
   * @param because why, in plain words
   * @param bringInBy single changes that would bring it in; may be empty
   */
  public record LeftOut(
      String id,
      String action,
      String name,
      int importance,
      String because,
      List<String> bringInBy) {
    public LeftOut {
      bringInBy = List.copyOf(bringInBy);
    }
  }

  /**
   * An action that needs no place of its own.
   *
   * @param action the game's action
   * @param name plain words
   * @param words what takes its place
   * @param with id of the assignment it is done with, or empty
   */
  public record Shared(String action, String name, String words, String with) {}

  /**
   * What one part of the body does.
   *
   * @param effector the part
   * @param perMinute presses and movements a minute
   * @param heldShare share of play it holds something, 0 to 1
   * @param light what the load light shows
   */
  public record EffectorLoad(String effector, double perMinute, double heldShare, Light light) {}

  /** The parts of the body in use. */
  public Set<String> partsInUse() {
    return effectors.stream()
        .map(EffectorLoad::effector)
        .collect(java.util.stream.Collectors.toUnmodifiableSet());
  }
}
