package closehand.screen.practice;

import closehand.measure.practice.StopReason;
import java.util.ArrayList;
import java.util.List;

/** What is said after a run was stopped for a reason. */
public final class StopWords {
  private StopWords() {}

  /** Paragraphs; the first begins with a word that warns. */
  public static List<String> of(StopReason reason) {
    List<String> lines = new ArrayList<>();
    lines.add("STOPPED. " + reason.words() + ".");
    switch (reason) {
      case CHEST, FAINT, NUMB ->
          lines.add(
              "If this came suddenly, or does not pass at once with rest, get help now: call the"
                  + " emergency number. With a spinal cord injury, a pounding headache or a"
                  + " flushed face: sit up, and follow what your own team has told you.");
      case PAIN, SPASM, SKIN, SEAT ->
          lines.add(
              "Rest. If it stays, comes back or worries you, ask your own health team before you"
                  + " practise again.");
      default -> {
        // Nothing more is to be said.
      }
    }
    if (reason.asksAgain()) {
      lines.add(
          "Practice is not repeated today. Before anything else, answer again how much it hurts"
              + " (question END-02) and the question on chest and breathing (SAF-03); with a spinal"
              + " cord injury the one on how you feel right now, too (SAF-07).");
    }
    return lines;
  }
}
