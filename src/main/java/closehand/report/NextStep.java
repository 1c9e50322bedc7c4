package closehand.report;

import java.util.List;
import java.util.Optional;

/**
 * What to ask next, in words.
 *
 * @param question the id of the question; empty when enough is known
 * @param lines why, or that enough is known, ready to print
 */
public record NextStep(Optional<String> question, List<String> lines) {
  public NextStep {
    lines = List.copyOf(lines);
  }
}
