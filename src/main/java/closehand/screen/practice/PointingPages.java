package closehand.screen.practice;

import closehand.bank.Stops;
import closehand.measure.practice.PointingTask;
import closehand.report.Glyphs;
import closehand.screen.frame.Canvas;
import closehand.screen.frame.Frame;
import closehand.screen.frame.Role;
import closehand.screen.frame.ScreenSize;
import closehand.screen.practice.Choice.Doing;
import java.util.List;

/** The pages of pointing, and the targets themselves. */
final class PointingPages {
  private static final int TALL = 3;

  private PointingPages() {}

  static Page of(PointingTask task, List<String> told, Stops stops) {
    return switch (task.stage()) {
      case ASKING -> PracticePages.pain(task.painBefore().isEmpty(), task.said());
      case READY, AIMING -> ready(task);
      case STOPPED, DONE -> told(task, told, stops);
    };
  }

  private static Page ready(PointingTask task) {
    Page.Builder page =
        new Page.Builder("Pointing, part " + (task.block() + 1) + " of " + task.order().size());
    page.strong("Now with: " + task.way()).gap();
    page.say(
        "Two targets lie side by side. Press on the one that says \"here\", then on the other,"
            + " to and fro. Only left and right matter. There is no hurry; a press beside a target"
            + " is no harm.");
    page.say("Without a pointer: arrow left and right, then Enter. Any other key pauses.");
    if (task.columns() < PointingTask.LEAST_COLUMNS) {
      page.warn(
          "Please note: this window is too narrow. Make it at least "
              + PointingTask.LEAST_COLUMNS
              + " columns wide.");
    }
    if (!task.said().isBlank()) {
      page.warn("Please note: " + task.said());
    }
    page.gap();
    if (task.columns() >= PointingTask.LEAST_COLUMNS) {
      page.offer(1, "Begin; rest first as long as you like", Doing.GO_ON);
    }
    return page.offer(9, PracticePages.STOP_LINE, Doing.ASK_STOP).menu();
  }

  private static Page told(PointingTask task, List<String> told, Stops stops) {
    Page.Builder page = new Page.Builder("What came of it");
    task.stop()
        .ifPresent(reason -> StopWords.of(reason, stops).forEach(line -> page.warn(line).gap()));
    return page.paragraphs(told).offer(0, "Leave", Doing.LEAVE).menu();
  }

  /** Both targets across the whole height, the one to go to with a word on it. */
  static Frame targets(PointingTask task, int marker, ScreenSize size, Glyphs glyphs) {
    Canvas canvas = new Canvas(size, glyphs);
    canvas.put(0, 0, " Pointing with: " + task.way(), Role.BAR);
    canvas.paint(0, Role.BAR);
    int foot = size.rows() - 1;
    canvas.put(foot, 1, "Backspace", Role.KEY);
    canvas.put(foot, 11, "stop: pain", Role.BAR);
    canvas.put(foot - 1, 1, task.said(), Role.QUIET);
    int middle = size.rows() / 2;
    for (int row = Math.max(1, middle - TALL); row <= Math.min(foot - 2, middle + TALL); row++) {
      target(canvas, task, row, 1 - task.side(), false);
      target(canvas, task, row, task.side(), true);
    }
    int left = task.middle(task.side()) - task.now().width() / 2;
    canvas.put(middle, left + (task.now().width() - "here".length()) / 2, "here", Role.STRONG);
    canvas.put(Math.min(foot - 2, middle + TALL + 1), marker, "^", Role.MARK);
    canvas.cursor(middle, task.middle(task.side()));
    return canvas.frame();
  }

  private static void target(Canvas canvas, PointingTask task, int row, int side, boolean wanted) {
    int width = task.now().width();
    int left = task.middle(side) - width / 2;
    String inside = (wanted ? "=" : " ").repeat(Math.max(0, width - 2));
    canvas.put(row, left, "[" + inside + "]", wanted ? Role.CHOSEN : Role.PLAIN);
  }
}
