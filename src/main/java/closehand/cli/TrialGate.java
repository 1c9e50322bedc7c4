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
import closehand.report.Glyphs;
import closehand.report.StopNotice;
import closehand.report.Wrap;
import closehand.rules.Advice;
import java.util.List;
import java.util.Optional;

/**
 * What must be settled before any trial: consent, no stop, no warning sign left open, and nothing
 * in earlier trials that asks for a look first. It is worked out from the whole case each time, so
 * that no way into a trial goes round it.
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

  /** Lines that say why no trial may begin; nothing if one may. */
  Optional<List<String>> closed(Interview interview, CaseRecord record, List<Trial> earlier) {
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
    return Gate.closed(earlier, record, today).map(this::said);
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
