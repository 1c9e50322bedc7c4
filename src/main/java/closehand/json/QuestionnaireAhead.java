package closehand.json;

import closehand.bank.Problem;
import closehand.bank.Questionnaire;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Reads the questionnaire, more than half of a bank, beside the rest of it, so that a machine with
 * two cores starts sooner. What comes out does not depend on which is ready first.
 */
final class QuestionnaireAhead {
  private final Thread thread;
  private final List<Problem> problems = new ArrayList<>();
  private Optional<JsonValue> document = Optional.empty();
  private Optional<Questionnaire> questionnaire = Optional.empty();
  private Optional<RuntimeException> bug = Optional.empty();

  private QuestionnaireAhead(String name, byte[] bytes) {
    thread = new Thread(() -> read(name, bytes), "questionnaire");
    thread.setDaemon(true);
  }

  /** Begins to read. */
  static QuestionnaireAhead begin(String name, byte[] bytes) {
    QuestionnaireAhead ahead = new QuestionnaireAhead(name, bytes);
    ahead.thread.start();
    return ahead;
  }

  private void read(String name, byte[] bytes) {
    try {
      document = JsonReader.read(name, bytes, problems);
      questionnaire = document.flatMap(d -> QuestionnaireReader.read(d, problems));
    } catch (RuntimeException e) {
      bug = Optional.of(e);
    }
  }

  /** Waits until it is read; nothing else of this may be asked before. */
  QuestionnaireAhead join() {
    boolean interrupted = false;
    while (thread.isAlive()) {
      try {
        thread.join();
      } catch (InterruptedException e) {
        interrupted = true;
      }
    }
    if (interrupted) {
      Thread.currentThread().interrupt();
    }
    bug.ifPresent(
        e -> {
          throw e;
        });
    return this;
  }

  /** The document; empty if it is not JSON. */
  Optional<JsonValue> document() {
    return document;
  }

  /** The questionnaire; empty if it is none. */
  Optional<Questionnaire> questionnaire() {
    return questionnaire;
  }

  /** What is wrong with the file. */
  List<Problem> problems() {
    return problems;
  }
}
