package closehand.measure.trial;

import closehand.bank.StopSign;
import closehand.measure.statistics.Sample;
import closehand.measure.statistics.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Two set-ups of one player side by side, over the same actions.
 *
 * @param first the one tried first
 * @param second the other
 * @param actions what was counted with both
 * @param success means of what worked of ten
 * @param pain how much pain rose in a trial
 * @param effort how hard it was, at the end of a trial
 * @param satisfaction how satisfied the player was
 * @param warnings what makes the comparison less fair
 * @param choice what follows
 */
public record SideBySide(
    Row first,
    Row second,
    List<String> actions,
    Verdict success,
    Verdict pain,
    Verdict effort,
    Verdict satisfaction,
    List<Warning> warnings,
    Choice choice) {
  /** Takes copies. */
  public SideBySide {
    actions = List.copyOf(actions);
    warnings = List.copyOf(warnings);
  }

  /**
   * The trials of one set-up.
   *
   * @param setUp the set-up
   * @param trials those that count here, in order
   */
  public record Row(SetUp setUp, List<Trial> trials) {
    /** Takes a copy. */
    public Row {
      trials = List.copyOf(trials);
    }

    /** How many were stopped by something the player felt. */
    public int stopped() {
      return (int)
          trials.stream().flatMap(t -> t.stopped().stream()).filter(StopSign::isFelt).count();
    }
  }

  /** What makes a comparison less fair. */
  public enum Warning {
    NOT_IN_TURN,
    OTHER_SCENE,
    OTHER_LENGTH,
    NO_COMMON_ACTION
  }

  /** Why one is the better start, if one is. */
  public enum Why {
    /** More worked, and pain does not speak against it. */
    SUCCESS,
    /** No difference in what worked; less pain. */
    PAIN,
    /** No difference that tells; it is cheaper. */
    CHEAPER,
    /** Neither cheaper; lighter. */
    LIGHTER,
    /** Neither cheaper nor lighter; quicker to set up. */
    QUICKER,
    /** More worked with one, more pain with it too: for the player and the health team. */
    PAIN_AGAINST,
    /** Nothing tells them apart. */
    NOTHING,
    /** Too few trials. */
    TOO_FEW
  }

  /**
   * What follows.
   *
   * @param side the better start; nothing where none is
   * @param why the reason
   */
  public record Choice(Optional<Verdict.Side> side, Why why) {}

  /** Which trials count, and in what order set-ups were first tried. */
  public static List<SetUp> setUps(List<Trial> trials) {
    return TrialWords.known(trials.stream().filter(Trial::counts).toList());
  }

  /**
   * Sets two side by side.
   *
   * @param trials all trials of the player, in order
   * @param first the name of one
   * @param second the name of the other
   * @throws IllegalArgumentException if one of them has no trial that counts
   */
  public static SideBySide of(List<Trial> trials, String first, String second) {
    List<Trial> done =
        trials.stream()
            .filter(Trial::counts)
            .filter(t -> t.setUp().name().equals(first) || t.setUp().name().equals(second))
            .toList();
    Row a = row(done, first);
    Row b = row(done, second);
    List<String> actions = common(done);
    Verdict.Order order = order(done, first);
    Verdict success = verdict(a, b, t -> worked(t, actions), Verdict.Good.MORE, order);
    Verdict pain = verdict(a, b, t -> stream(t.painRise()), Verdict.Good.LESS, order);
    return new SideBySide(
        a,
        b,
        actions,
        success,
        pain,
        verdict(a, b, t -> stream(t.after().effort()), Verdict.Good.LESS, order),
        verdict(a, b, t -> stream(t.satisfaction()), Verdict.Good.MORE, order),
        warnings(done, first, actions),
        choice(a, b, success, pain));
  }

  /** The two set-ups tried last, the one that came up first before the other; nothing of one. */
  public static Optional<SideBySide> ofLastTwo(List<Trial> trials) {
    List<String> last = new ArrayList<>();
    for (int i = trials.size() - 1; i >= 0 && last.size() < 2; i--) {
      Trial trial = trials.get(i);
      String name = trial.setUp().name();
      if (trial.counts() && !name.isEmpty() && !last.contains(name)) {
        last.add(name);
      }
    }
    List<String> two = setUps(trials).stream().map(SetUp::name).filter(last::contains).toList();
    return two.size() < 2 ? Optional.empty() : Optional.of(of(trials, two.get(0), two.get(1)));
  }

  private static Row row(List<Trial> done, String name) {
    List<Trial> its = done.stream().filter(t -> t.setUp().name().equals(name)).toList();
    if (its.isEmpty()) {
      throw new IllegalArgumentException("no trial that counts with this set-up");
    }
    return new Row(its.get(0).setUp(), its);
  }

  /** The actions counted in every trial that was not stopped. */
  private static List<String> common(List<Trial> done) {
    List<Trial> whole = done.stream().filter(t -> t.stopped().isEmpty()).toList();
    return whole.isEmpty()
        ? List.of()
        : whole.get(0).actionNames().stream()
            .filter(a -> whole.stream().allMatch(t -> t.actionNames().contains(a)))
            .toList();
  }

  private static Stream<Double> worked(Trial trial, List<String> actions) {
    java.util.OptionalDouble mean = trial.worked(actions);
    return mean.isPresent() ? Stream.of(mean.getAsDouble()) : Stream.empty();
  }

  private static Stream<Double> stream(OptionalInt value) {
    return value.isPresent() ? Stream.of((double) value.getAsInt()) : Stream.empty();
  }

  private static Verdict verdict(
      Row a,
      Row b,
      Function<Trial, Stream<Double>> measure,
      Verdict.Good good,
      Verdict.Order order) {
    return Verdict.of(sample(a, measure), sample(b, measure), good, order);
  }

  private static Sample sample(Row row, Function<Trial, Stream<Double>> measure) {
    return new Sample(row.trials().stream().flatMap(measure).toList());
  }

  private static Verdict.Order order(List<Trial> done, String first) {
    if (turns(done) > 1) {
      return Verdict.Order.MIXED;
    }
    return done.get(0).setUp().name().equals(first)
        ? Verdict.Order.FIRST_BEFORE_SECOND
        : Verdict.Order.SECOND_BEFORE_FIRST;
  }

  /** How often the set-up was another one than in the trial before. */
  private static int turns(List<Trial> done) {
    int turns = 0;
    for (int i = 1; i < done.size(); i++) {
      turns += done.get(i).setUp().name().equals(done.get(i - 1).setUp().name()) ? 0 : 1;
    }
    return turns;
  }

  private static List<Warning> warnings(List<Trial> done, String first, List<String> actions) {
    List<Warning> warnings = new ArrayList<>();
    int ofFirst = (int) done.stream().filter(t -> t.setUp().name().equals(first)).count();
    if (turns(done) < Math.max(2, Math.min(ofFirst, done.size() - ofFirst))) {
      warnings.add(Warning.NOT_IN_TURN);
    }
    if (done.stream().map(Trial::scene).distinct().count() > 1) {
      warnings.add(Warning.OTHER_SCENE);
    }
    List<Integer> minutes =
        done.stream()
            .filter(t -> t.minutes().isPresent())
            .map(t -> t.minutes().getAsInt())
            .sorted()
            .toList();
    if (!minutes.isEmpty() && minutes.get(minutes.size() - 1) > 2 * Math.max(1, minutes.get(0))) {
      warnings.add(Warning.OTHER_LENGTH);
    }
    if (actions.isEmpty()) {
      warnings.add(Warning.NO_COMMON_ACTION);
    }
    return warnings;
  }

  /** Pain speaks first; a tie goes to the cheaper, the lighter, the quicker to set up. */
  private static Choice choice(Row a, Row b, Verdict success, Verdict pain) {
    Optional<Verdict.Side> works = success.ahead();
    Optional<Verdict.Side> hurtsLess = hurtsLess(a, b, pain);
    if (works.isPresent() && hurtsLess.isPresent() && works.get() != hurtsLess.get()) {
      return new Choice(Optional.empty(), Why.PAIN_AGAINST);
    }
    if (works.isPresent()) {
      return new Choice(works, Why.SUCCESS);
    }
    if (success instanceof Verdict.TooFew) {
      return new Choice(Optional.empty(), Why.TOO_FEW);
    }
    return hurtsLess.isPresent() ? new Choice(hurtsLess, Why.PAIN) : tie(a.setUp(), b.setUp());
  }

  /** A stopped trial tells more about pain than the numbers of those that were finished. */
  private static Optional<Verdict.Side> hurtsLess(Row a, Row b, Verdict pain) {
    boolean stoppedA = a.stopped() > 0;
    boolean stoppedB = b.stopped() > 0;
    if (stoppedA == stoppedB) {
      return pain.ahead();
    }
    return Optional.of(stoppedB ? Verdict.Side.FIRST : Verdict.Side.SECOND);
  }

  private static Choice tie(SetUp a, SetUp b) {
    int cost = compared(a.cost(), b.cost());
    int weight = compared(a.weight(), b.weight());
    int minutes =
        a.minutesToSetUp().isPresent() && b.minutesToSetUp().isPresent()
            ? Integer.compare(a.minutesToSetUp().getAsInt(), b.minutesToSetUp().getAsInt())
            : 0;
    if (cost != 0) {
      return new Choice(Optional.of(less(cost)), Why.CHEAPER);
    }
    if (weight != 0) {
      return new Choice(Optional.of(less(weight)), Why.LIGHTER);
    }
    return minutes != 0
        ? new Choice(Optional.of(less(minutes)), Why.QUICKER)
        : new Choice(Optional.empty(), Why.NOTHING);
  }

  private static <E extends Enum<E>> int compared(Optional<E> a, Optional<E> b) {
    return a.isPresent() && b.isPresent() ? a.get().compareTo(b.get()) : 0;
  }

  private static Verdict.Side less(int comparison) {
    return comparison < 0 ? Verdict.Side.FIRST : Verdict.Side.SECOND;
  }
}
