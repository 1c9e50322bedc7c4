package closehand.measure.practice;

import closehand.bank.StopSign;
import closehand.interview.WellKnown;
import closehand.measure.statistics.Selection;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Pointing to and fro between two targets along a line of character cells, with one or two ways of
 * pointing in turn (A, B, B, A; A, A where there is one).
 *
 * <p>Targets are at least five cells wide and between 1.6 and 3.5 bits hard (widths and range after
 * Almanji and others 2015, who found pointing with cerebral palsy usable between 1.58 and 3 bits).
 * There is no time limit; any number of clicks may miss.
 *
 * @param ways what moves the pointer, in the player's words
 * @param columns how wide the screen is
 * @param stage what is going on
 * @param block which block, from 0
 * @param condition which pair of targets in it, from 0
 * @param clicks clicks in this condition so far, the first of which only begins
 * @param lastAt when the last click came
 * @param counted selections of finished blocks
 * @param going selections of this block
 * @param painBefore 0 to 10, once told
 * @param worked timed work
 * @param lost blocks in a row that were thrown away
 * @param stop why it ended early, where it did
 * @param said what came of the last thing that happened; may be empty
 */
public record PointingTask(
    List<String> ways,
    int columns,
    Stage stage,
    int block,
    int condition,
    int clicks,
    long lastAt,
    List<Reached> counted,
    List<Reached> going,
    OptionalInt painBefore,
    Work worked,
    int lost,
    Optional<StopReason> stop,
    String said) {
  /** Narrower screens have no room for targets. */
  public static final int LEAST_COLUMNS = 40;

  /** Selections of one condition in one block. */
  public static final int SELECTIONS = 8;

  private static final List<Integer> ONE_WAY = List.of(0, 0);
  private static final List<Integer> TWO_WAYS = List.of(0, 1, 1, 0);
  private static final long DOUBLE_MILLIS = 150;
  private static final int MOST_LOST = 3;
  private static final double SECOND = 1_000;

  /** Copies the lists; neither one nor two ways is a caller's bug. */
  public PointingTask {
    ways = List.copyOf(ways);
    counted = List.copyOf(counted);
    going = List.copyOf(going);
    if (ways.isEmpty() || ways.size() > 2) {
      throw new IllegalArgumentException("one or two ways of pointing");
    }
  }

  /** What is going on. */
  public enum Stage {
    ASKING,
    READY,
    AIMING,
    STOPPED,
    DONE
  }

  /**
   * Two targets.
   *
   * @param distance between their middles, in cells
   * @param width of each, in cells
   */
  public record Condition(int distance, int width) {}

  /**
   * A selection that was made.
   *
   * @param way which way of pointing, from 0
   * @param block which block, from 0
   */
  public record Reached(int way, int block, Condition condition, Selection selection) {}

  /**
   * Timed work, in milliseconds.
   *
   * @param done so far
   * @param most how much is left for the day
   */
  public record Work(double done, double most) {}

  /**
   * A task before it begins.
   *
   * @param mostSeconds how much timed work is left for the day
   */
  public static PointingTask of(List<String> ways, int columns, int mostSeconds) {
    return new PointingTask(
        ways,
        columns,
        Stage.ASKING,
        0,
        0,
        0,
        Long.MIN_VALUE / 2,
        List.of(),
        List.of(),
        OptionalInt.empty(),
        new Work(0, mostSeconds * SECOND),
        0,
        Optional.empty(),
        "");
  }

  /** The pairs of targets for a screen of this width, the easiest first. */
  public List<Condition> conditions() {
    int room = Math.max(LEAST_COLUMNS, columns) - 2;
    return List.of(
        new Condition(Math.min(room - 12, 28), 12),
        new Condition(Math.min(room - 8, 40), 8),
        new Condition(Math.min(room - 5, 50), 5));
  }

  /** The order of ways, by block. */
  public List<Integer> order() {
    return ways.size() == 1 ? ONE_WAY : TWO_WAYS;
  }

  /** The pair of targets of the moment. */
  public Condition now() {
    return conditions().get(condition);
  }

  /** The way of pointing of this block. */
  public String way() {
    return ways.get(order().get(Math.min(block, order().size() - 1)));
  }

  /** The column in the middle of a target: 0 left, 1 right. */
  public int middle(int side) {
    return columns / 2 - now().distance() / 2 + side * now().distance();
  }

  /** The target to go to now: 0 left, 1 right. */
  public int side() {
    return clicks % 2;
  }

  /** Timed work so far, in seconds, parts that were thrown away with it. */
  public int timedSeconds() {
    return (int) Math.ceil(worked.done() / SECOND);
  }

  /** Whether no more is asked. */
  public boolean over() {
    return stage == Stage.STOPPED || stage == Stage.DONE;
  }

  /** Something was selected at this column. */
  public PointingTask selected(int column, long millis) {
    if (stage != Stage.AIMING) {
      return this;
    }
    if (millis - lastAt < DOUBLE_MILLIS) {
      return saying("That was a second press at once. It does not count.");
    }
    double spent = clicks > 0 ? millis - lastAt : 0;
    PointingTask on = working(spent);
    if (on.worked.done() > worked.most()) {
      return on.stopped(StopReason.TIME);
    }
    return on.reached(column, millis);
  }

  private PointingTask reached(int column, long millis) {
    List<Reached> next = new ArrayList<>(going);
    if (clicks > 0) {
      next.add(
          new Reached(
              order().get(block),
              block,
              now(),
              Selection.onLine(
                  middle(1 - side()), middle(side()), column, (millis - lastAt) / SECOND)));
    }
    boolean last = clicks == SELECTIONS;
    if (!last) {
      return with(stage, block, condition, clicks + 1, millis, counted, next);
    }
    if (condition + 1 < conditions().size()) {
      return with(stage, block, condition + 1, 0, millis, counted, next);
    }
    List<Reached> all = new ArrayList<>(counted);
    all.addAll(next);
    return with(Stage.ASKING, block + 1, 0, 0, millis, all, List.of()).lost(0);
  }

  /** The player is ready for a block. */
  public PointingTask begun() {
    return stage == Stage.READY
        ? with(Stage.AIMING, block, 0, 0, lastAt, counted, List.of())
        : this;
  }

  /** How much it hurts: before the first block and after each. */
  public PointingTask pain(int pain) {
    if (stage != Stage.ASKING) {
      return this;
    }
    boolean rose =
        painBefore.isPresent() && pain - painBefore.getAsInt() >= WellKnown.PAIN_RISE_THAT_STOPS;
    if (pain >= WellKnown.PAIN_THAT_STOPS || rose) {
      return stopped(StopReason.of(StopSign.PAIN));
    }
    Stage next = block >= order().size() ? Stage.DONE : Stage.READY;
    PointingTask on = with(next, block, 0, 0, lastAt, counted, List.of());
    return painBefore.isPresent()
        ? on
        : new PointingTask(
            ways,
            columns,
            next,
            block,
            0,
            0,
            lastAt,
            counted,
            List.of(),
            OptionalInt.of(pain),
            worked,
            lost,
            stop,
            "");
  }

  /** Something got in between; a block that was going on is thrown away. */
  public PointingTask disturbed(Happening.What what, int columnsNow) {
    PointingTask fitted =
        new PointingTask(
            ways,
            columnsNow,
            stage,
            block,
            condition,
            clicks,
            lastAt,
            counted,
            going,
            painBefore,
            worked,
            lost,
            stop,
            said);
    if (what == Happening.What.CLOSED) {
      return fitted.stopped(StopReason.CLOSED);
    }
    if (stage != Stage.AIMING) {
      return fitted;
    }
    if (lost + 1 >= MOST_LOST) {
      return fitted.stopped(StopReason.of(StopSign.DISTRESS));
    }
    return fitted
        .with(Stage.READY, block, 0, 0, lastAt, counted, List.of())
        .lost(lost + 1)
        .saying(what.words() + ". This part is thrown away; nothing of it counts.");
  }

  /** The player pauses: this block begins anew. */
  public PointingTask paused() {
    return stage == Stage.AIMING
        ? with(Stage.READY, block, 0, 0, lastAt, counted, List.of())
        : this;
  }

  /** Ends for a reason; finished blocks stay. */
  public PointingTask stopped(StopReason reason) {
    return new PointingTask(
        ways,
        columns,
        Stage.STOPPED,
        block,
        0,
        0,
        lastAt,
        counted,
        List.of(),
        painBefore,
        worked,
        lost,
        Optional.of(reason),
        "");
  }

  private PointingTask with(
      Stage next, int b, int c, int n, long at, List<Reached> all, List<Reached> now) {
    return new PointingTask(
        ways, columns, next, b, c, n, at, all, now, painBefore, worked, lost, stop, "");
  }

  private PointingTask working(double millis) {
    return new PointingTask(
        ways,
        columns,
        stage,
        block,
        condition,
        clicks,
        lastAt,
        counted,
        going,
        painBefore,
        new Work(worked.done() + millis, worked.most()),
        lost,
        stop,
        said);
  }

  private PointingTask lost(int times) {
    return new PointingTask(
        ways,
        columns,
        stage,
        block,
        condition,
        clicks,
        lastAt,
        counted,
        going,
        painBefore,
        worked,
        times,
        stop,
        said);
  }

  private PointingTask saying(String words) {
    return new PointingTask(
        ways,
        columns,
        stage,
        block,
        condition,
        clicks,
        lastAt,
        counted,
        going,
        painBefore,
        worked,
        lost,
        stop,
        words);
  }
}
