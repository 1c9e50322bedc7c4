package closehand.measure.trial;

import closehand.bank.StopSign;
import closehand.bank.Stops;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The dialogue about one trial: a question, an answer, and what is to be said about it. Every state
 * can be kept, and a trial that was kept is gone on with at its first open question.
 *
 * @param trial as it stands
 * @param earlier trials before it, in order
 * @param passed steps that were left out in this sitting
 * @param said what is to be said before the next question, whole sentences
 * @param stops how the stop signs are put
 * @param before the state before the last answer; none after a stop, which is not taken back
 */
public record TrialDialogue(
    Trial trial,
    List<Trial> earlier,
    Set<Step> passed,
    List<String> said,
    Stops stops,
    Optional<TrialDialogue> before) {
  private static final int RISE_THAT_STOPS =
      (int) closehand.interview.WellKnown.PAIN_RISE_THAT_STOPS;
  private static final int PAIN_THAT_STOPS = (int) closehand.interview.WellKnown.PAIN_THAT_STOPS;

  /** Takes copies. */
  public TrialDialogue {
    earlier = List.copyOf(earlier);
    passed = Set.copyOf(passed);
    said = List.copyOf(said);
  }

  /** A new trial, or one that is gone on with. */
  public static TrialDialogue on(Trial trial, List<Trial> earlier, Stops stops) {
    TrialDialogue begun =
        new TrialDialogue(trial, earlier, Set.of(), List.of(), stops, Optional.empty());
    boolean wish = trial.stopped().map(s -> !s.isFelt()).orElse(true);
    return wish && begun.painStops() ? begun.ending(trial, StopSign.PAIN) : begun;
  }

  /** The next open step; nothing when all was asked. */
  public Optional<Step> step() {
    return trial.done()
        ? Optional.empty()
        : TrialSteps.of(trial, earlier).stream()
            .filter(s -> !passed.contains(s) && !TrialSteps.isAnswered(s, trial))
            .findFirst();
  }

  /** How the next step is put. */
  public Optional<TrialWords.Put> put() {
    return step().map(s -> TrialWords.of(s, trial, earlier, stops));
  }

  /** After a line was typed at the next step. */
  public TrialDialogue answered(String typed) {
    Optional<Step> step = step();
    if (step.isEmpty()) {
      return this;
    }
    TrialReading reading = TrialReading.of(step.get(), typed, trial, earlier);
    if (reading instanceof TrialReading.Refused refused) {
      return saying(List.of(refused.sentence()));
    }
    Set<Step> now = new HashSet<>(passed);
    Trial next = trial;
    if (reading instanceof TrialReading.Taken taken) {
      next = taken.trial();
      if (next.setUp() != trial.setUp() && stoppedToday(next.setUp().name())) {
        return saying(List.of("That set-up was stopped today. Please leave it for another day."));
      }
      if (step.get().kind() == Step.Kind.ACTION
          && next.actions().size() > trial.actions().size() + 1) {
        now.add(new Step(Step.Kind.ACTION, next.actions().size()));
      }
    } else {
      now.add(step.get());
    }
    return new TrialDialogue(next, earlier, now, List.of(), stops, Optional.of(this)).checked();
  }

  /** The player stops, at whatever step. */
  public TrialDialogue stopped(StopSign sign) {
    return trial.stopped().isPresent() ? this : ending(trial, sign);
  }

  /** The step before; the same where there is none. */
  public TrialDialogue back() {
    return before
        .map(b -> b.saying(List.of()))
        .orElseGet(() -> saying(List.of("There is no question before this one.")));
  }

  private TrialDialogue saying(List<String> sentences) {
    return new TrialDialogue(trial, earlier, passed, sentences, stops, before);
  }

  private boolean stoppedToday(String name) {
    return earlier.stream()
        .anyMatch(
            t ->
                t.day().equals(trial.day())
                    && t.stopped().isPresent()
                    && t.setUp().name().equals(name));
  }

  /** Pain that is high, or up, ends the trial; a sign that was named does too. */
  private TrialDialogue checked() {
    boolean fresh = before.flatMap(b -> b.trial.stopped()).isEmpty();
    if (fresh && trial.stopped().isPresent()) {
      return ending(trial, trial.stopped().get());
    }
    if (fresh && painStops()) {
      return ending(trial, StopSign.PAIN);
    }
    if (!fresh && before.map(b -> !b.painStops()).orElse(false) && painStops()) {
      return painAfterStop();
    }
    return step().isEmpty()
        ? new TrialDialogue(
            trial.ended(trial.stopped(), true), earlier, passed, said, stops, before)
        : this;
  }

  /**
   * Pain after the rest makes a mere wish to stop a stop for pain; other signs stay what they are.
   */
  private TrialDialogue painAfterStop() {
    StopSign sign = trial.stopped().orElse(StopSign.PAIN);
    if (!sign.isFelt()) {
      return ending(trial, StopSign.PAIN);
    }
    TrialDialogue same = ending(trial, sign);
    return sign.isUrgent() ? same : same.saying(StopWords.of(StopSign.PAIN, stops));
  }

  private boolean painStops() {
    java.util.OptionalInt first = trial.before().pain();
    return java.util.stream.Stream.of(first, trial.painAfterFive(), trial.after().pain())
        .filter(java.util.OptionalInt::isPresent)
        .mapToInt(java.util.OptionalInt::getAsInt)
        .anyMatch(
            p ->
                p >= PAIN_THAT_STOPS
                    || first.isPresent() && p - first.getAsInt() >= RISE_THAT_STOPS);
  }

  private TrialDialogue ending(Trial as, StopSign sign) {
    Trial stopped = as.ended(Optional.of(sign), false);
    TrialDialogue rest =
        new TrialDialogue(
            stopped, earlier, passed, StopWords.of(sign, stops), stops, Optional.empty());
    return rest.step().isEmpty()
        ? new TrialDialogue(
            stopped.ended(Optional.of(sign), true),
            earlier,
            passed,
            StopWords.of(sign, stops),
            stops,
            Optional.empty())
        : rest;
  }
}
