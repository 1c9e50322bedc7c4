package closehand.measure.trial;

import closehand.bank.StopSign;
import closehand.bank.Stops;
import java.util.ArrayList;
import java.util.List;

/** What is said when a trial ends early. */
public final class StopWords {
  private static final String WHOM =
      "Whom to ask: your own doctor, nurse or clinic; in an emergency the emergency number. About the kit: the"
          + " person who goes through the questions with you.";

  private StopWords() {}

  /** Whole sentences, the most needed first. */
  public static List<String> of(StopSign sign, Stops stops) {
    List<String> lines = new ArrayList<>();
    lines.add("Stop here. That is the right thing to do, and it is nobody's fault.");
    lines.add("Let go of everything, sit back and rest. Tell somebody how you are.");
    lines.addAll(stops.of(sign).then());
    lines.add("Not again today with this set-up. Everything is kept.");
    lines.add(WHOM);
    return lines;
  }
}
