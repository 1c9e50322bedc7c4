package closehand.measure.trial;

import closehand.bank.StopSign;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Consumer;

/**
 * One trial of a set-up, or as much of it as was said so far.
 *
 * @param day the day it began, an ISO date from outside
 * @param setUp what was tried; an unnamed one until it was said
 * @param scene in which game and where in it
 * @param place where, and on loan until when
 * @param actions three to five that the player must have, the same in every trial
 * @param before how it felt before
 * @param painAfterFive pain after five minutes
 * @param after how it felt at the end
 * @param minutes how long was played
 * @param satisfaction 0 to 10
 * @param notes in the player's or helper's words, may be empty
 * @param stopped what ended it early
 * @param done whether all was asked
 */
public record Trial(
    String day,
    SetUp setUp,
    Scene scene,
    Place place,
    List<Tries> actions,
    Felt before,
    OptionalInt painAfterFive,
    Felt after,
    OptionalInt minutes,
    OptionalInt satisfaction,
    String notes,
    Optional<StopSign> stopped,
    boolean done) {
  /** Fewest actions that are counted. */
  public static final int FEWEST_ACTIONS = 3;

  /** Most actions that are counted. */
  public static final int MOST_ACTIONS = 5;

  /** The longest time of a trial that is taken down, in minutes. */
  public static final int LONGEST_MINUTES = 600;

  /** Takes a copy. */
  public Trial {
    actions = List.copyOf(actions);
  }

  /**
   * In what it was tried.
   *
   * @param game the game
   * @param part the scene, level or mode
   */
  public record Scene(String game, String part) {}

  /**
   * Where it was tried.
   *
   * @param where where; empty until it was said
   * @param backOn the day kit on loan goes back, an ISO date
   */
  public record Place(Optional<Where> where, Optional<String> backOn) {
    boolean isHome() {
      return where.equals(Optional.of(Where.HOME));
    }
  }

  /** Where a trial is. */
  public enum Where {
    TOGETHER("together", "here, together"),
    HOME("home", "at home");

    private final String code;
    private final String words;

    Where(String code, String words) {
      this.code = code;
      this.words = words;
    }

    /** The name in files. */
    public String code() {
      return code;
    }

    /** Plain words. */
    public String words() {
      return words;
    }

    /** The one with this code. */
    public static Optional<Where> of(String code) {
      return java.util.Arrays.stream(values()).filter(w -> w.code.equals(code)).findFirst();
    }
  }

  /** A trial that begins on this day. */
  public static Trial begun(String day) {
    return new Trial(
        day,
        SetUp.named(""),
        new Scene("", ""),
        new Place(Optional.empty(), Optional.empty()),
        List.of(),
        Felt.UNSAID,
        OptionalInt.empty(),
        Felt.UNSAID,
        OptionalInt.empty(),
        OptionalInt.empty(),
        "",
        Optional.empty(),
        false);
  }

  /** Whether it tells something about its set-up: all was asked, or it had to be stopped. */
  public boolean counts() {
    return done || stopped.isPresent();
  }

  /** The mean of what worked of ten over these actions; empty unless each of them was counted. */
  public OptionalDouble worked(List<String> names) {
    List<Integer> counts = new ArrayList<>();
    for (Tries tries : actions) {
      if (names.contains(tries.action()) && tries.worked().isPresent()) {
        counts.add(tries.worked().getAsInt());
      }
    }
    return counts.size() < names.size() || names.isEmpty()
        ? OptionalDouble.empty()
        : counts.stream().mapToInt(i -> i).average();
  }

  /** The names of the actions, as they were said. */
  public List<String> actionNames() {
    return actions.stream().map(Tries::action).toList();
  }

  /** How much pain rose, below 0 where it fell; empty where it was not said both times. */
  public OptionalInt painRise() {
    return difference(before.pain(), after.pain());
  }

  /** How much tiredness rose, below 0 where it fell; empty where it was not said both times. */
  public OptionalInt tirednessRise() {
    return difference(before.tiredness(), after.tiredness());
  }

  private static OptionalInt difference(OptionalInt before, OptionalInt after) {
    return before.isPresent() && after.isPresent()
        ? OptionalInt.of(after.getAsInt() - before.getAsInt())
        : OptionalInt.empty();
  }

  Trial with(SetUp now) {
    return changed(d -> d.setUp = now);
  }

  Trial with(Scene now) {
    return changed(d -> d.scene = now);
  }

  Trial with(Place now) {
    return changed(d -> d.place = now);
  }

  Trial withActions(List<Tries> now) {
    return changed(d -> d.actions = now);
  }

  Trial feeling(Felt atFirst, OptionalInt pain, Felt atLast) {
    return changed(
        d -> {
          d.before = atFirst;
          d.painAfterFive = pain;
          d.after = atLast;
        });
  }

  Trial lasting(OptionalInt played, OptionalInt satisfied, String words) {
    return changed(
        d -> {
          d.minutes = played;
          d.satisfaction = satisfied;
          d.notes = words;
        });
  }

  Trial ended(Optional<StopSign> by, boolean all) {
    return changed(
        d -> {
          d.stopped = by;
          d.done = all;
        });
  }

  private Trial changed(Consumer<Draft> change) {
    Draft draft = new Draft(this);
    change.accept(draft);
    return draft.trial();
  }

  /** A copy in which single members can be changed before it becomes a trial again. */
  private static final class Draft {
    private final String day;
    private SetUp setUp;
    private Scene scene;
    private Place place;
    private List<Tries> actions;
    private Felt before;
    private OptionalInt painAfterFive;
    private Felt after;
    private OptionalInt minutes;
    private OptionalInt satisfaction;
    private String notes;
    private Optional<StopSign> stopped;
    private boolean done;

    Draft(Trial of) {
      day = of.day();
      setUp = of.setUp();
      scene = of.scene();
      place = of.place();
      actions = of.actions();
      before = of.before();
      painAfterFive = of.painAfterFive();
      after = of.after();
      minutes = of.minutes();
      satisfaction = of.satisfaction();
      notes = of.notes();
      stopped = of.stopped();
      done = of.done();
    }

    Trial trial() {
      return new Trial(
          day,
          setUp,
          scene,
          place,
          actions,
          before,
          painAfterFive,
          after,
          minutes,
          satisfaction,
          notes,
          stopped,
          done);
    }
  }
}
