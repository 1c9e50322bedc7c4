package closehand.measure.trial;

import closehand.interview.CaseRecord;
import closehand.interview.Event;
import java.util.List;
import java.util.Optional;

/** Whether another trial may begin, as far as earlier trials say. */
public final class Gate {
  private Gate() {}

  /**
   * Why not now; nothing if nothing earlier stands in the way.
   *
   * @param earlier trials in order
   * @param record what happened to the case, for the last review
   * @param today an ISO date
   */
  public static Optional<String> closed(List<Trial> earlier, CaseRecord record, String today) {
    for (Trial trial : earlier) {
      if (trial.day().equals(today) && trial.stopped().map(StopSign::isUrgent).orElse(false)) {
        return Optional.of(
            "A trial was stopped today by something that needs rest and a look first. No more trials today.");
      }
    }
    Optional<Trial> last = TrialWords.last(earlier).filter(Gate::asksAgain);
    boolean reviewed = last.isPresent() && reviewedSince(record, last.get().day());
    return last.isPresent() && !reviewed
        ? Optional.of(
            "The last trial was stopped: "
                + last.get().stopped().map(StopSign::words).orElse("")
                + " Before another one, please go through pain and the warning signs again with closehand interview"
                + " --review.")
        : Optional.empty();
  }

  private static boolean asksAgain(Trial trial) {
    return trial.stopped().map(StopSign::isOfBody).orElse(false);
  }

  private static boolean reviewedSince(CaseRecord record, String day) {
    return record.history().stream()
        .filter(e -> e.what() == Event.What.REVIEW_BEGUN)
        .anyMatch(e -> e.at().compareTo(day) >= 0);
  }
}
