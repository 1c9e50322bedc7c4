package closehand.cli;

import closehand.json.CaseDocument;
import closehand.json.TrialReader;
import closehand.report.StoppedToday;
import java.util.ArrayList;

/** What a kept case knows of stops, of every activity. */
final class KeptStops {
  private KeptStops() {}

  /** Those of a case; a trial that cannot be read is left out. */
  static StoppedToday of(CaseDocument document) {
    return new StoppedToday(
        document.record().measured(),
        document.practised(),
        TrialReader.read(document.trials(), new ArrayList<>()));
  }
}
