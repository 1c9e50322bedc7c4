package closehand.measure.norms;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * All tables of what is usual.
 *
 * @param means tables of means
 * @param centiles tables of centiles
 * @param thumb how far a thumb may reach
 */
public record Norms(List<MeanTable> means, List<CentileTable> centiles, ThumbReach thumb) {
  /** Younger people are not compared: there are no confirmed tables, and none is borrowed. */
  public static final int LEAST_AGE = 20;

  public Norms {
    means = List.copyOf(means);
    centiles = List.copyOf(centiles);
  }

  /**
   * A strength beside every table that fits; one entry that says so where none does.
   *
   * @param age in years
   * @param kilograms measured, 0 or more
   */
  public List<Comparison> compare(
      Strength strength, Group.Sex sex, Group.Hand hand, int age, double kilograms) {
    List<Comparison> all = new ArrayList<>();
    if (age >= LEAST_AGE) {
      for (MeanTable table : means) {
        if (table.origin().strength() == strength) {
          table.row(sex, hand, age).map(r -> beside(table, r, kilograms)).ifPresent(all::add);
        }
      }
      for (CentileTable table : centiles) {
        if (table.origin().strength() == strength) {
          table.row(sex, hand, age).map(r -> beside(table, r, kilograms)).ifPresent(all::add);
        }
      }
    }
    return all.isEmpty() ? List.of(new Comparison.NoNorm(strength)) : List.copyOf(all);
  }

  private static Comparison beside(MeanTable table, MeanTable.Row row, double kilograms) {
    Unit unit = table.origin().unit();
    double mean = unit.toKilograms(row.mean());
    OptionalDouble deviations = OptionalDouble.empty();
    Optional<String> percent = Optional.empty();
    if (row.deviation().isPresent()) {
      double spread = unit.toKilograms(row.deviation().getAsDouble());
      double z = Bell.deviations(kilograms, mean, spread);
      deviations = OptionalDouble.of(z);
      percent = Optional.of(Bell.words(Bell.percentBelow(z)));
    }
    return new Comparison.Beside(table.origin(), mean, kilograms / mean, deviations, percent);
  }

  private static Comparison beside(CentileTable table, CentileTable.Row row, double kilograms) {
    Unit unit = table.origin().unit();
    double middle = unit.toKilograms(table.median(row));
    double value = Unit.KILOGRAM.to(unit, kilograms);
    int first = table.centiles().get(0);
    int last = table.centiles().get(table.centiles().size() - 1);
    String percent =
        table
            .centile(row, value)
            .map(Bell::words)
            .orElse(value < row.values().get(0) ? "less than " + first : "more than " + last);
    return new Comparison.Beside(
        table.origin(), middle, kilograms / middle, OptionalDouble.empty(), Optional.of(percent));
  }
}
