package closehand.measure.practice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A practice run as it stands: five short rounds of prompts with rests between them.
 *
 * <p>There is no time limit on a prompt. Between two prompts any key pauses. A round that was
 * disturbed is thrown away whole, and that is said.
 *
 * @param sheet what is practised
 * @param rounds the prompts
 * @param stage what is going on
 * @param at where in the rounds
 * @param moments when things happened
 * @param counted tries of finished rounds
 * @param going tries of the round that is going on
 * @param body how the player is
 * @param stop why it ended early, where it did
 * @param said what came of the last thing that happened, as sentences; may be empty
 */
public record PracticeRun(
    Sheet sheet,
    List<List<Cue>> rounds,
    Stage stage,
    At at,
    Moments moments,
    List<Try> counted,
    List<Try> going,
    Body body,
    Optional<StopReason> stop,
    String said) {
  /** Copies the lists. */
  public PracticeRun {
    rounds = rounds.stream().map(List::copyOf).toList();
    counted = List.copyOf(counted);
    going = List.copyOf(going);
  }

  /** What is going on. */
  public enum Stage {
    /** Asked how much it hurts: before the first round and after each. */
    ASKING,
    /** Waiting for the player to begin a round. */
    READY,
    /** Nothing is asked; the next prompt comes by itself. */
    BETWEEN,
    /** A prompt is shown. */
    PROMPT,
    /** A rest after a round. */
    RESTING,
    /** The player paused in a round. */
    PAUSED,
    /** Ended early. */
    STOPPED,
    /** All rounds are done. */
    DONE
  }

  /**
   * Where in the rounds.
   *
   * @param round from 0
   * @param cue from 0
   * @param step 0, or 1 for the second of two
   * @param again prompts of this round put at its end once more
   */
  public record At(int round, int cue, int step, int again) {}

  /**
   * When things happened, in milliseconds.
   *
   * @param due when the next prompt comes, or the rest is long enough
   * @param shown when the prompt was shown
   * @param begun when this round began, or went on
   * @param worked timed work so far, this round not included
   * @param lastAt when the last key arrived
   * @param last that key
   * @param repeats how often it has come again by itself
   */
  public record Moments(
      long due,
      long shown,
      long begun,
      long worked,
      long lastAt,
      Optional<Signal> last,
      int repeats) {
    /** Timed work since this round began or went on, as far as keys tell. */
    long going() {
      return begun > 0 ? Math.max(0, lastAt - begun) : 0;
    }

    /** No round is going on; what was worked in it counts. */
    Moments ended() {
      return new Moments(0, 0, 0, worked + going(), lastAt, last, repeats);
    }

    static final Moments NONE = new Moments(0, 0, 0, 0, Long.MIN_VALUE / 2, Optional.empty(), 0);
  }

  /**
   * How the player is.
   *
   * @param painBefore 0 to 10, once told
   * @param tired whether tiredness is 5 or more, so that rests are longer
   * @param lost rounds in a row that were thrown away
   * @param seed for the gaps between prompts
   * @param mostMillis how much timed work is left for the day
   */
  public record Body(OptionalInt painBefore, boolean tired, int lost, long seed, long mostMillis) {
    Body lost(int times) {
      return new Body(painBefore, tired, times, seed, mostMillis);
    }
  }

  /**
   * A run before it begins.
   *
   * @param week weeks with this plan, from 1
   * @param tired whether tiredness was told as 5 or more
   * @param mostSeconds how much timed work is left for the day
   */
  public static PracticeRun of(Sheet sheet, int week, long seed, boolean tired, int mostSeconds) {
    return new PracticeRun(
        sheet,
        Prompts.of(sheet, week, seed),
        Stage.ASKING,
        new At(0, 0, 0, 0),
        Moments.NONE,
        List.of(),
        List.of(),
        new Body(OptionalInt.empty(), tired, 0, seed, mostSeconds * 1_000L),
        Optional.empty(),
        "");
  }

  /** The run after something happened. */
  public PracticeRun after(Happening happening) {
    return Practising.update(this, happening);
  }

  /** How long until something is due by itself; below 0 where nothing is. */
  public long waitMillis(long now) {
    return stage == Stage.BETWEEN ? Math.max(0, moments.due() - now) : -1;
  }

  /** Timed work so far, in seconds, the round that is going on and rounds thrown away with it. */
  public int timedSeconds() {
    return (int) Math.ceil((moments.worked() + moments.going()) / 1_000.0);
  }

  /** Whether no more is asked. */
  public boolean over() {
    return stage == Stage.STOPPED || stage == Stage.DONE;
  }

  /** The prompt of the moment; only while there is one to come. */
  public Cue cue() {
    return rounds.get(at.round()).get(at.cue());
  }

  /** The action asked for now; only while a prompt is shown. */
  public Sheet.Job asked() {
    return sheet.job(cue().actions().get(at.step()));
  }

  PracticeRun stage(Stage next) {
    return new PracticeRun(sheet, rounds, next, at, moments, counted, going, body, stop, said);
  }

  PracticeRun at(At next) {
    return new PracticeRun(sheet, rounds, stage, next, moments, counted, going, body, stop, said);
  }

  PracticeRun with(Moments next) {
    return new PracticeRun(sheet, rounds, stage, at, next, counted, going, body, stop, said);
  }

  PracticeRun with(Body next) {
    return new PracticeRun(sheet, rounds, stage, at, moments, counted, going, next, stop, said);
  }

  PracticeRun tries(List<Try> all, List<Try> now) {
    return new PracticeRun(sheet, rounds, stage, at, moments, all, now, body, stop, said);
  }

  PracticeRun saying(String next) {
    return new PracticeRun(sheet, rounds, stage, at, moments, counted, going, body, stop, next);
  }

  PracticeRun stopped(StopReason reason) {
    return new PracticeRun(
        sheet,
        rounds,
        Stage.STOPPED,
        at,
        moments,
        counted,
        List.of(),
        body,
        Optional.of(reason),
        "");
  }

  /** With the prompt of the moment once more at the end of its round. */
  PracticeRun askedAgain() {
    List<List<Cue>> next = new ArrayList<>(rounds);
    List<Cue> round = new ArrayList<>(rounds.get(at.round()));
    round.add(cue());
    next.set(at.round(), round);
    return new PracticeRun(sheet, next, stage, at, moments, counted, going, body, stop, said);
  }
}
