package closehand.measure.before;

import closehand.bank.Bank;
import closehand.interview.Answer;
import closehand.interview.Answers;
import closehand.interview.Interview;
import closehand.interview.Provenance;
import closehand.interview.Value;
import closehand.json.BankReader;
import closehand.json.EmbeddedBank;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;

/** The questions of the core bank before anything begins, in a room; the player is invented. */
public final class SomeBefore {
  /** Three things to make ready, then the chest, then pain. */
  public static final Before BEFORE = of(/* onCall= */ false, Answers.NONE);

  private SomeBefore() {}

  /** The same with what was known before. */
  static Before of(boolean onCall, Answers known) {
    Bank bank = bank();
    Interview interview =
        Interview.reopen(
            bank.questionnaire(),
            known.with("consent.state", told(new Value.Code("yes"))),
            Interview.Route.CORE,
            Provenance.By.VOLUNTEER,
            Optional.empty());
    return Before.of(bank.tasks().orElseThrow(), onCall, interview.askedAgain(), known);
  }

  static Answers.Recorded told(Value value) {
    return new Answers.Recorded(new Answer.Given(value), Provenance.PLAYER_TOLD);
  }

  /** A case that forbids to begin with pain at 6. */
  public static List<String> refusals(Before before) {
    Optional<Value> pain = before.answers().getOrDefault("pain.now", Optional.empty());
    return pain.equals(Optional.of(new Value.Number(6))) ? List.of("Not today.") : List.of();
  }

  private static Bank bank() {
    try {
      return BankReader.read(new EmbeddedBank(), BankReader.Extent.FOR_USE).bank().orElseThrow();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
