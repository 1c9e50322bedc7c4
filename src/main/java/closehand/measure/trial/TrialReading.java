package closehand.measure.trial;

import closehand.bank.StopSign;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** What a typed answer to one step makes of a trial. */
sealed interface TrialReading {
  /** The longest name or action that is taken, in characters. */
  int LONGEST_NAME = 60;

  /** The longest note that is taken, in characters. */
  int LONGEST_NOTE = 500;

  /** The answer fits. */
  record Taken(Trial trial) implements TrialReading {}

  /** It does not; a sentence says what would. */
  record Refused(String sentence) implements TrialReading {}

  /** The step is left out, which it may be. */
  record LeftOut() implements TrialReading {}

  /** Reads what was typed at a step. */
  static TrialReading of(Step step, String typed, Trial trial, List<Trial> earlier) {
    String text = typed.strip();
    return text.isEmpty() ? empty(step, trial, earlier) : given(step, text, trial, earlier);
  }

  private static TrialReading empty(Step step, Trial trial, List<Trial> earlier) {
    Optional<Trial> last = TrialWords.last(earlier);
    return switch (step.kind()) {
      case PLACE -> new Refused("Please type 1 or 2.");
      case SET_UP -> new Refused("Please give it a name, so that it can be found again.");
      case GAME, SCENE ->
          last.isPresent()
              ? new Taken(sameScene(step, trial, last.get()))
              : new Refused("Please type a word or two.");
      case ACTION -> noAction(step, trial, last);
      case PAIN_BEFORE, PAIN_AFTER ->
          new Refused("Pain is asked every time. Please type a number from 0 to 10.");
      case SIGN -> new LeftOut();
      default -> new LeftOut();
    };
  }

  private static Trial sameScene(Step step, Trial trial, Trial last) {
    return step.kind() == Step.Kind.GAME
        ? trial.with(new Trial.Scene(last.scene().game(), trial.scene().part()))
        : trial.with(new Trial.Scene(trial.scene().game(), last.scene().part()));
  }

  private static TrialReading noAction(Step step, Trial trial, Optional<Trial> last) {
    if (step.index() == 0 && last.isPresent() && !last.get().actions().isEmpty()) {
      return new Taken(
          trial.withActions(last.get().actionNames().stream().map(Tries::open).toList()));
    }
    return step.index() >= Trial.FEWEST_ACTIONS
        ? new LeftOut()
        : new Refused("Three actions at least, so that two set-ups can be compared.");
  }

  private static TrialReading given(Step step, String text, Trial trial, List<Trial> earlier) {
    return switch (step.kind()) {
      case PLACE ->
          choice(
              text,
              2,
              n ->
                  trial.with(
                      new Trial.Place(
                          Optional.of(Trial.Where.values()[n - 1]), trial.place().backOn())));
      case SET_UP -> setUp(text, trial, earlier);
      case COST ->
          choice(text, SetUp.Cost.values().length, n -> trial.with(cost(trial.setUp(), n)));
      case WEIGHT ->
          choice(text, SetUp.Weight.values().length, n -> trial.with(weight(trial.setUp(), n)));
      case LOAN -> loan(text, trial);
      case GAME -> name(text, n -> trial.with(new Trial.Scene(n, trial.scene().part())));
      case SCENE -> name(text, n -> trial.with(new Trial.Scene(trial.scene().game(), n)));
      case ACTION -> action(text, trial);
      case SIGN ->
          text.equals("0")
              ? new LeftOut()
              : choice(
                  text,
                  StopSign.values().length,
                  n -> trial.ended(Optional.of(StopSign.values()[n - 1]), false));
      case NOTES ->
          text.length() > LONGEST_NOTE
              ? new Refused("Up to " + LONGEST_NOTE + " letters, please.")
              : new Taken(trial.lasting(trial.minutes(), trial.satisfaction(), text));
      default -> number(step, text, trial);
    };
  }

