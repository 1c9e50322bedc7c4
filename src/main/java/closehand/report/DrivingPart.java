package closehand.report;

import closehand.bank.Approach;
import java.util.Map;
import java.util.Set;

/**
 * The part of the body that drives the player's powered chair: ideas that only this part could work
 * say so, since driving comes first (common practice).
 */
final class DrivingPart {
  private static final String DRIVES_WITH = "chair.drive";

  /** The body parts, without their side, that the answer about driving speaks of. */
  private static final Map<String, Set<String>> PARTS =
      Map.of(
          "hand", Set.of("T", "I", "M", "R", "L", "hand", "forearm", "elbow"),
          "foot", Set.of("foot", "knee"),
          "head", Set.of("head", "cheek", "chin", "brow", "jaw"),
          "chin", Set.of("chin", "cheek", "head", "jaw"),
          "breath", Set.of("breath"));

  private DrivingPart() {}

  /** One sentence in full. */
  static String sentence(PageInput input, Approach approach) {
    return sentence(input, approach, false);
  }

  /**
   * One sentence; empty for an idea that other parts can work, or where nobody drives with it.
   *
   * @param brief whether the caution about the chair says the rest
   */
  static String sentence(PageInput input, Approach approach, boolean brief) {
    for (Map.Entry<String, Set<String>> part : PARTS.entrySet()) {
      if (input.facts().is(DRIVES_WITH, part.getKey()) && onlyBy(part.getValue(), approach)) {
        if (brief && input.warns("C-CHAIR")) {
          return part.getKey().equals("hand")
              ? "Not with the hand you drive with."
              : "You drive with your "
                  + part.getKey()
                  + ": only with a yes from your chair provider and your health team.";
        }
        return part.getKey().equals("hand")
            ? "You drive with a hand: that hand stays for driving, unless your chair provider and your"
                + " health team say yes."
            : "You drive with your "
                + part.getKey()
                + ": use this only with a yes from your chair provider and your health team. Another"
                + " part of your body comes first.";
      }
    }
    return "";
  }

  private static boolean onlyBy(Set<String> parts, Approach approach) {
    return approach.inputs().stream()
        .filter(i -> !i.effectors().isEmpty())
        .anyMatch(i -> i.effectors().stream().allMatch(e -> parts.contains(bare(e))));
  }

  private static String bare(String effector) {
    return effector.substring(effector.indexOf('.') + 1);
  }
}
