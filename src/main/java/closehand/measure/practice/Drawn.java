package closehand.measure.practice;

import closehand.measure.practice.Findings.About;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Several uncertain numbers of one kind, each drawn towards their common middle by as much as
 * chance explains. How much they truly differ is estimated by the moments (DerSimonian and Laird
 * 1986, "Meta-analysis in clinical trials", equation for the between-study variance).
 */
final class Drawn {
  private final double middle;
  private final double spread;
  private final Map<String, About> drawn;

  private Drawn(double middle, double spread, Map<String, About> drawn) {
    this.middle = middle;
    this.spread = spread;
    this.drawn = drawn;
  }

  /**
   * Draws numbers together.
   *
   * @param all each with its error, above 0
   * @param leastSpread they differ by this standard deviation at least
   */
  static Drawn of(Map<String, About> all, double leastSpread) {
    double between = Math.max(leastSpread * leastSpread, between(all));
    double weights = 0;
    double sum = 0;
    for (About one : all.values()) {
      double weight = 1 / (one.error() * one.error() + between);
      weights += weight;
      sum += weight * one.value();
    }
    double middle = weights == 0 ? 0 : sum / weights;
    double ofMiddle = weights == 0 ? 0 : 1 / weights;
    Map<String, About> drawn = new LinkedHashMap<>();
    all.forEach(
        (id, one) -> {
          double chance = one.error() * one.error();
          double trust = between / (between + chance);
          double error = trust * chance + (1 - trust) * (1 - trust) * ofMiddle;
          double value = middle + trust * (one.value() - middle);
          drawn.put(id, new About(value, Math.sqrt(error)));
        });
    return new Drawn(middle, Math.sqrt(between), drawn);
  }

  private static double between(Map<String, About> all) {
    double weights = 0;
    double squared = 0;
    double sum = 0;
    for (About one : all.values()) {
      double weight = 1 / (one.error() * one.error());
      weights += weight;
      squared += weight * weight;
      sum += weight * one.value();
    }
    double off = 0;
    for (About one : all.values()) {
      double away = one.value() - sum / weights;
      off += away * away / (one.error() * one.error());
    }
    double scale = weights - squared / weights;
    return all.size() < 2 || scale <= 0 ? 0 : Math.max(0, (off - (all.size() - 1)) / scale);
  }

  double middle() {
    return middle;
  }

  /** One number; the middle, as uncertain as they differ, where nothing is known of it. */
  About of(String id) {
    About known = drawn.get(id);
    return known == null ? new About(middle, spread) : known;
  }
}
