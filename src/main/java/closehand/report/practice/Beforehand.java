package closehand.report.practice;

import closehand.interview.Answers;
import closehand.interview.Value;
import closehand.measure.practice.PracticeRecord;
import closehand.measure.practice.StopReason;
import closehand.report.Diary;
import closehand.report.PageInput;
import closehand.report.TaskGate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What must be so before anybody practises, judged from the answers and earlier runs. */
public final class Beforehand {
  private static final double TIRED = 5;

  private final PageInput input;
  private final List<String> missing = new ArrayList<>();

  private Beforehand(PageInput input) {
    this.input = input;
  }

  /**
   * Why practice cannot begin now, in sentences; empty where it can.
   *
   * @param earlier practice runs of the case
   * @param diary what was done with the case on which day
   * @param anew facts that are asked anew right after, whose answers of now say nothing
   */
  public static List<String> missing(
      PageInput input, List<PracticeRecord> earlier, Diary diary, Set<String> anew) {
    Beforehand beforehand = new Beforehand(input);
    beforehand.safety();
    beforehand.settled(anew);
    beforehand.today(earlier);
    beforehand.enough(diary);
    diary.why(input.bank(), input.isoDate()).ifPresent(beforehand.missing::add);
    return beforehand.missing;
  }

  /** Whether rests are to be longer. */
  public static boolean tired(Answers answers) {
    return number(answers, "fatigue.before").filter(t -> t >= TIRED).isPresent();
  }

  private void safety() {
    if (!input.together().stops().isEmpty()) {
      missing.add("A stop stands, so there is no practice for now. The page says whom to ask.");
    }
    if (!input.together().notCleared().isEmpty()) {
      missing.add(
          "Some of the warning signs are not answered yet, or nobody is sure. They come first.");
    }
  }

  /** What holds for measured tasks holds here: what is not known is never taken for well. */
  private void settled(Set<String> anew) {
    missing.addAll(
        TaskGate.of(input.bank())
            .map(gate -> gate.unmet(input.answers(), anew))
            .orElse(List.of("This question bank does not say what must hold before practice.")));
  }

  private void today(List<PracticeRecord> earlier) {
    List<PracticeRecord> today =
        earlier.stream().filter(r -> r.day().equals(input.isoDate())).toList();
    boolean stopped =
        today.stream().anyMatch(r -> r.stop().filter(StopReason::asksAgain).isPresent());
    if (stopped) {
      missing.add("A practice run was stopped today. It is not repeated on the same day.");
    }
  }

  /** Timed work of a day is counted over tasks, practice and pointing. */
  private void enough(Diary diary) {
    TaskGate.of(input.bank())
        .map(gate -> gate.enoughFor(input.answers(), diary, input.isoDate()))
        .ifPresent(missing::addAll);
  }

  private static Optional<Double> number(Answers answers, String fact) {
    return answers.value(fact).orElse(null) instanceof Value.Number number
        ? Optional.of(number.value())
        : Optional.empty();
  }
}
