package closehand.cli;

import closehand.bank.Bank;
import closehand.casefile.CaseFile;
import closehand.casefile.SealKey;
import closehand.json.CaseDocument;
import closehand.json.TrialReader;
import closehand.json.TrialWriter;
import closehand.measure.trial.Trial;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** Keeps a trial in its case, in place of what was kept of it before. */
final class TrialKeeping {
  private final Cases cases;
  private final Bank bank;
  private final Optional<SealKey> key;
  private CaseDocument document;
  private int place;
  private boolean kept = true;

  TrialKeeping(Cases cases, Bank bank, CaseFile file) {
    this.cases = cases;
    this.bank = bank;
    this.key = file.key();
    this.document = file.document();
    this.place = document.trials().size();
  }

  String name() {
    return document.saved().name();
  }

  /** Whether everything that was said is on the disk. */
  boolean isKept() {
    return kept;
  }

  /** The trial takes the place of the last one that is kept, which is gone on with. */
  void goOn() {
    place = TrialReader.lastPlace(document.trials()).orElse(place);
  }

  /**
   * Keeps the trial.
   *
   * @return nothing when it is kept; otherwise what went wrong
   */
  List<String> keep(Trial trial, Surroundings surroundings) {
    return keep(d -> d.trying(place, TrialWriter.object(trial)));
  }

  /**
   * Keeps a change of the case.
   *
   * @return nothing when it is kept; otherwise what went wrong
   */
  List<String> keep(UnaryOperator<CaseDocument> change) {
    document = change.apply(document);
    try {
      cases.store().save(document, bank.questionnaire(), key);
      kept = true;
      return List.of();
    } catch (IOException e) {
      kept = false;
      return List.of(
          Trouble.of(e, cases.folder())
              + " What was said is only in this window; saving is tried again after each answer.");
    }
  }
}
