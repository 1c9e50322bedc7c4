package closehand.json;

import closehand.interview.CaseRecord;
import closehand.interview.SavedCase;
import java.util.List;

/**
 * A whole case as one document.
 *
 * @param saved the interview
 * @param record what is kept besides the answers
 * @param plans control plans as they were given, each an object of its own format
 * @param trials what was tried, each an object of its own format
 */
public record CaseDocument(
    SavedCase saved, CaseRecord record, List<JsonValue.Obj> plans, List<JsonValue.Obj> trials) {
  public CaseDocument {
    plans = List.copyOf(plans);
    trials = List.copyOf(trials);
  }

  /** A case of which nothing but the interview is known. */
  public static CaseDocument of(SavedCase saved) {
    return new CaseDocument(saved, CaseRecord.NONE, List.of(), List.of());
  }

  /** The same case under another name. */
  public CaseDocument named(String name) {
    return new CaseDocument(saved.named(name), record, plans, trials);
  }

  /** The same case with the interview as it stands now. */
  public CaseDocument with(SavedCase now, CaseRecord since) {
    return new CaseDocument(now, since, plans, trials);
  }
}