  private static TrialReading number(Step step, String text, Trial trial) {
    boolean time = step.kind() == Step.Kind.MINUTES || step.kind() == Step.Kind.MINUTES_TO_SET_UP;
    int most = time ? Trial.LONGEST_MINUTES : Felt.MOST;
    OptionalInt read = whole(text, most);
    if (read.isEmpty()) {
      return new Refused("Please type a whole number from 0 to " + most + ".");
    }
    int n = read.getAsInt();
    Felt before = trial.before();
    Felt after = trial.after();
    OptionalInt five = trial.painAfterFive();
    return new Taken(
        switch (step.kind()) {
          case MINUTES_TO_SET_UP ->
              trial.with(
                  new SetUp(
                      trial.setUp().name(), read, trial.setUp().cost(), trial.setUp().weight()));
          case PAIN_BEFORE -> trial.feeling(before.withPain(n), five, after);
          case EFFORT_BEFORE -> trial.feeling(before.withEffort(n), five, after);
          case TIREDNESS_BEFORE -> trial.feeling(before.withTiredness(n), five, after);
          case PAIN_AFTER_FIVE -> trial.feeling(before, read, after);
          case PAIN_AFTER -> trial.feeling(before, five, after.withPain(n));
          case EFFORT_AFTER -> trial.feeling(before, five, after.withEffort(n));
          case TIREDNESS_AFTER -> trial.feeling(before, five, after.withTiredness(n));
          case MINUTES -> trial.lasting(read, trial.satisfaction(), trial.notes());
          case SATISFACTION -> trial.lasting(trial.minutes(), read, trial.notes());
          case WORKED -> trial.withActions(counted(trial.actions(), step.index(), read));
          default -> throw new IllegalArgumentException("no number");
        });
  }

  private static List<Tries> counted(List<Tries> actions, int index, OptionalInt worked) {
    List<Tries> now = new ArrayList<>(actions);
    now.set(index, new Tries(actions.get(index).action(), worked));
    return now;
  }

  private static SetUp cost(SetUp setUp, int n) {
    return new SetUp(
        setUp.name(),
        setUp.minutesToSetUp(),
        Optional.of(SetUp.Cost.values()[n - 1]),
        setUp.weight());
  }

  private static SetUp weight(SetUp setUp, int n) {
    return new SetUp(
        setUp.name(),
        setUp.minutesToSetUp(),
        setUp.cost(),
        Optional.of(SetUp.Weight.values()[n - 1]));
  }

  private static TrialReading setUp(String text, Trial trial, List<Trial> earlier) {
    List<SetUp> known = TrialWords.known(earlier);
    OptionalInt number = whole(text, Integer.MAX_VALUE);
    if (number.isPresent()) {
      return choice(text, known.size(), n -> trial.with(known.get(n - 1)));
    }
    Optional<SetUp> same = known.stream().filter(s -> s.name().equalsIgnoreCase(text)).findFirst();
    return same.isPresent()
        ? new Taken(trial.with(same.get()))
        : name(text, n -> trial.with(SetUp.named(n)));
  }

  private static TrialReading loan(String text, Trial trial) {
    Optional<Day> day = Day.of(text);
    Optional<Day> begun = Day.of(trial.day());
    if (day.isEmpty() || begun.isPresent() && day.get().compareTo(begun.get()) < 0) {
      return new Refused(
          "Please type a day that is still to come, such as 2027-01-31, or Enter if nothing is on loan.");
    }
    return new Taken(trial.with(new Trial.Place(trial.place().where(), Optional.of(text))));
  }

  private static TrialReading action(String text, Trial trial) {
    if (trial.actionNames().stream().anyMatch(a -> a.equalsIgnoreCase(text))) {
      return new Refused("That action is in the list already.");
    }
    return name(
        text,
        n -> {
          List<Tries> now = new ArrayList<>(trial.actions());
          now.add(Tries.open(n));
          return trial.withActions(now);
        });
  }

  private static TrialReading name(String text, java.util.function.Function<String, Trial> taking) {
    return text.length() > LONGEST_NAME
        ? new Refused("Up to " + LONGEST_NAME + " letters, please.")
        : new Taken(taking.apply(text));
  }

  private static TrialReading choice(
      String text, int most, java.util.function.IntFunction<Trial> taking) {
    OptionalInt number = whole(text, most);
    return number.isPresent() && number.getAsInt() >= 1
        ? new Taken(taking.apply(number.getAsInt()))
        : new Refused("Please type a number from the list.");
  }

  /** A whole number from 0 to this; nothing for anything else. */
  static OptionalInt whole(String text, int most) {
    boolean digits =
        !text.isEmpty() && text.length() <= 6 && text.chars().allMatch(c -> c >= '0' && c <= '9');
    return digits && Integer.parseInt(text) <= most
        ? OptionalInt.of(Integer.parseInt(text))
        : OptionalInt.empty();
  }
}
