package closehand.measure.trial;

import java.util.ArrayList;
import java.util.List;

/** What is said when a trial ends early. */
public final class StopWords {
  private static final String WHOM =
      "Whom to ask: your own doctor, nurse or clinic; in an emergency the emergency number. About the kit: the"
          + " person who goes through the questions with you.";

  private StopWords() {}

  /** Whole sentences, the most needed first. */
  public static List<String> of(StopSign sign) {
    List<String> lines = new ArrayList<>();
    lines.add("Stop here. That is the right thing to do, and it is nobody's fault.");
    lines.add("Let go of everything, sit back and rest. Tell somebody how you are.");
    lines.add(next(sign));
    lines.add("Not again today with this set-up. Everything is kept.");
    lines.add(WHOM);
    return lines;
  }

  private static String next(StopSign sign) {
    return switch (sign) {
      case CHEST -> "If it does not pass at once, call the emergency number now.";
      case FAINT ->
          "Stay with somebody. If you get worse, or a pounding headache or flushed face stays, call the emergency"
              + " number. If your health team has told you what to do then, do that first.";
      case NUMB ->
          "If it came suddenly or does not pass, get medical advice today; with a drooping face or trouble speaking,"
              + " call the emergency number now.";
      case PAIN ->
          "If pain is still there after 2 hours, make the next trial shorter. If it is there after a day, ask your"
              + " health team before another trial.";
      case SPASM -> "Wait until it settles. If it keeps coming back, ask your health team first.";
      case SKIN ->
          "Take the pressure off that place. If a mark is still there after 30 minutes, show it to your nurse or"
              + " doctor.";
      case BALANCE -> "First get well supported again. Ask your seating team before another trial.";
      case DISTRESS, WISH -> "You need not give a reason. Another day, or another way, is fine.";
      case ALONE ->
          "Wait until somebody is with you again, or the call is back, before anything else.";
    };
  }
}
