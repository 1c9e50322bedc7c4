package closehand.measure.norms;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Means of groups, with their spread where it was confirmed.
 *
 * @param origin where it comes from
 * @param rows groups that do not overlap
 */
public record MeanTable(Origin origin, List<Row> rows) {
  public MeanTable {
    rows = List.copyOf(rows);
  }

  /**
   * One group.
   *
   * @param mean in the table's unit
   * @param deviation standard deviation, above 0, where confirmed
   */
  public record Row(Group group, double mean, OptionalDouble deviation) {}

  /** The row for a person; empty where none fits. */
  Optional<Row> row(Group.Sex sex, Group.Hand hand, int age) {
    return rows.stream().filter(r -> r.group.holds(sex, hand, age)).findFirst();
  }
}
