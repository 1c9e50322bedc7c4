package closehand.strain;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The Cumulative Strain Index: everything one hand does in a day (Garg, Moore, Kapellusch 2017b).
 *
 * <p>Each game's composite index, freed of its hours, counts for what its hours add to the hours
 * multiplier. The games follow in falling order of that hour-free index, so that a longer day never
 * counts less; the published order goes by the composite index, and gives the same for most days.
 */
public final class CumulativeStrain {
  private CumulativeStrain() {}

  /**
   * One game in a day.
   *
   * @param presses what one hand does in it
   * @param hoursPerDay hours a day with it, above 0
   */
  public record GameTime(List<Exertion> presses, double hoursPerDay) {
    public GameTime {
      presses = List.copyOf(presses);
    }

    private double withoutHours() {
      return CompositeStrain.withoutHours(presses);
    }
  }

  /** The figure for one hand over the games of a day. */
  public static Load of(List<GameTime> day) {
    Method method = Method.CUMULATIVE_STRAIN_INDEX;
    List<GameTime> games = day.stream().filter(g -> !g.presses().isEmpty()).toList();
    if (games.isEmpty()) {
      return Load.outside(method, Flag.NOTHING_TO_DO);
    }
    List<Flag> flags = new ArrayList<>();
    for (GameTime game : games) {
      Load one = CompositeStrain.of(game.presses(), game.hoursPerDay());
      if (one instanceof Load.Outside outside) {
        return new Load.Outside(method, outside.flags());
      }
      one.flags().stream().filter(f -> !flags.contains(f)).forEach(flags::add);
    }
    if (games.stream().mapToDouble(GameTime::hoursPerDay).sum() > PlayTime.DAY) {
      return Load.outside(method, Flag.MORE_THAN_A_DAY);
    }
    double value = index(games);
    return new Load.Figure(
        method,
        value,
        Band.of(value, RevisedStrainIndex.MIDDLE_LINE, RevisedStrainIndex.UPPER_LINE),
        drivers(games),
        flags);
  }

  /** The index; 0 for an empty day. */
  public static double index(List<GameTime> day) {
    List<GameTime> sorted = new ArrayList<>(day);
    sorted.sort(
        Comparator.comparingDouble(GameTime::withoutHours)
            .reversed()
            .thenComparingDouble(GameTime::hoursPerDay));
    double sum = 0;
    double hours = 0;
    for (GameTime game : sorted) {
      double before = hours == 0 ? 0 : RevisedStrainIndex.hours(hours);
      hours += game.hoursPerDay();
      sum += game.withoutHours() * (RevisedStrainIndex.hours(hours) - before);
    }
    return sum;
  }

  /** The hours of the whole day, and what drives each game, each body part once. */
  private static List<Driver> drivers(List<GameTime> games) {
    double hours = games.stream().mapToDouble(GameTime::hoursPerDay).sum();
    Map<String, Driver> byPart = new TreeMap<>();
    for (GameTime game : games) {
      CompositeStrain.of(game.presses(), game.hoursPerDay()).figure().stream()
          .flatMap(f -> f.drivers().stream())
          .forEach(d -> byPart.merge(d.effector(), d, CumulativeStrain::larger));
    }
    List<Driver> all = new ArrayList<>(byPart.values());
    double ofDay = RevisedStrainIndex.hours(hours) / RevisedStrainIndex.hours(2);
    all.add(new Driver("", Factor.HOURS, ofDay));
    return Driver.biggest(all);
  }

  private static Driver larger(Driver one, Driver other) {
    return one.times() >= other.times() ? one : other;
  }
}
