package closehand.cli;

import closehand.bank.Bank;
import closehand.casefile.CaseFile;
import closehand.casefile.CaseLock;
import closehand.casefile.CaseName;
import closehand.casefile.CaseStore;
import closehand.casefile.Holder;
import closehand.casefile.Passphrases;
import java.io.IOException;
import java.util.Optional;

/** Keeps a control plan in its case, as it was given, so that a review can look back at it. */
final class PlanKeeping {
  private final Surroundings surroundings;
  private final Cases cases;
  private final String name;
  private final Passphrases passphrases;

  private PlanKeeping(
      Surroundings surroundings, Cases cases, String name, Passphrases passphrases) {
    this.surroundings = surroundings;
    this.cases = cases;
    this.name = name;
    this.passphrases = passphrases;
  }

  /** For a saved case named by its name; nothing for answers or a file elsewhere. */
  static Optional<PlanKeeping> of(
      Surroundings surroundings, AnswersOption source, Passphrases passphrases) {
    return source
        .caseName()
        .filter(CaseName::isLawful)
        .map(
            name ->
                new PlanKeeping(
                    surroundings, Cases.in(source.home(), surroundings), name, passphrases));
  }

  /**
   * Adds the plan to the case.
   *
   * @param plan one JSON object
   * @return the exit code; what went wrong has been said
   */
  int keep(Bank bank, String plan) throws IOException {
    Holder me =
        new Holder(
            System.getProperty("user.name", ""),
            ProcessHandle.current().pid(),
            Moment.now(surroundings.clock()));
    CaseLock.Taking taking = cases.store().lock(name, me);
    if (taking instanceof CaseLock.Taking.Held) {
      return refused("The case is open in another window, so the plan is not kept in it.");
    }
    try {
      return add(bank, plan);
    } finally {
      if (taking instanceof CaseLock.Taking.Taken taken) {
        taken.lock().close();
      }
    }
  }

  private int add(Bank bank, String plan) throws IOException {
    if (!(cases.open(name, bank, passphrases) instanceof CaseStore.Opened.Case opened)) {
      return refused("The case could not be opened again, so the plan is not kept in it.");
    }
    CaseFile file = opened.file();
    if (!file.dropped().isEmpty()) {
      return refused(
          "The case was made with another version of the questions. Open it with closehand interview first.");
    }
    String version = bank.questionnaire().version();
    cases
        .store()
        .save(
            file.document().planned(Moment.now(surroundings.clock()), version, plan),
            bank.questionnaire(),
            file.key());
    surroundings.error().println("The plan is kept in the case " + name + ".");
    return ExitCode.DONE;
  }

  private int refused(String why) {
    surroundings.error().println(why);
    return ExitCode.CANNOT_CREATE;
  }
}
