package closehand.measure.trial;

import closehand.bank.StopSign;
import closehand.bank.Stops;
import closehand.interview.Answer;
import closehand.interview.CaseRecord;
import closehand.interview.Event;
import closehand.interview.WellKnown;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Whether another trial may begin, as far as earlier trials say. */
public final class Gate {
  private static final int DAY_LETTERS = 10;

  /** What is asked again after a stop: pain now, and signs of the chest. */
  private static final List<String> ASKED_AGAIN = List.of(WellKnown.PAIN_NOW, "safe.chest");

  private static final Set<Event.What> ANSWERS =
      Set.of(Event.What.ANSWERED, Event.What.CHANGED, Event.What.CONFIRMED);

  private Gate() {}

  /**
   * Why not now; nothing if nothing earlier stands in the way.
   *
   * @param earlier trials in order
   * @param record what happened to the case, for the last review
   * @param today an ISO date
   * @param stops how the stop signs are put
   */
  public static Optional<String> closed(
      List<Trial> earlier, CaseRecord record, String today, Stops stops) {
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
                + last.get().stopped().map(stops::words).orElse("")
                + ". Before another one, please go through pain and the warning signs again, on another day, with"
                + " closehand interview --review (questions END-02 and SAF-03).")
        : Optional.empty();
  }

  private static boolean asksAgain(Trial trial) {
    return trial.stopped().map(StopSign::isFelt).orElse(false);
  }

  /**
   * Whether a review came after a day. One that was begun and left at once has asked nothing, so
   * its answers are looked for.
   */
  public static boolean reviewedSince(CaseRecord record, String day) {
    boolean begun =
        record.history().stream()
            .filter(e -> e.what() == Event.What.REVIEW_BEGUN)
            .anyMatch(e -> dayOf(e).compareTo(day) >= 0);
    return begun && ASKED_AGAIN.stream().allMatch(fact -> answeredAfter(record, fact, day));
  }

  /** Days on which a review was begun, and pain and signs of the chest were answered. */
  public static List<String> reviewDays(CaseRecord record) {
    return record.history().stream()
        .filter(e -> e.what() == Event.What.REVIEW_BEGUN)
        .map(Gate::dayOf)
        .distinct()
        .filter(day -> ASKED_AGAIN.stream().allMatch(fact -> answeredOn(record, fact, day)))
        .toList();
  }

  private static boolean answeredOn(CaseRecord record, String fact, String day) {
    return answers(record, fact).anyMatch(e -> dayOf(e).equals(day));
  }

  private static boolean answeredAfter(CaseRecord record, String fact, String day) {
    return answers(record, fact).anyMatch(e -> dayOf(e).compareTo(day) > 0);
  }

  private static Stream<Event> answers(CaseRecord record, String fact) {
    return record.history().stream()
        .filter(e -> ANSWERS.contains(e.what()) && e.subject().equals(fact))
        .filter(e -> e.to().flatMap(Answer::given).isPresent());
  }

  private static String dayOf(Event event) {
    return event.at().substring(0, Math.min(DAY_LETTERS, event.at().length()));
  }
}
