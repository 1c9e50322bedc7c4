package closehand.report;

import closehand.measure.trial.Trial;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** What was tried, a short line a set-up, for the pages. */
public final class TriedLines {
  private static final int MOST_SET_UPS = 4;

  private TriedLines() {}

  /**
   * A line for each set-up that was tried since a day, the latest ones first.
   *
   * @param trials of the case, in order
   * @param since an ISO date, or empty for all of them
   */
  public static List<String> of(List<Trial> trials, String since) {
    Map<String, List<Trial>> bySetUp = new LinkedHashMap<>();
    for (int i = trials.size() - 1; i >= 0; i--) {
      Trial trial = trials.get(i);
      if (trial.counts() && trial.day().compareTo(since) >= 0) {
        bySetUp.computeIfAbsent(trial.setUp().name(), n -> new ArrayList<>()).add(trial);
      }
    }
    List<String> lines = new ArrayList<>();
    bySetUp.entrySet().stream()
        .limit(MOST_SET_UPS)
        .forEach(e -> lines.add(line(e.getKey(), e.getValue())));
    return lines;
  }

  private static String line(String name, List<Trial> trials) {
    OptionalDouble worked =
        trials.stream()
            .flatMap(t -> t.worked(t.actionNames()).stream().boxed())
            .mapToDouble(d -> d)
            .average();
    OptionalInt worst =
        trials.stream().flatMap(t -> t.painRise().stream().boxed()).mapToInt(i -> i).max();
    long stopped = trials.stream().filter(t -> t.stopped().isPresent()).count();
    return name
        + ": "
        + trials.size()
        + (trials.size() == 1 ? " trial" : " trials")
        + (worked.isPresent()
            ? ", " + Math.round(worked.getAsDouble()) + " of ten tries worked"
            : "")
        + (worst.isPresent() ? ", pain " + pain(worst.getAsInt()) : "")
        + (stopped > 0 ? ", stopped " + (stopped == 1 ? "once" : stopped + " times") : "")
        + ".";
  }

  private static String pain(int worst) {
    return worst <= 0 ? "not up" : "up by " + worst + " at most";
  }
}
