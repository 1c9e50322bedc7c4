package closehand.screen.practice;

import closehand.bank.Stops;
import closehand.measure.practice.StopReason;
import java.util.ArrayList;
import java.util.List;

/** What is said after a run was stopped for a reason. */
public final class StopWords {
  private StopWords() {}

  /** Paragraphs; the first begins with a word that warns. */
  public static List<String> of(StopReason reason, Stops stops) {
    List<String> lines = new ArrayList<>();
    lines.add("STOPPED. " + reason.words(stops) + ".");
    reason.sign().ifPresent(sign -> lines.addAll(stops.of(sign).then()));
    if (reason.asksAgain()) {
      lines.add(
          "Practice is not repeated today. Before anything else, answer again how much it hurts"
              + " (question END-02) and the question on chest and breathing (SAF-03); with a spinal"
              + " cord injury the one on how you feel right now, too (SAF-07).");
    }
    return lines;
  }
}
