package closehand.interview;

import closehand.bank.FactType;
import closehand.bank.Option;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
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
   * Why what was suggested before no longer holds, as the answers given since say; nothing if it
   * may still hold. The triggers are common practice, no source: something that lasted more than a
   * day, a skin mark, numbness or swelling however soon it was gone, anything named as changed (a
   * fall, growth and a plan that nobody used among it), a warning sign that was clear before,
   * another age group.
   *
   * @param before before these answers
   * @param answered the facts answered since
   */
  static Optional<String> expiry(Interview before, Interview after, Set<String> answered) {
    if (answered.contains(WellKnown.REVIEW_AFTER)) {
      Optional<String> left = left(after);
      if (left.isPresent()) {
        return left;
      }
    }
    if (answered.contains(WellKnown.REVIEW_CHANGED)) {
      Optional<String> changed = changed(after);
      if (changed.isPresent()) {
        return changed;
      }
    }
    if (answered.stream().anyMatch(fact -> isNewSign(before, after, fact))) {
      return Optional.of("a warning sign is new");
    }
    Optional<Value> age = value(before, WellKnown.AGE_BAND);
    return answered.contains(WellKnown.AGE_BAND)
            && age.isPresent()
            && !age.equals(value(after, WellKnown.AGE_BAND))
        ? Optional.of("the player is in another age group now")
        : Optional.empty();
  }

  private static Optional<Value> value(Interview interview, String fact) {
    return interview.answers().value(fact);
  }

  /** What a trial left behind on the days after it, if that ends what was suggested. */
  private static Optional<String> left(Interview after) {
    Optional<Value> how = value(after, WellKnown.REVIEW_AFTER);
    if (how.filter(new Value.Code(WellKnown.LASTING)::equals).isPresent()) {
      return Optional.of("something hurt or stayed for more than a day");
    }
    return how.filter(new Value.Code(WellKnown.SIGN_SETTLED)::equals).isPresent()
        ? Optional.of("there was a skin mark, numbness or swelling")
        : Optional.empty();
  }

  /** What is named as changed, in the words of its question. */
  private static Optional<String> changed(Interview after) {
    if (!(value(after, WellKnown.REVIEW_CHANGED).orElse(null) instanceof Value.Codes codes)
        || codes.codes().isEmpty()
        || codes.codes().contains(WellKnown.NOTHING_CHANGED)) {
      return Optional.empty();
    }
    Optional<FactType> type =
        after.outline().place(WellKnown.REVIEW_CHANGED).map(p -> p.field().type());
    List<String> words = new ArrayList<>();
    for (String code : codes.codes()) {
      String display = type.flatMap(t -> t.option(code)).map(Option::display).orElse(code);
      String word = display.contains(",") ? display.substring(0, display.indexOf(',')) : display;
      words.add(word.toLowerCase(Locale.ROOT));
    }
    return Optional.of("something has changed since (" + String.join(", ", words) + ")");
  }

  /** Whether a warning sign was clear before and is not now. */
  private static boolean isNewSign(Interview before, Interview after, String fact) {
    boolean gate =
        after
            .outline()
            .place(fact)
            .filter(p -> p.question().safetyWeight() == Course.GATE)
            .filter(p -> !(p.field().type() instanceof FactType.YesNo))
            .isPresent();
    return gate
        && before.answers().answer(fact).filter(Review::isClear).isPresent()
        && after.answers().answer(fact).filter(a -> !isClear(a)).isPresent();
  }

  private static boolean isClear(Answer answer) {
    return WellKnown.isAllClear(answer)
        || answer
            .given()
            .filter(new Value.Codes(List.of(WellKnown.NOTHING_CHANGED))::equals)
            .isPresent();
  }
}
