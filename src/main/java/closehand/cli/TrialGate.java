package closehand.cli;

import closehand.interview.Answer;
import closehand.interview.CaseRecord;
import closehand.interview.Interview;
import closehand.interview.Provenance;
import closehand.interview.Value;
import closehand.interview.WellKnown;
import closehand.measure.trial.Gate;
import closehand.measure.trial.Trial;
import closehand.report.Clean;
import closehand.report.Diary;
import closehand.report.Glyphs;
import closehand.report.StopNotice;
import closehand.report.TaskGate;
import closehand.report.Wrap;
import closehand.rules.Advice;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What must be settled before any trial: consent, no stop, no warning sign left open, nothing in
 * earlier trials that asks for a look first, nothing stopped on the same day, and whatever must
 * hold before a measured task. It is worked out from the whole case each time, so that no way into
 * a trial goes round it.
 */
final class TrialGate {
  private static final String CONSENT_GIVEN = "yes";

  private final Pages pages;
  private final Glyphs glyphs;
  private final String today;

  TrialGate(Pages pages, Glyphs glyphs, String today) {
    this.pages = pages;
    this.glyphs = glyphs;
    this.today = today;
  }

  /**
   * Lines that say why no trial may begin; nothing if one may.
   *
   * @param anew facts that are asked anew right after, whose answers of now say nothing
   */
  Optional<List<String>> closed(
      Interview interview, CaseRecord record, List<Trial> trials, Diary diary, Set<String> anew) {
    if (!consents(interview)) {
      return Optional.of(
          said("A trial needs your consent first. Go on with the interview, which asks for it."));
    }
    Advice advice = pages.advise(interview.answers());
    if (!advice.stops().isEmpty()) {
      return Optional.of(List.of(StopNotice.of(advice.stops(), glyphs).strip().split("\n", -1)));
    }
    boolean clinician = interview.asker() == Provenance.By.CLINICIAN;
    if (!advice.notCleared().isEmpty() && !clinician) {
      return Optional.of(
          said(
              "Some warning signs have not been asked yet, or you were not sure of them. Go on with the interview"
                  + " first; a trial comes after them."));
    }
    return pages
        .bank()
        .tasks()
        .flatMap(book -> Gate.closed(trials, record, today, book.stops()))
        .or(() -> diary.why(pages.bank(), today))
        .or(() -> unread(record, diary))
        .map(this::said)
        .or(() -> unsettled(interview, anew));
  }

  /** A trial that cannot be read may have been stopped, so a review comes first as after a stop. */
  private Optional<String> unread(CaseRecord record, Diary diary) {
    return diary.unreadDays().stream()
        .filter(day -> !Gate.reviewedSince(record, day))
        .findFirst()
        .map(
            day ->
                "What was tried on "
                    + Moment.day(day)
                    + " cannot be read any more, so nobody knows whether it was stopped. Ask the"
                    + " player; then, on another day, go through pain and the warning signs again"
                    + " with closehand interview --review (questions END-02 and SAF-03).");
  }

  /** What must hold before a measured task and does not; the same holds before a trial. */
  private Optional<List<String>> unsettled(Interview interview, Set<String> anew) {
    List<String> unmet =
        TaskGate.of(pages.bank())
            .map(gate -> gate.unmet(interview.answers(), anew))
            .orElse(List.of("This question bank does not say what must hold before a trial."));
    List<String> lines = new ArrayList<>();
    if (!unmet.isEmpty()) {
      lines.addAll(said("A trial cannot begin now."));
      unmet.forEach(u -> lines.addAll(said(u)));
    }
    return lines.isEmpty() ? Optional.empty() : Optional.of(lines);
  }

  private static boolean consents(Interview interview) {
    return interview
        .answers()
        .answer(WellKnown.CONSENT_STATE)
        .flatMap(Answer::given)
        .map(v -> v instanceof Value.Code code && code.code().equals(CONSENT_GIVEN))
        .orElse(false);
  }

  private List<String> said(String sentence) {
    return Wrap.lines("", "", Clean.of(sentence, glyphs));
  }
}
