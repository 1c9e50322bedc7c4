package closehand.casefile;

import closehand.bank.Problem;
import closehand.interview.SavedCase;
import closehand.json.CaseDocument;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * A case that was opened.
 *
 * @param path where it lies
 * @param document what it holds
 * @param dropped link ids of answers that do not fit the bank in use and were left out
 * @param warnings what somebody should look at
 * @param key what it was sealed with, if it was
 */
public record CaseFile(
    Path path,
    CaseDocument document,
    List<String> dropped,
    List<Problem> warnings,
    Optional<SealKey> key) {
  public CaseFile {
    dropped = List.copyOf(dropped);
    warnings = List.copyOf(warnings);
  }

  /** The interview in it. */
  public SavedCase saved() {
    return document.saved();
  }
}
