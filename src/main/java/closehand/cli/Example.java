package closehand.cli;

import closehand.bank.Bank;
import closehand.interview.Interview;
import closehand.interview.Message;
import closehand.interview.Provenance;
import closehand.plan.PlanChanges;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Optional;

/** An invented player to try things with; nothing of it is kept. */
final class Example {
  private static final String ANSWERS = "/examples/quiet-heron/answers.json";

  /** What is read first. */
  static final List<String> FIRST =
      List.of(
          "This player is invented. Nothing you do here is kept.",
          "Most questions are answered already. Look at what the answers point to, at the page,"
              + " and at all answers; change some and see what follows.");

  /** What is said when somebody leaves it. */
  static final String LAST = "This player was invented. Nothing was kept.";

  /** What is said where it does not fit the bank. */
  static final String UNFIT = "The example does not fit this question bank.";

  private Example() {}

  /** The interview with most answers given; nothing where they do not fit the bank. */
  static Optional<Interview> interview(Bank bank) {
    try (InputStream in = Example.class.getResourceAsStream(ANSWERS)) {
      if (in == null) {
        return Optional.empty();
      }
      return AnswersSource.match(bank, AnswersSource.read("-", in))
          .answers()
          .map(
              answers ->
                  Interview.reopen(
                          bank.questionnaire(),
                          answers,
                          Interview.Route.CORE,
                          Provenance.By.VOLUNTEER,
                          Optional.empty())
                      .after(new Message.Resume()));
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  /** Keeps nothing. */
  static final class NotKept implements Kept {
    private PlanChanges changes = PlanChanges.NONE;

    @Override
    public PlanChanges changes() {
      return changes;
    }

    @Override
    public void change(PlanChanges next) {
      changes = next;
    }

    @Override
    public String name() {
      return "example";
    }

    @Override
    public boolean isKept() {
      return false;
    }

    @Override
    public void save(Interview interview) {}

    @Override
    public String trouble(IOException e) {
      return "Nothing is kept of the example.";
    }

    @Override
    public void delete() {}
  }
}
