package closehand.interview;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What is kept of a case besides its answers.
 *
 * @param consents every consent asked for, in order
 * @param history everything that happened, in order
 * @param suggested what was suggested, in order
 * @param measured every task that was measured, in order
 * @param keepUntil the day on which somebody should decide whether the case is still needed, as an
 *     ISO date
 * @param reviewOn the day of the next review, as an ISO date
 */
public record CaseRecord(
    List<Consent> consents,
    List<Event> history,
    List<Suggested> suggested,
    List<Measured> measured,
    Optional<String> keepUntil,
    Optional<String> reviewOn) {
  /** Nothing happened yet. */
  public static final CaseRecord NONE =
      new CaseRecord(
          List.of(), List.of(), List.of(), List.of(), Optional.empty(), Optional.empty());

  public CaseRecord {
    consents = List.copyOf(consents);
    history = List.copyOf(history);
    suggested = List.copyOf(suggested);
    measured = List.copyOf(measured);
  }

  /** The same with these events after the others. */
  public CaseRecord with(List<Event> more) {
    return new CaseRecord(
        consents, joined(history, more), suggested, measured, keepUntil, reviewOn);
  }

  /** The same with these consents after the others. */
  public CaseRecord consenting(List<Consent> more) {
    return new CaseRecord(
        joined(consents, more), history, suggested, measured, keepUntil, reviewOn);
  }

  /** The same with these measured tasks after the others. */
  public CaseRecord measuring(List<Measured> more) {
    return new CaseRecord(
        consents, history, suggested, joined(measured, more), keepUntil, reviewOn);
  }

  /** The same with what was suggested now, unless that is what was suggested last. */
  public CaseRecord suggesting(Suggested now) {
    boolean same = !suggested.isEmpty() && suggested.get(suggested.size() - 1).says(now);
    return same
        ? this
        : new CaseRecord(
            consents, history, joined(suggested, List.of(now)), measured, keepUntil, reviewOn);
  }

  /** The same with these days. */
  public CaseRecord on(Optional<String> keep, Optional<String> review) {
    return new CaseRecord(consents, history, suggested, measured, keep, review);
  }

  /** Whether this ever happened. */
  public boolean ever(Event.What what) {
    return history.stream().anyMatch(e -> e.what() == what);
  }

  /** When the last review began; nothing if there was none. */
  public Optional<String> lastReview() {
    return history.stream()
        .filter(e -> e.what() == Event.What.REVIEW_BEGUN)
        .map(Event::at)
        .reduce((first, second) -> second);
  }

  private static <T> List<T> joined(List<T> some, List<T> more) {
    List<T> all = new ArrayList<>(some);
    all.addAll(more);
    return all;
  }
}
