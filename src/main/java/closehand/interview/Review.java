package closehand.interview;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What is asked again when a case is reviewed, and what the answers mean for what was suggested.
 */
public final class Review {
  private Review() {}

  /** The facts to ask again, in order: consent, what has changed, warning signs, pain. */
  static List<String> askedAgain(Outline outline, Walk walk) {
    Set<String> facts = new LinkedHashSet<>();
    List<String> changes = List.of(WellKnown.REVIEW_AFTER, WellKnown.REVIEW_CHANGED);
    outline.place(WellKnown.CONSENT_STATE).ifPresent(p -> facts.add(p.fact()));
    changes.forEach(fact -> outline.place(fact).ifPresent(p -> facts.add(p.fact())));
    for (Outline.Place place : outline.places()) {
      if (place.question().safetyWeight() == Course.GATE && !place.isReview()) {
        facts.add(place.fact());
      }
    }
    for (Outline.Place place : outline.places()) {
      if (place.field().askedAgain()) {
        facts.add(place.fact());
      }
    }
    List<String> possible = new ArrayList<>(facts);
    possible.removeIf(fact -> outline.place(fact).filter(walk::canBeAsked).isEmpty());
    return possible;
  }

  /**
   * Why what was suggested before no longer holds, as these answers say; nothing if it may still
   * hold. The triggers are common practice, no source.
   */
  public static Optional<String> expiry(Answers answers) {
    boolean lasting =
        answers
            .value(WellKnown.REVIEW_AFTER)
            .filter(new Value.Code(WellKnown.LASTING)::equals)
            .isPresent();
    if (lasting) {
      return Optional.of("something hurt or stayed for more than a day");
    }
    boolean changed =
        answers
            .value(WellKnown.REVIEW_CHANGED)
            .filter(v -> v instanceof Value.Codes c && saysSomething(c.codes()))
            .isPresent();
    return changed ? Optional.of("something has changed since") : Optional.empty();
  }

  private static boolean saysSomething(List<String> codes) {
    return !codes.isEmpty() && !codes.contains(WellKnown.NOTHING_CHANGED);
  }
}
