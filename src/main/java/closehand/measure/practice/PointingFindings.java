package closehand.measure.practice;

import closehand.measure.practice.PointingTask.Condition;
import closehand.measure.practice.PointingTask.Reached;
import closehand.measure.statistics.Sample;
import closehand.measure.statistics.Selection;
import closehand.measure.statistics.Throughput;
import closehand.measure.statistics.Verdict;
import closehand.measure.statistics.VerdictWords;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What pointing told, each way of pointing by itself and two beside each other; never beside
 * anybody else's.
 *
 * @param ways one a way of pointing, in the order given
 * @param verdict which of two is better, where there are two that could be measured
 */
public record PointingFindings(List<OfWay> ways, Optional<Verdict> verdict) {
  private static final double CELL = 1;

  /** Copies the list. */
  public PointingFindings {
    ways = List.copyOf(ways);
  }

  /**
   * One way of pointing.
   *
   * @param name in the player's words
   * @param parts one a condition and block, as ISO 9241-411 reckons
   * @param selections how many selections were made
   * @param missed how many fell outside their target
   * @param tooFine whether they spread less than character cells can tell
   */
  public record OfWay(
      String name, List<Throughput> parts, int selections, int missed, boolean tooFine) {
    /** Copies the list. */
    public OfWay {
      parts = List.copyOf(parts);
    }

    /** Whether a number can be given. */
    public boolean measured() {
      return !tooFine && !parts.isEmpty();
    }
  }

  /** Of finished blocks. */
  public static PointingFindings of(PointingTask task) {
    List<OfWay> ways = new ArrayList<>();
    for (int way = 0; way < task.ways().size(); way++) {
      ways.add(way(task, way));
    }
    boolean both = ways.size() == 2 && ways.stream().allMatch(OfWay::measured);
    return new PointingFindings(
        ways,
        both
            ? Optional.of(
                Verdict.of(
                    sample(ways.get(0)),
                    sample(ways.get(1)),
                    Verdict.Good.MORE,
                    Verdict.Order.MIXED))
            : Optional.empty());
  }

  private static OfWay way(PointingTask task, int way) {
    Map<String, List<Reached>> parts = new LinkedHashMap<>();
    for (Reached one : task.counted()) {
      if (one.way() == way) {
        String part = one.block() + " " + one.condition();
        parts.computeIfAbsent(part, p -> new ArrayList<>()).add(one);
      }
    }
    List<Throughput> found = new ArrayList<>();
    int selections = 0;
    int missed = 0;
    int fine = 0;
    for (List<Reached> part : parts.values()) {
      Condition condition = part.get(0).condition();
      List<Selection> all = part.stream().map(Reached::selection).toList();
      Optional<Throughput> throughput = Throughput.ofChain(condition.width(), all);
      boolean tooFine = throughput.isEmpty() || throughput.get().isTooFine(CELL);
      fine += tooFine ? 1 : 0;
      throughput.filter(t -> !t.isTooFine(CELL)).ifPresent(found::add);
      selections += all.size();
      missed += (int) all.stream().filter(s -> s.off() > condition.width() / 2.0).count();
    }
    boolean tooFine = !parts.isEmpty() && 2 * fine >= parts.size();
    return new OfWay(task.ways().get(way), found, selections, missed, tooFine);
  }

  private static Sample sample(OfWay way) {
    return new Sample(way.parts().stream().map(Throughput::bitsPerSecond).toList());
  }

  /** In plain words, as paragraphs. */
  public List<String> words() {
    List<String> lines = new ArrayList<>();
    for (OfWay way : ways) {
      lines.add(words(way));
    }
    verdict.ifPresent(v -> lines.add(VerdictWords.of(v, ways.get(0).name(), ways.get(1).name())));
    lines.add(
        "Places are known to one character cell and no finer. The number takes speed and spread"
            + " together (bits a second, after ISO 9241-411); more is easier. It only means"
            + " something beside another number of yours from the same screen.");
    lines.add(VerdictWords.GROUND);
    return lines;
  }

  private static String words(OfWay way) {
    if (way.selections() == 0) {
      return way.name() + ": no part was finished.";
    }
    String missed =
        way.missed() == 0
            ? " Every one of " + way.selections() + " was on its target."
            : " Not reached at once: " + way.missed() + " of " + way.selections() + ".";
    if (way.tooFine()) {
      return way.name() + ": too fine to measure with character cells." + missed;
    }
    return way.name()
        + ": "
        + String.format(java.util.Locale.ROOT, "%.1f", Throughput.meanBitsPerSecond(way.parts()))
        + "."
        + missed;
  }
}
