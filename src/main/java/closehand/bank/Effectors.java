package closehand.bank;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** The body parts that can work an input, as bank files name them. */
public final class Effectors {
  private static final List<String> PAIRED =
      List.of("T", "I", "M", "R", "L", "hand", "forearm", "elbow", "shoulder", "foot", "knee");
  private static final List<String> SINGLE =
      List.of("head", "chin", "cheek", "brow", "jaw", "breath", "voice", "eyes");

  private Effectors() {}

  /** Every body part's name, left ones first. */
  public static Set<String> all() {
    Set<String> all = new LinkedHashSet<>();
    for (String side : List.of("L", "R")) {
      PAIRED.forEach(part -> all.add(side + "." + part));
    }
    all.addAll(SINGLE);
    return all;
  }

  /**
   * The body part in plain words, such as "left index finger"; the name itself if it is not known.
   */
  public static String words(String effector) {
    if (effector.length() < 3 || effector.charAt(1) != '.') {
      return effector;
    }
    String side = effector.startsWith("L.") ? "left " : "right ";
    return side
        + switch (effector.substring(2)) {
          case "T" -> "thumb";
          case "I" -> "index finger";
          case "M" -> "middle finger";
          case "R" -> "ring finger";
          case "L" -> "little finger";
          default -> effector.substring(2);
        };
  }
}
