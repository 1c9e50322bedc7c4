package closehand.interview;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** What was passed over, in sentences. */
public final class LeftOpen {
  private LeftOpen() {}

  /**
   * One sentence or two for each question with its reason; the fields are named where others of the
   * same question go on.
   */
  public static List<String> sentences(List<StillOpen> passedOver) {
    Map<String, List<StillOpen>> byQuestion = new LinkedHashMap<>();
    for (StillOpen open : passedOver) {
      byQuestion.computeIfAbsent(open.question().id(), id -> new ArrayList<>()).add(open);
    }
    return byQuestion.values().stream().map(LeftOpen::sentence).toList();
  }

  private static String sentence(List<StillOpen> fields) {
    StillOpen first = fields.get(0);
    String name = first.question().shortName().orElse(first.question().id());
    String some =
        fields.size() < first.question().fields().size()
            ? " ("
                + String.join(", ", fields.stream().map(f -> lower(f.field().label())).toList())
                + ")"
            : "";
    return "Left open: " + name + some + ". " + first.because();
  }

  private static String lower(String label) {
    return label.substring(0, 1).toLowerCase(Locale.ROOT) + label.substring(1);
  }
}
