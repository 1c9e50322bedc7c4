package closehand.screen.practice;

import closehand.bank.Stops;
import closehand.measure.practice.ButtonCheck;
import closehand.measure.practice.PracticeRun;
import closehand.measure.practice.Signal;
import java.util.List;
import java.util.Map;

/** What practice asks of the program around it. */
public interface PracticeDesk {
  /** What is to be read first, as paragraphs. */
  List<String> first();

  /** How the stop signs are put. */
  Stops stops();

  /** The inputs of the plan, for the button check. */
  List<ButtonCheck.Wanted> inputs();

  /** What each input sent at an earlier check; empty where there was none. */
  Map<String, Signal> known();

  /** A run with these inputs, before it begins. */
  PracticeRun run(Map<String, Signal> signals);

  /** Keeps a run that is over and tells what came of it. */
  Outcome finished(Map<String, Signal> signals, PracticeRun run);

  /** Takes the change on offer. */
  Outcome take();

  /** Leaves the change on offer; everything stays as it was. */
  Outcome leave();

  /**
   * What came of a run, or of what was decided.
   *
   * @param lines paragraphs to read
   * @param offer a change to take or to leave, as paragraphs; empty where there is none
   */
  record Outcome(List<String> lines, List<String> offer) {
    /** Copies the lists. */
    public Outcome {
      lines = List.copyOf(lines);
      offer = List.copyOf(offer);
    }
  }
}
