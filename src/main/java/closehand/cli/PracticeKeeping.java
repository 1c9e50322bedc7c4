package closehand.cli;

import closehand.bank.Bank;
import closehand.json.CaseDocument;
import closehand.measure.practice.PracticeRecord;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** Keeps practice runs in their case. Says nothing itself: a full screen may be in sight. */
final class PracticeKeeping {
  private final Optional<PlanKeeping> inCase;
  private final Bank bank;
  private final String at;
  private final ByteArrayOutputStream said;

  private PracticeKeeping(
      Optional<PlanKeeping> inCase, Bank bank, String at, ByteArrayOutputStream said) {
    this.inCase = inCase;
    this.bank = bank;
    this.at = at;
    this.said = said;
  }

  /** For a saved case named by its name; what came of answers elsewhere is not kept. */
  static PracticeKeeping of(Surroundings surroundings, AnswersOption source, CaseLoading loading) {
    ByteArrayOutputStream said = new ByteArrayOutputStream();
    Surroundings quiet =
        new Surroundings(
            surroundings.input(),
            surroundings.output(),
            new PrintStream(said, true, StandardCharsets.UTF_8),
            surroundings.environment(),
            surroundings.clock(),
            surroundings.typed(),
            StandardCharsets.UTF_8);
    return new PracticeKeeping(
        PlanKeeping.of(quiet, source, loading.passphrases()),
        loading.pages().bank(),
        Moment.now(surroundings.clock()),
        said);
  }

  /** The moment this sitting began. */
  String at() {
    return at;
  }

  /**
   * Keeps a run.
   *
   * @param plan the plan with the changes taken after it, as one JSON object, where there is one
   * @return what went wrong, as sentences
   */
  List<String> keep(PracticeRecord record, Optional<String> plan) throws IOException {
    String version = bank.questionnaire().version();
    return change(
        d ->
            plan.map(p -> d.practised(record).planned(at, version, p))
                .orElseGet(() -> d.practised(record)));
  }

  /**
   * Keeps something else that was tried.
   *
   * @param trial one JSON object
   */
  List<String> keep(String trial) throws IOException {
    return change(d -> d.tried(trial));
  }

  /** Keeps what was asked anew; of answers that belong to no case kept here nothing is kept. */
  List<String> keepAnswers(UnaryOperator<CaseDocument> change) throws IOException {
    return inCase.isEmpty() ? List.of() : change(change);
  }

  private List<String> change(UnaryOperator<CaseDocument> change) throws IOException {
    if (inCase.isEmpty()) {
      return List.of("This is no case kept here, so nothing of it is kept.");
    }
    said.reset();
    int code = inCase.get().change(bank, change, "Practice");
    return code == ExitCode.DONE
        ? List.of()
        : List.of(said.toString(StandardCharsets.UTF_8).strip());
  }
}
