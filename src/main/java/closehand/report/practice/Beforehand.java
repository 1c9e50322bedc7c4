package closehand.report.practice;

import closehand.interview.Answers;
import closehand.interview.Value;
import closehand.interview.WellKnown;
import closehand.measure.practice.PracticeRecord;
import closehand.measure.practice.StopReason;
import closehand.report.PageInput;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What must be so before anybody practises, judged from the answers and earlier runs. */
public final class Beforehand {
  private static final String PACING = "C-PEM";
  private static final int TASKS_A_DAY = 2;
  private static final double TIRED = 5;

  private final PageInput input;
  private final List<String> missing = new ArrayList<>();

  private Beforehand(PageInput input) {
    this.input = input;
  }

  /**
   * Why practice cannot begin now, in sentences; empty where it can.
   *
   * @param earlier practice runs kept with the case
   */
  public static List<String> missing(PageInput input, List<PracticeRecord> earlier) {
    Beforehand beforehand = new Beforehand(input);
    beforehand.safety();
    beforehand.people();
    beforehand.today(earlier);
    return beforehand.missing;
  }

  /** Whether rests are to be longer. */
  public static boolean tired(Answers answers) {
    return number(answers, "fatigue.before").filter(t -> t >= TIRED).isPresent();
  }

  private void safety() {
    if (!code("consent.state").equals(Optional.of("yes"))) {
      missing.add("First comes your consent, at the start of the interview.");
    }
    if (!input.together().stops().isEmpty()) {
      missing.add("A stop stands, so there is no practice for now. The page says whom to ask.");
    }
    if (!input.together().notCleared().isEmpty()) {
      missing.add(
          "Some of the warning signs are not answered yet, or nobody is sure. They come first.");
    }
    if (number(input.answers(), "pain.now")
        .filter(p -> p >= WellKnown.PAIN_THAT_STOPS)
        .isPresent()) {
      missing.add("With pain of 7 or more nothing is practised.");
    }
  }

  private void people() {
    if (input.answers().value("session.stopSignal").isEmpty()) {
      missing.add("Agree on a stop signal and try it once (question CON-04).");
    }
    boolean call = code("session.mode").equals(Optional.of("video"));
    if (call && !(yes("session.helperPresent") && yes("session.emergencyPlan"))) {
      missing.add(
          "On a call a helper must be with you, and it must be agreed whom to phone"
              + " (question CON-06).");
    }
  }

  private void today(List<PracticeRecord> earlier) {
    List<PracticeRecord> today =
        earlier.stream().filter(r -> r.day().equals(input.isoDate())).toList();
    boolean stopped =
        today.stream().anyMatch(r -> r.stop().filter(StopReason::asksAgain).isPresent());
    if (stopped) {
      missing.add("A practice run was stopped today. It is not repeated on the same day.");
    }
    boolean pacing =
        input.together().cautions().stream().anyMatch(c -> c.caution().code().equals(PACING));
    if (pacing && today.size() >= TASKS_A_DAY) {
      missing.add("Two timed tasks are enough for one day with your way of pacing.");
    }
  }

  private Optional<String> code(String fact) {
    return input.answers().value(fact).orElse(null) instanceof Value.Code code
        ? Optional.of(code.code())
        : Optional.empty();
  }

  private boolean yes(String fact) {
    return input.answers().value(fact).orElse(null) instanceof Value.Flag flag && flag.value();
  }

  private static Optional<Double> number(Answers answers, String fact) {
    return answers.value(fact).orElse(null) instanceof Value.Number number
        ? Optional.of(number.value())
        : Optional.empty();
  }
}
