package closehand.report;

import closehand.measure.trial.SideBySide;
import closehand.measure.trial.Trial;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** What worked in each trial, drawn with plain letters from left to right. */
final class TrialPlot {
  private static final int MOST_TRIALS = 30;

  private TrialPlot() {}

  /**
   * Eleven rows from ten to nothing, a column a trial; A and B stand for the two set-ups, and a
   * trial that was stopped for an x at the bottom.
   *
   * @param all trials of both, in order
   */
  static List<String> of(SideBySide both, List<Trial> all) {
    List<Trial> shown = all.subList(Math.max(0, all.size() - MOST_TRIALS), all.size());
    List<String> lines = new ArrayList<>();
    for (int row = 10; row >= 0; row--) {
      StringBuilder line = new StringBuilder(row % 5 == 0 ? pad(row) + " |" : "   |");
      for (Trial trial : shown) {
        line.append(' ').append(mark(both, trial, row));
      }
      lines.add(line.toString().stripTrailing());
    }
    lines.add("   +" + "--".repeat(shown.size()));
    return lines;
  }

  private static String pad(int row) {
    return row < 10 ? " " + row : Integer.toString(row);
  }

  private static char mark(SideBySide both, Trial trial, int row) {
    char letter = trial.setUp().name().equals(both.first().setUp().name()) ? 'A' : 'B';
    OptionalDouble worked = trial.worked(both.actions());
    if (worked.isPresent()) {
      return Math.round(worked.getAsDouble()) == row ? letter : ' ';
    }
    return row == 0 ? 'x' : ' ';
  }
}
