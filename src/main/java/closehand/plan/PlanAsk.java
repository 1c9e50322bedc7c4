package closehand.plan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What somebody wants planned.
 *
 * @param approaches only these approaches; those suggested for the game when empty
 * @param mostParts the most separate parts; the bank's usual number when empty
 * @param wishes what must sit where
 */
public record PlanAsk(Optional<List<String>> approaches, OptionalInt mostParts, List<Wish> wishes) {
  /** Nothing special. */
  public static final PlanAsk USUAL = new PlanAsk(Optional.empty(), OptionalInt.empty(), List.of());

  public PlanAsk {
    approaches = approaches.map(List::copyOf);
    wishes = List.copyOf(wishes);
  }

  /**
   * An action that somebody wants on an input; it wins over the search.
   *
   * @param action id of an action or of one of its parts
   * @param input id of an input, alone or after its approach and a stroke
   */
  public record Wish(String action, String input) {}

  /** The same for these approaches alone. */
  public PlanAsk only(List<String> these) {
    return new PlanAsk(Optional.of(these), mostParts, wishes);
  }

  /** The same with these wishes. */
  public PlanAsk with(List<Wish> these) {
    return new PlanAsk(approaches, mostParts, these);
  }
}
