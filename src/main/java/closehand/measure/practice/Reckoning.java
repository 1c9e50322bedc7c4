package closehand.measure.practice;

import closehand.measure.practice.Findings.About;
import closehand.measure.statistics.Sample;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * Works out what the tries of a run tell.
 *
 * <p>Logarithms of times are compared, since reaction times are skewed. What few presses seem to
 * tell of one input is drawn towards all inputs by as much as chance would explain ({@link Drawn}).
 * Misses are drawn towards the person's own share by {@link #MISS_WEIGHT} presses (our own number).
 * A key that came only after {@link #LATE_TIMES} times the usual was missed at first.
 */
public final class Reckoning {
  /** From how many times the person's own middle on a press counts as missed at first. */
  static final double LATE_TIMES = 3;

  static final double MISS_WEIGHT = 10;

  /** Inputs differ by a twentieth at least, and slow down unlike by a fiftieth a round. */
  private static final double LEAST_SPREAD = 0.05;

  private static final double LEAST_DROP_SPREAD = 0.02;
  private static final double USUAL_DEVIATION = 0.25;
  private static final int LEAST_FREEDOM = 8;

  private final Map<String, List<Try>> byInput = new LinkedHashMap<>();
  private final Map<String, Points> points = new LinkedHashMap<>();
  private final int rounds;
  private final double late;

  private Reckoning(List<Try> tries) {
    for (Try one : tries) {
      if (one.round() > 0) {
        byInput.computeIfAbsent(one.input(), i -> new ArrayList<>()).add(one);
      }
    }
    rounds = (int) tries.stream().mapToInt(Try::round).filter(r -> r > 0).distinct().count();
    double usual = usual(tries);
    late = usual > 0 ? LATE_TIMES * usual : Double.MAX_VALUE;
    byInput.forEach((input, some) -> points.put(input, Points.of(some, late)));
  }

  /** What these tries tell; {@link Findings#NOTHING} where no round counts. */
  public static Findings of(List<Try> tries) {
    Reckoning reckoning = new Reckoning(tries);
    return reckoning.byInput.isEmpty() ? Findings.NOTHING : reckoning.findings();
  }

  /**
   * What several runs tell together. Each is brought to the same usual time first, since a day or
   * another keyboard makes everything slower or quicker alike.
   */
  public static Findings together(List<List<Try>> runs) {
    List<Double> usual = runs.stream().map(Reckoning::usual).filter(u -> u > 0).toList();
    double common = usual.isEmpty() ? 1 : new Sample(usual).mean();
    List<Try> all = new ArrayList<>();
    for (List<Try> run : runs) {
      double own = usual(run);
      run.forEach(t -> all.add(own > 0 ? t.times(common / own) : t));
    }
    return of(all);
  }

  private static double usual(List<Try> run) {
    List<Double> times =
        run.stream()
            .filter(t -> t.round() > 0 && t.millis().isPresent())
            .map(t -> (double) t.millis().getAsLong())
            .toList();
    return times.isEmpty() ? 0 : new Sample(times).median();
  }

  private Findings findings() {
    double slope = commonSlope();
    double variance = variance(slope);
    Map<String, About> levels = new LinkedHashMap<>();
    Map<String, About> slopes = new LinkedHashMap<>();
    points.forEach(
        (input, p) -> {
          if (p.size() > 0) {
            levels.put(input, new About(p.mean(), Math.sqrt(variance / p.size())));
          }
          if (p.spreadOfRounds() > 0) {
            slopes.put(input, new About(p.slope(), Math.sqrt(variance / p.spreadOfRounds())));
          }
        });
    Drawn level = Drawn.of(levels, LEAST_SPREAD);
    Drawn drop = Drawn.of(slopes, LEAST_DROP_SPREAD);
    double usual = levels.isEmpty() ? 0 : Math.exp(level.middle());
    double misses = byInput.values().stream().flatMap(List::stream).filter(this::missed).count();
    double prompts = byInput.values().stream().mapToInt(List::size).sum();
    double share = (misses + 0.5) / (prompts + 1);
    List<Findings.OfInput> inputs =
        byInput.keySet().stream().map(i -> of(i, level, drop, usual, share)).toList();
    return new Findings(rounds, usual, share, grown(drop.middle()), inputs);
  }

  private boolean missed(Try one) {
    return !one.hit() || one.millis().orElse(0) > late;
  }

  private double grown(double slope) {
    return Math.exp(slope * Math.max(0, rounds - 1)) - 1;
  }

  private Findings.OfInput of(String input, Drawn level, Drawn drop, double usual, double share) {
    List<Try> tries = byInput.getOrDefault(input, List.of());
    About at = level.of(input);
    double times = Math.exp(at.value() - level.middle());
    About slope = drop.of(input);
    int misses = (int) tries.stream().filter(this::missed).count();
    double missShare = (misses + MISS_WEIGHT * share) / (tries.size() + MISS_WEIGHT);
    double weight = tries.size() + MISS_WEIGHT;
    // Half a press is added, since few presses without a miss prove little.
    double missError = Math.sqrt((missShare * (1 - missShare) + 0.5 / weight) / (weight + 1));
    double grown = grown(slope.value());
    return new Findings.OfInput(
        input,
        tries.size(),
        points.getOrDefault(input, Points.NONE).size(),
        misses,
        (int) tries.stream().filter(Try::beside).count(),
        new About(usual * (times - 1), usual * times * at.error()),
        new About(missShare, missError),
        new About(grown, (1 + grown) * slope.error() * Math.max(0, rounds - 1)),
        (int) tries.stream().filter(t -> t.marks().held()).count(),
        (int) tries.stream().filter(t -> t.marks().bounced()).count(),
        (int) tries.stream().filter(t -> t.marks().along()).count());
  }

  /** The slope over rounds that all inputs share, by least squares around each input's mean. */
  private double commonSlope() {
    double xy = points.values().stream().mapToDouble(Points::crossed).sum();
    double xx = points.values().stream().mapToDouble(Points::spreadOfRounds).sum();
    return xx == 0 ? 0 : xy / xx;
  }

  /** The variance of one press around its input's mean and the common slope. */
  private double variance(double slope) {
    double squares = points.values().stream().mapToDouble(p -> p.squares(slope)).sum();
    int freedom = points.values().stream().mapToInt(p -> Math.max(0, p.size() - 1)).sum() - 1;
    OptionalDouble own =
        freedom < LEAST_FREEDOM ? OptionalDouble.empty() : OptionalDouble.of(squares / freedom);
    return own.orElse(USUAL_DEVIATION * USUAL_DEVIATION);
  }

  /** Rounds and logarithms of times of one input. */
  private record Points(List<Double> rounds, List<Double> logs, double middle, double mean) {
    static final Points NONE = new Points(List.of(), List.of(), 0, 0);

    static Points of(List<Try> tries, double late) {
      List<Double> rounds = new ArrayList<>();
      List<Double> logs = new ArrayList<>();
      for (Try one : tries) {
        if (one.hit() && one.millis().isPresent() && one.millis().getAsLong() <= late) {
          rounds.add((double) one.round());
          logs.add(Math.log((double) Math.max(1, one.millis().getAsLong())));
        }
      }
      return new Points(rounds, logs, mean(rounds), mean(logs));
    }

    private static double mean(List<Double> some) {
      return some.isEmpty() ? 0 : new Sample(some).mean();
    }

    int size() {
      return logs.size();
    }

    double spreadOfRounds() {
      return rounds.stream().mapToDouble(r -> (r - middle) * (r - middle)).sum();
    }

    double crossed() {
      double sum = 0;
      for (int i = 0; i < size(); i++) {
        sum += (rounds.get(i) - middle) * (logs.get(i) - mean);
      }
      return sum;
    }

    double slope() {
      return crossed() / spreadOfRounds();
    }

    double squares(double slope) {
      double sum = 0;
      for (int i = 0; i < size(); i++) {
        double off = logs.get(i) - mean - slope * (rounds.get(i) - middle);
        sum += off * off;
      }
      return sum;
    }
  }
}
