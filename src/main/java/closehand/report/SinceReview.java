package closehand.report;

import closehand.bank.Field;
import closehand.bank.Option;
import closehand.bank.Questionnaire;
import closehand.interview.Answer;
import closehand.interview.CaseRecord;
import closehand.interview.Consent;
import closehand.interview.Event;
import closehand.interview.Value;
import closehand.interview.WellKnown;
import closehand.interview.Wording;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Works out what a page says about the time since the last review began. */
public final class SinceReview {
  private final Questionnaire questionnaire;
  private final CaseRecord record;

  private SinceReview(Questionnaire questionnaire, CaseRecord record) {
    this.questionnaire = questionnaire;
    this.record = record;
  }

  /**
   * What has changed, and whether an earlier page still holds.
   *
   * @param isoDate the day of the page
   */
  public static Since of(Questionnaire questionnaire, CaseRecord record, String isoDate) {
    SinceReview review = new SinceReview(questionnaire, record);
    return new Since(review.notices(isoDate), review.changes(), List.of());
  }

  private List<String> notices(String isoDate) {
    List<String> notices = new ArrayList<>();
    Set<String> expired = expired();
    if (!expired.isEmpty()) {
      notices.add(
          "An earlier page no longer holds, because "
              + Phrases.and(List.copyOf(expired))
              + ". This page replaces it.");
    }
    record
        .reviewOn()
        .filter(day -> day.compareTo(isoDate) < 0)
        .ifPresent(
            day ->
                notices.add(
                    "These ideas were to be looked at again by "
                        + PlainDate.of(day)
                        + ". Please look at them together before you use them."));
    return notices;
  }

  /** Why earlier pages no longer hold, since the last review began. */
  private Set<String> expired() {
    Set<String> why = new LinkedHashSet<>();
    for (Event event : record.history()) {
      if (event.what() == Event.What.REVIEW_BEGUN) {
        why.clear();
      } else if (event.what() == Event.What.PLAN_EXPIRED) {
        why.add(event.why());
      }
    }
    return why;
  }

  private record Difference(Optional<Answer> from, Optional<Answer> to) {}

  private List<String> changes() {
    Map<String, Difference> differences = new LinkedHashMap<>();
    for (Event event : sinceReview()) {
      boolean answered = event.what() == Event.What.ANSWERED || event.what() == Event.What.CHANGED;
      if (answered && isNews(event.subject())) {
        differences.merge(
            event.subject(),
            new Difference(event.from(), event.to()),
            (first, last) -> new Difference(first.from(), last.to()));
      }
    }
    List<String> lines = new ArrayList<>();
    Map<String, Field> fields = questionnaire.fieldsByFact();
    differences.forEach(
        (fact, difference) -> {
          Field field = fields.get(fact);
          if (field != null && !difference.from().equals(difference.to())) {
            lines.add(line(field, difference));
          }
        });
    return lines;
  }

  private List<Event> sinceReview() {
    List<Event> events = new ArrayList<>();
    boolean since = false;
    for (Event event : record.history()) {
      if (event.what() == Event.What.REVIEW_BEGUN) {
        since = true;
        events.clear();
      } else if (since) {
        events.add(event);
      }
    }
    return events;
  }

  private static boolean isNews(String fact) {
    return !fact.startsWith(Consent.BEGINNING)
        && !fact.equals(WellKnown.REVIEW_AFTER)
        && !fact.equals(WellKnown.SESSION_MODE);
  }

  private String line(Field field, Difference difference) {
    String now = difference.to().map(a -> words(field, a)).orElse("no answer");
    return difference
        .from()
        .map(a -> field.label() + ": " + now + " (before: " + words(field, a) + ")")
        .orElse(field.label() + ": " + now);
  }

  /** An answer as files have it, in the words of its question. */
  private static String words(Field field, Answer answer) {
    Optional<Value> value = answer.given();
    if (value.isPresent() && value.get() instanceof Value.Text text) {
      return field.type().option(text.words()).map(Option::display).orElse(text.words());
    }
    if (value.isPresent() && value.get() instanceof Value.Texts several) {
      return several.words().isEmpty()
          ? "none"
          : String.join(
              ", ",
              several.words().stream()
                  .map(w -> field.type().option(w).map(Option::display).orElse(w))
                  .toList());
    }
    return Wording.of(field, answer);
  }
}
