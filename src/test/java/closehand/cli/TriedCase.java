package closehand.cli;

import closehand.bank.Bank;
import closehand.interview.CaseRecord;
import closehand.interview.Interview;
import closehand.interview.Provenance;
import closehand.interview.SavedCase;
import closehand.json.CaseDocument;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.Optional;

/** Saved cases of invented players, as an interview would have left them. */
final class TriedCase {
  static final String NAME = "quiet-heron";

  /**
   * What is typed before practice or a trial: all is ready, nothing new in the chest, pain is at 3.
   */
  static final String READY = "y\ny\ny\n1\n3\n";

  private TriedCase() {}

  /** A case with the answers of an example, kept in a folder. */
  static void keep(Path folder, String example, String name, CaseRecord record) throws IOException {
    keep(folder, Path.of("examples/" + example + "/answers.json"), name, record);
  }

  /** A case with the answers of a file, kept in a folder. */
  static void keep(Path folder, Path answers, String name, CaseRecord record) throws IOException {
    Bank bank = BankSource.await(BankSource.ahead(Optional.empty())).bank().orElseThrow();
    AnswersSource.Loaded loaded =
        AnswersSource.match(
            bank, AnswersSource.read(answers.toString(), InputStream.nullInputStream()));
    Interview interview =
        Interview.reopen(
            bank.questionnaire(),
            loaded.answers().orElseThrow(),
            Interview.Route.CORE,
            Provenance.By.VOLUNTEER,
            Optional.empty());
    SavedCase saved =
        SavedCase.of(
            name,
            SavedCase.BankStamp.of(bank.questionnaire(), bank.fingerprint()),
            interview,
            "2026-11-01T10:00:00Z",
            "2026-11-01T11:00:00Z");
    Cases cases = Cases.at(folder);
    cases
        .store()
        .save(CaseDocument.of(saved).with(saved, record), bank.questionnaire(), Optional.empty());
  }
}
