package closehand.measure.norms;

import java.util.List;
import java.util.Optional;

/**
 * Centiles of groups.
 *
 * @param origin where it comes from
 * @param centiles which ones, rising, each from 1 to 99
 * @param rows groups that do not overlap
 */
public record CentileTable(Origin origin, List<Integer> centiles, List<Row> rows) {
  public CentileTable {
    centiles = List.copyOf(centiles);
    rows = List.copyOf(rows);
  }

  /**
   * One group.
   *
   * @param values at each centile of the table, rising, in its unit
   */
  public record Row(Group group, List<Double> values) {
    public Row {
      values = List.copyOf(values);
    }
  }

  /** The row for a person; empty where none fits. */
  Optional<Row> row(Group.Sex sex, Group.Hand hand, int age) {
    return rows.stream().filter(r -> r.group.holds(sex, hand, age)).findFirst();
  }

  /** The value that half of the group lies below. */
  double median(Row row) {
    return row.values().get(centiles.indexOf(50));
  }

  /**
   * The centile of a value, along straight lines between the printed ones.
   *
   * @return empty below the first or above the last printed one
   */
  public Optional<Double> centile(Row row, double value) {
    List<Double> values = row.values();
    int last = values.size() - 1;
    if (value < values.get(0) || value > values.get(last)) {
      return Optional.empty();
    }
    int above = 1;
    while (above < last && value > values.get(above)) {
      above++;
    }
    double part = (value - values.get(above - 1)) / (values.get(above) - values.get(above - 1));
    int from = centiles.get(above - 1);
    return Optional.of(from + part * (centiles.get(above) - from));
  }
}
