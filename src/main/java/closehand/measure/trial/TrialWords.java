package closehand.measure.trial;

import closehand.bank.StopSign;
import closehand.bank.Stops;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The words of the dialogue about a trial. */
public final class TrialWords {
  private TrialWords() {}

  /**
   * How a step is put.
   *
   * @param question one sentence
   * @param choices what can be picked by its number, from 1
   * @param hint what can be typed
   * @param why why it is asked
   */
  public record Put(String question, List<String> choices, String hint, String why) {
    /** Takes a copy. */
    public Put {
      choices = List.copyOf(choices);
    }
  }

  private static final String ZERO_TO_TEN = "Type a number from 0 (none) to 10 (the most).";
  private static final String MAY_SKIP = " Enter leaves it out.";

  /** How to put a step. */
  public static Put of(Step step, Trial trial, List<Trial> earlier, Stops stops) {
    return switch (step.kind()) {
      case PLACE ->
          new Put(
              "Where is this trial?",
              java.util.Arrays.stream(Trial.Where.values()).map(Trial.Where::words).toList(),
              "Type 1 or 2.",
              "Home is where it has to work. Here it is easier to change things.");
      case SET_UP -> setUp(earlier);
      case MINUTES_TO_SET_UP ->
          new Put(
              "How many minutes does it take to set up before you can play?",
              List.of(),
              "Type whole minutes." + MAY_SKIP,
              "If two set-ups do equally well, the one that is quicker to set up is used more.");
      case COST ->
          new Put(
              "What does it cost?",
              java.util.Arrays.stream(SetUp.Cost.values()).map(SetUp.Cost::words).toList(),
              "Type a number." + MAY_SKIP,
              "If two set-ups do equally well, the cheaper one is the better start.");
      case WEIGHT ->
          new Put(
              "What has to be lifted or held?",
              java.util.Arrays.stream(SetUp.Weight.values()).map(SetUp.Weight::words).toList(),
              "Type a number." + MAY_SKIP,
              "If two set-ups do equally well, the lighter one asks less of your body.");
      case LOAN ->
          new Put(
              "Is anything on loan? On which day does it go back?",
              List.of(),
              "Type the day, such as 2027-01-31; Enter if nothing is on loan.",
              "So that it can be given back, or kept longer, in time.");
      case GAME -> again("Which game?", last(earlier).map(t -> t.scene().game()));
      case SCENE -> again("Which scene, level or mode?", last(earlier).map(t -> t.scene().part()));
      case ACTION -> action(step, trial, earlier);
      case PAIN_BEFORE -> feeling("Pain now, before you play?", false);
      case EFFORT_BEFORE -> feeling("How hard is it just to sit ready and hold it?", true);
      case TIREDNESS_BEFORE -> feeling("How tired are you, before you play?", true);
      case PAIN_AFTER_FIVE ->
          new Put(
              "Now play for about 5 minutes. Then: pain?",
              List.of(),
              ZERO_TO_TEN + " s stops at once. Enter if you did not play that long.",
              "Pain that comes early is the sign that counts most. Up by 2, or 7 and more, means stop.");
      case SIGN ->
          new Put(
              "Play on for 10 to 15 minutes in all, or less if your page says so. Did any of these come?",
              java.util.Arrays.stream(StopSign.values()).map(stops::words).toList(),
              "Enter or 0 for none of them; the number of the one that came; s stops at once.",
              "Any one of them ends a trial. Stopping is a result too.");
      case MINUTES ->
          new Put(
              "How many minutes did you play?",
              List.of(),
              "Type whole minutes." + MAY_SKIP,
              "Only trials of about the same length can be compared.");
      case WORKED ->
          new Put(
              trial.actions().get(step.index()).action() + ": how many of ten tries worked?",
              List.of(),
              "Type a number from 0 to 10." + MAY_SKIP,
              "Ten tries of each action, counted the same way with each set-up, compare fairly.");
      case PAIN_AFTER ->
          feeling(
              trial.stopped().isPresent() ? "Pain now, after a rest?" : "Pain now, at the end?",
              false);
      case EFFORT_AFTER -> feeling("How hard was it to play like this?", true);
      case TIREDNESS_AFTER -> feeling("How tired are you now?", true);
      case SATISFACTION ->
          new Put(
              "How satisfied are you with this set-up?",
              List.of(),
              "Type a number from 0 (not at all) to 10 (fully)." + MAY_SKIP,
              "What you want to use counts more than what a count says.");
      case NOTES ->
          new Put(
              "Anything to note? What helped, what was in the way?",
              List.of(),
              "Type it in one line." + MAY_SKIP,
              "In your words. Please write no names.");
    };
  }

  private static Put feeling(String question, boolean maySkip) {
    return new Put(
        question,
        List.of(),
        ZERO_TO_TEN + (maySkip ? MAY_SKIP : ""),
        "Asked before and after, so that a change can be seen.");
  }

  private static Put setUp(List<Trial> earlier) {
    List<SetUp> known = known(earlier);
    return new Put(
        "Which set-up or plan is tried?",
        known.stream().map(SetUp::name).toList(),
        known.isEmpty()
            ? "Type a name for it, such as: side-button mouse, left."
            : "Type its number, or a new name. To compare two fairly, take them in turn: A, B, B, A.",
        "So that trials with the same set-up are put together.");
  }

  private static Put again(String question, Optional<String> before) {
    Optional<String> known = before.filter(b -> !b.isEmpty());
    return new Put(
        known.map(k -> question + " Last time: " + k + ".").orElse(question),
        List.of(),
        known.isPresent() ? "Enter for the same, or type another." : "Type a word or two.",
        "Two set-ups are compared in the same game and the same scene.");
  }

  private static Put action(Step step, Trial trial, List<Trial> earlier) {
    List<String> before = last(earlier).map(Trial::actionNames).orElse(List.of());
    boolean same = step.index() == 0 && !before.isEmpty();
    String so =
        trial.actions().isEmpty() ? "" : " So far: " + String.join(", ", trial.actionNames());
    return new Put(
        same
            ? "Which actions must work? Last time: " + String.join(", ", before) + "."
            : "Must-have action "
                + (step.index() + 1)
                + ", of three to five?"
                + (so.isEmpty() ? "" : so + "."),
        List.of(),
        same
            ? "Enter for the same ones, or type the first of others."
            : step.index() >= Trial.FEWEST_ACTIONS
                ? "Type it, such as: jump. Enter if these are all."
                : "Type it, such as: jump.",
        "The few things without which the game is no game. The same ones in every trial.");
  }

  /** The trial before this one, if there is one. */
  static Optional<Trial> last(List<Trial> earlier) {
    return earlier.isEmpty() ? Optional.empty() : Optional.of(earlier.get(earlier.size() - 1));
  }

  /** Set-ups that were tried before, in the order they came up. */
  static List<SetUp> known(List<Trial> earlier) {
    Map<String, SetUp> known = new LinkedHashMap<>();
    for (Trial trial : earlier) {
      if (!trial.setUp().name().isEmpty()) {
        known.putIfAbsent(trial.setUp().name(), trial.setUp());
      }
    }
    return new ArrayList<>(known.values());
  }
}
