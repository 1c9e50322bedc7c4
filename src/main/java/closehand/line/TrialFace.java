package closehand.line;

import closehand.bank.StopSign;
import closehand.measure.trial.Trial;
import closehand.measure.trial.TrialDialogue;
import closehand.measure.trial.TrialWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

/**
 * Leads through a trial line by line, and keeps it after every answer. Nothing is timed; {@code s}
 * stops at any question.
 */
public final class TrialFace {
  private final Console console;
  private final Function<Trial, List<String>> keep;
  private TrialDialogue dialogue;

  /** How a run ended. */
  public enum Ending {
    /** All was asked. */
    FINISHED,
    /** The person left; everything is kept. */
    LEFT,
    /** The input ended before the questions did. */
    INPUT_ENDED,
    /** A line of a script could not be followed. */
    NOT_UNDERSTOOD
  }

  /**
   * A face over a trial.
   *
   * @param keep keeps it as it stands; gives what went wrong, in plain sentences
   */
  public TrialFace(Console console, TrialDialogue dialogue, Function<Trial, List<String>> keep) {
    this.console = console;
    this.dialogue = dialogue;
    this.keep = keep;
  }

  /** The trial as it stands. */
  public Trial trial() {
    return dialogue.trial();
  }

  /** Runs until all was asked or the person leaves. */
  public Ending run() {
    console.say(
        "A trial, one question at a time. You lead; s stops at any time, and so does any line that begins with stop or pain; nobody asks why. ? says why something is"
            + " asked, b goes back, q leaves and keeps everything; - alone is the same as Enter.");
    console.say(
        "Agree first on a word or a sign that means stop. Have a phone or call button in reach, and somebody who"
            + " knows.");
    Optional<Ending> unwilling = consent();
    if (unwilling.isPresent()) {
      return unwilling.get();
    }
    sayWhatIsToBeSaid();
    while (true) {
      Optional<TrialWords.Put> put = dialogue.put();
      if (put.isEmpty()) {
        return Ending.FINISHED;
      }
      say(put.get());
      Optional<String> line = console.ask("> ");
      if (line.isEmpty()) {
        return Ending.INPUT_ENDED;
      }
      Optional<Ending> ending = follow(line.get().strip(), put.get());
      if (ending.isPresent()) {
        return ending.get();
      }
    }
  }

  /** Asked before every trial, also before one that is gone on with. */
  private Optional<Ending> consent() {
    while (true) {
      console.gap();
      console.say("Are you happy to try something now? y or n.");
      Optional<String> line = console.ask("> ").map(l -> l.strip().toLowerCase(Locale.ROOT));
      if (line.isEmpty()) {
        return Optional.of(Ending.INPUT_ENDED);
      }
      if (line.get().equals("y") || line.get().equals("yes")) {
        return Optional.empty();
      }
      if (List.of("n", "no", "q", "s").contains(line.get()) || StopTyped.in(line.get())) {
        console.say("Not now is fine.");
        return Optional.of(Ending.LEFT);
      }
      if (console.scripted()) {
        return notUnderstood();
      }
    }
  }

  private Optional<Ending> notUnderstood() {
    console.say("Line " + console.lineNumber() + " of the answers could not be followed.");
    return Optional.of(Ending.NOT_UNDERSTOOD);
  }

  private void say(TrialWords.Put put) {
    console.gap();
    console.say(put.question());
    for (int i = 0; i < put.choices().size(); i++) {
      console.item(Integer.toString(i + 1), put.choices().get(i));
    }
    console.say(put.hint());
  }

  private Optional<Ending> follow(String typed, TrialWords.Put put) {
    if (typed.equals("?") || typed.equals("h")) {
      console.say("Why: " + put.why());
      console.say("s stops, b goes back, q leaves and keeps everything.");
      return Optional.empty();
    }
    if (typed.equals("q")) {
      return Optional.of(Ending.LEFT);
    }
    if (typed.equals("b")) {
      return take(dialogue.back(), false);
    }
    if (stops(typed)) {
      return stop(typed);
    }
    // A script passes over blank lines, so - stands for Enter there and everywhere.
    return take(dialogue.answered(typed.equals("-") ? "" : typed), true);
  }

  private void sayWhatIsToBeSaid() {
    if (!dialogue.said().isEmpty()) {
      console.gap();
      dialogue.said().forEach(console::say);
    }
  }

  /** After a stop, words that begin like one are the player's own again. */
  private boolean stops(String typed) {
    boolean letter = typed.matches("(?i)s( +[0-9]+)?|p");
    return letter || StopTyped.in(typed) && trial().stopped().isEmpty();
  }

  /** Stops with the sign whose number stands in the line, or asks which one it was. */
  private Optional<Ending> stop(String typed) {
    if (trial().stopped().isPresent()) {
      console.say("It is stopped already. Only this is still asked.");
      return Optional.empty();
    }
    for (StopSign sign : StopSign.values()) {
      if (typed.matches("(?i)(s|stop) +" + (sign.ordinal() + 1))) {
        return take(dialogue.stopped(sign), false);
      }
    }
    Optional<StopSign> sign = which(typed);
    if (sign.isPresent()) {
      return take(dialogue.stopped(sign.get()), false);
    }
    console.say("Going on. Nothing was taken from that line.");
    return Optional.empty();
  }

  private Optional<StopSign> which(String typed) {
    console.gap();
    console.say("Stop, let go and rest. What came?");
    List<Optional<StopSign>> signs = new ArrayList<>();
    for (StopSign sign : StopSign.values()) {
      signs.add(Optional.of(sign));
    }
    signs.add(Optional.empty());
    Optional<StopSign> usual = Optional.of(StopTyped.ofPain(typed) ? StopSign.PAIN : StopSign.WISH);
    return StopTyped.which(
        console, usual, signs, s -> s.map(dialogue.stops()::words).orElse("It was a slip: go on"));
  }

  private Optional<Ending> take(TrialDialogue next, boolean answer) {
    boolean refused = answer && next.trial().equals(dialogue.trial()) && !next.said().isEmpty();
    dialogue = next;
    if (!refused) {
      keep.apply(dialogue.trial()).forEach(console::say);
    }
    sayWhatIsToBeSaid();
    if (refused && console.scripted()) {
      return notUnderstood();
    }
    return Optional.empty();
  }
}
