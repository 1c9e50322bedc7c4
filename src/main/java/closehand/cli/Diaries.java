package closehand.cli;

import closehand.json.CaseDocument;
import closehand.json.Tried;
import closehand.measure.trial.Gate;
import closehand.report.Diary;
import java.util.ArrayList;
import java.util.List;

/** What a kept case knows of days on which something was done, of every activity. */
final class Diaries {
  private Diaries() {}

  static Diary of(CaseDocument document) {
    Tried tried = Tried.of(document.trials());
    List<Diary.Entry> entries =
        new ArrayList<>(
            Diary.entries(
                document.record().measured(), tried.practice(), tried.pointing(), tried.trials()));
    tried.unread().forEach(day -> entries.add(new Diary.Entry(day, Diary.What.UNREAD, "", 0)));
    return new Diary(entries, Gate.reviewDays(document.record()));
  }
}
