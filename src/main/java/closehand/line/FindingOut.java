package closehand.line;

import java.util.List;
import java.util.Optional;

/** From the interview to practice or a trial, where somebody sits at the keyboard. */
final class FindingOut {
  private FindingOut() {}

  /** What the interview is left for; nothing where it goes on. */
  static Optional<LineFace.Ending> ask(Console console) {
    if (console.scripted()) {
      console.say("Practice and trials need somebody at the keyboard.");
      return Optional.empty();
    }
    console.say("What would you like? Everything is kept, and the interview goes on after it.");
    return Choice.of(
        console,
        Optional.empty(),
        List.of(LineFace.Ending.TO_PRACTICE, LineFace.Ending.TO_TRIAL),
        to ->
            to == LineFace.Ending.TO_PRACTICE
                ? "practise the plan"
                : "try a set-up and note how it went");
  }
}
