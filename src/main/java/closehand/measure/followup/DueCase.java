package closehand.measure.followup;

import java.util.Comparator;
import java.util.List;

/**
 * What is due in a case.
 *
 * @param name the case's pseudonym
 */
public record DueCase(String name, Due due) {
  /** The earliest first, then by name. */
  public static List<DueCase> inOrder(List<DueCase> all) {
    return all.stream()
        .sorted(
            Comparator.comparing((DueCase d) -> d.due().on())
                .thenComparing(DueCase::name)
                .thenComparing(d -> d.due().what()))
        .toList();
  }
}
