package closehand.cli;

import closehand.bank.Stops;
import closehand.measure.practice.ButtonCheck;
import closehand.measure.practice.PracticeRecord;
import closehand.measure.practice.PracticeRun;
import closehand.measure.practice.Signal;
import closehand.plan.Planned;
import closehand.report.practice.PracticeSheets;
import closehand.screen.practice.PracticeDesk;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Practice with the plan of one game of one case. */
final class CasePractice implements PracticeDesk {
  private final Planned planned;
  private final List<PracticeRecord> earlier;
  private final PracticeLoop loop;
  private final Sitting sitting;

  /**
   * What is fixed for one sitting.
   *
   * @param at when it began
   * @param week weeks with the plan, from 1
   * @param seed for the order of prompts
   * @param tired whether rests are longer
   * @param mostSeconds how much timed work is left for the day
   * @param stops how the stop signs are put
   */
  record Sitting(String at, int week, long seed, boolean tired, int mostSeconds, Stops stops) {}

  CasePractice(Planned planned, List<PracticeRecord> earlier, PracticeLoop loop, Sitting sitting) {
    this.planned = planned;
    this.earlier = List.copyOf(earlier);
    this.loop = loop;
    this.sitting = sitting;
  }

  @Override
  public List<String> first() {
    return first("Backspace always stops");
  }

  /**
   * What is to be read first.
   *
   * @param stopping how to stop, the end of a sentence
   */
  List<String> first(String stopping) {
    List<String> lines = new ArrayList<>();
    lines.add(
        "You practise the control plan of \""
            + planned.plan().title()
            + "\": five short rounds with rests, some ten minutes in all. It finds out which inputs"
            + " suit you, and whether the plan should change.");
    lines.add(
        "Sit or lie as you play, arm and feet supported, phone or call button in reach."
            + " Stop as soon as anything hurts more or feels wrong; "
            + stopping
            + ".");
    lines.add("If you can, switch off that keys repeat by themselves.");
    List<String> moved = PracticeSheets.moved(planned);
    if (!moved.isEmpty()) {
      lines.add("Not practised with prompts, since it is moved: " + String.join("; ", moved) + ".");
    }
    return lines;
  }

  @Override
  public List<ButtonCheck.Wanted> inputs() {
    return PracticeSheets.wanted(planned);
  }

  /**
   * The latest check of this game, as far as the plan still has its inputs; runs without a check,
   * or with one that was broken off, tell nothing.
   */
  @Override
  public Map<String, Signal> known() {
    Map<String, Signal> known = new LinkedHashMap<>();
    for (PracticeRecord record : earlier) {
      if (record.game() == planned.plan().game() && !record.signals().isEmpty()) {
        known.clear();
        record.signals().forEach(known::put);
      }
    }
    known.keySet().retainAll(inputs().stream().map(ButtonCheck.Wanted::input).toList());
    return known;
  }

  @Override
  public PracticeRun run(Map<String, Signal> signals) {
    return PracticeRun.of(
        PracticeSheets.of(planned, signals),
        sitting.week(),
        sitting.seed(),
        sitting.tired(),
        sitting.mostSeconds());
  }

  @Override
  public Stops stops() {
    return sitting.stops();
  }

  @Override
  public Outcome finished(Map<String, Signal> signals, PracticeRun run) {
    PracticeRecord record =
        new PracticeRecord(
            sitting.at(),
            planned.plan().game(),
            sitting.week(),
            /* timed= */ true,
            signals,
            run.counted(),
            run.stop(),
            run.timedSeconds(),
            Map.of());
    try {
      List<String> lines = new ArrayList<>(loop.practised(record));
      lines.addAll(loop.found());
      lines.addAll(loop.nothingOnOffer());
      return new Outcome(lines, loop.offer());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public Outcome take() {
    try {
      List<String> lines = new ArrayList<>(loop.take());
      lines.add("Taken. Set it up like that and try it; it is easy to take back.");
      lines.addAll(loop.nothingOnOffer());
      return new Outcome(lines, loop.offer());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public Outcome leave() {
    loop.leave();
    List<String> lines = new ArrayList<>();
    lines.add("Kept as it was.");
    lines.addAll(loop.nothingOnOffer());
    return new Outcome(lines, loop.offer());
  }
}
