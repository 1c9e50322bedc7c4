package closehand.measure.before;

import closehand.bank.Field;
import closehand.bank.TaskBook;
import closehand.interview.Answer;
import closehand.interview.Answers;
import closehand.interview.Value;
import closehand.interview.WellKnown;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The questions before practice, pointing or a trial, one at a time: first what must be ready, then
 * pain and the warning signs anew, since an answer of another day says nothing of today. Nothing
 * leads around one of them, and one that is not known is never taken for well.
 *
 * @param asks what is asked, in order
 * @param at which of them is asked now, from 0
 * @param answers what was said anew, by fact; empty where somebody was not sure
 * @param known what was known before
 * @param said what comes first, where something is not ready yet; or empty
 * @param ended why nothing begins, where it is so
 */
public record Before(
    List<Ask> asks,
    int at,
    Map<String, Optional<Value>> answers,
    Answers known,
    String said,
    Optional<String> ended) {
  /** The highest number there is for pain. */
  public static final int MOST = 10;

  /** Takes copies. */
  public Before {
    asks = List.copyOf(asks);
    answers = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(answers));
  }

  /**
   * The questions before anything begins.
   *
   * @param onCall whether player and interviewer are on a call
   * @param anew the questions of which an old answer is worth nothing
   * @param known what was known before
   */
  public static Before of(TaskBook book, boolean onCall, List<Field> anew, Answers known) {
    List<Ask> asks = new ArrayList<>();
    book.assurances().stream()
        .filter(a -> onCall || !a.onCallOnly())
        .forEach(a -> asks.add(new Ask.Assured(a)));
    anew.forEach(f -> asks.add(new Ask.Anew(f, onCall)));
    return new Before(asks, 0, Map.of(), known, "", Optional.empty());
  }

  /** Whether nothing more is asked. */
  public boolean over() {
    return ended.isPresent() || at >= asks.size();
  }

  /** What is asked now; only while something is. */
  public Ask ask() {
    return asks.get(at);
  }

  /** Whether a number from 0 to 10 is asked now. */
  public boolean asksNumber() {
    return !over() && ask() instanceof Ask.Anew anew && anew.isNumber();
  }

  /** How many answers there are to choose from now, counted from 0. */
  public int choices() {
    return asksNumber() ? MOST + 1 : ask().choices().size();
  }

  /**
   * After an answer: the number of a choice, from 0, or the number asked for.
   *
   * @return the same where there is no such choice
   */
  public Before answered(int choice) {
    if (over() || choice < 0 || choice >= choices()) {
      return this;
    }
    if (ask() instanceof Ask.Assured assured) {
      return choice == 0
          ? next(answers, Optional.empty())
          : saying(assured.assurance().otherwise());
    }
    Ask.Anew anew = (Ask.Anew) ask();
    Optional<Value> value = anew.value(choice);
    Map<String, Optional<Value>> now = new LinkedHashMap<>(answers);
    now.put(anew.field().fact(), value);
    return next(now, value.map(v -> trouble(anew, v)).orElseGet(() -> notKnown(anew)));
  }

  /** The player stops, or leaves: nothing begins. */
  public Before left() {
    return new Before(
        asks, at, answers, known, "", Optional.of("Not now is fine. Nothing begins."));
  }

  private Before next(Map<String, Optional<Value>> now, Optional<String> why) {
    return new Before(asks, at + 1, now, known, "", why);
  }

  private Before saying(String first) {
    return new Before(asks, at, answers, known, first, Optional.empty());
  }

  private static Optional<String> notKnown(Ask.Anew anew) {
    return Optional.of("Nothing begins today, since this is not known: " + anew.words());
  }

  private Optional<String> trouble(Ask.Anew anew, Value value) {
    if (value instanceof Value.Number number) {
      return number.value() >= WellKnown.PAIN_THAT_STOPS
          ? Optional.of(
              "Nothing begins today: pain is at 7 or more. Rest. If it stays or is new to you, ask"
                  + " your own health team.")
          : Optional.empty();
    }
    Answer answer = new Answer.Given(value);
    boolean same = known.answer(anew.field().fact()).filter(answer::equals).isPresent();
    return same || WellKnown.isAllClear(answer)
        ? Optional.empty()
        : Optional.of("Nothing begins today: this is not clear any more: " + anew.words());
  }
}
