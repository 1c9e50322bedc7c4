package closehand.measure.practice;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * An invented player whose times, misses and tiring are known: whatever practice finds can be held
 * against them.
 */
public final class SimulatedPlayer {
  private static final double USUAL_MILLIS = 650;
  private static final double NOISE = 0.2;

  /**
   * The truth about one input.
   *
   * @param times how much slower than usual, 1 for usual
   * @param missShare 0 to 1
   * @param dropARound how much slower it gets each round, as a share
   */
  public record Truth(double times, double missShare, double dropARound) {}

  /**
   * What the player does at a prompt.
   *
   * @param millis after the prompt
   */
  public record Answer(Signal signal, long millis) {}

  private final Map<String, Truth> truths = new LinkedHashMap<>();
  private final Chance chance;

  /** A player with truths of their own for these inputs. */
  public SimulatedPlayer(Iterable<String> inputs, long seed) {
    chance = new Chance(seed);
    for (String input : inputs) {
      truths.put(
          input,
          new Truth(
              Math.exp(0.25 * chance.normal()),
              0.15 * chance.unit() * chance.unit(),
              Math.max(0, 0.03 + 0.02 * chance.normal())));
    }
  }

  /** With some inputs, one in so many, that hardly fit: slow, often missed, and tiring. */
  public SimulatedPlayer troubled(int oneIn) {
    for (String input : truths.keySet()) {
      if (chance.below(oneIn) == 0) {
        truths.put(
            input,
            new Truth(1.3 + 0.6 * chance.unit(), 0.2 + 0.3 * chance.unit(), 0.1 * chance.unit()));
      }
    }
    return this;
  }

  /** The truth about an input. */
  public Truth truth(String input) {
    return truths.getOrDefault(input, new Truth(1, 0, 0));
  }

  /** What the player presses; now and then a neighbour, or the right one only after a while. */
  public Answer answer(Sheet sheet, Sheet.Job job, int round) {
    Truth truth = truth(job.input());
    Sheet.Target target = sheet.target(job.action());
    double middle = USUAL_MILLIS * truth.times() * Math.pow(1 + truth.dropARound(), round - 1.0);
    long millis = Math.max(150, Math.round(middle * Math.exp(NOISE * chance.normal())));
    if (chance.unit() < truth.missShare()) {
      Optional<Sheet.Target> neighbour =
          sheet.targets().stream().filter(t -> t.place().isBeside(target.place())).findFirst();
      if (neighbour.isPresent() && chance.unit() < 0.7) {
        return new Answer(neighbour.get().signal(), millis);
      }
      return new Answer(target.signal(), Math.round(6 * USUAL_MILLIS + millis));
    }
    return new Answer(target.signal(), millis);
  }

  /** A whole run, from the first question to the last round. */
  public PracticeRun practises(Sheet sheet, int week, long seed) {
    PracticeRun run =
        PracticeRun.of(sheet, week, seed, false, 720).after(new Happening.PainTold(2, 0));
    long now = 1_000;
    while (!run.over()) {
      switch (run.stage()) {
        case READY, RESTING, PAUSED -> {
          now += 60_000;
          run = run.after(new Happening.Begun(now));
        }
        case BETWEEN -> {
          now += run.waitMillis(now);
          run = run.after(new Happening.Elapsed(now));
        }
        case PROMPT -> {
          Answer answer = answer(sheet, run.asked(), run.at().round());
          now += run.at().step() == 1 ? answer.millis() / 2 : answer.millis();
          run = run.after(new Happening.Pressed(answer.signal(), now));
        }
        default -> run = run.after(new Happening.PainTold(2, now));
      }
    }
    return run;
  }
}
