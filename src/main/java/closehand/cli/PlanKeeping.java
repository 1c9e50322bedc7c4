package closehand.cli;

import closehand.bank.Bank;
import closehand.casefile.CaseFile;
import closehand.casefile.CaseLock;
import closehand.casefile.CaseName;
import closehand.casefile.CaseStore;
import closehand.casefile.Holder;
import closehand.casefile.Passphrases;
import closehand.json.CaseDocument;
import closehand.plan.PlanChanges;
import closehand.strain.OwnLimits;
import java.io.IOException;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** Keeps control plans and practice in their case, so that a review can look back at them. */
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
   * @param limits what was said about the body that no question asks
   * @param wishes what is changed by hand from now on, out of what was before
   * @return the exit code; what went wrong has been said
   */
  int keep(Bank bank, String plan, OwnLimits limits, UnaryOperator<PlanChanges> wishes)
      throws IOException {
    String version = bank.questionnaire().version();
    return change(
        bank,
        d ->
            d.planned(Moment.now(surroundings.clock()), version, plan)
                .changing(wishes.apply(d.changes()))
                .limited(limits),
        "The plan");
  }

  /**
   * Changes the case.
   *
   * @param change what is kept of it afterwards
   * @param what what is kept, as the start of a sentence
   * @return the exit code; what went wrong has been said
   */
  int change(Bank bank, UnaryOperator<CaseDocument> change, String what) throws IOException {
    Holder me =
        new Holder(
            System.getProperty("user.name", ""),
            ProcessHandle.current().pid(),
            Moment.now(surroundings.clock()));
    CaseLock.Taking taking = cases.store().lock(name, me);
    if (taking instanceof CaseLock.Taking.Held) {
      return refused(what + " is not kept: the case is open in another window.");
    }
    try {
      return add(bank, change, what);
    } finally {
      if (taking instanceof CaseLock.Taking.Taken taken) {
        taken.lock().close();
      }
    }
  }

  private int add(Bank bank, UnaryOperator<CaseDocument> change, String what) throws IOException {
    if (!(cases.open(name, bank, passphrases) instanceof CaseStore.Opened.Case opened)) {
      return refused(what + " is not kept: the case could not be opened again.");
    }
    CaseFile file = opened.file();
    if (!file.dropped().isEmpty()) {
      return refused(
          "The case was made with another version of the questions. Open it with closehand interview first.");
    }
    cases.store().save(change.apply(file.document()), bank.questionnaire(), file.key());
    surroundings.error().println(what + " is kept in the case " + name + ".");
    return ExitCode.DONE;
  }

  private int refused(String why) {
    surroundings.error().println(why);
    return ExitCode.CANNOT_CREATE;
  }
}
