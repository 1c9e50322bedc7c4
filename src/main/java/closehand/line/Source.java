package closehand.line;

import closehand.bank.Field;
import closehand.interview.Provenance;
import closehand.interview.Provenance.By;
import closehand.interview.Provenance.How;
import java.util.Optional;

/** Who gives the answers and how they are known; stays as set until it is changed. */
final class Source {
  private Optional<By> by = Optional.empty();
  private Optional<How> how = Optional.empty();

  /**
   * What holds for an answer to this field: the player told it, unless set otherwise; a task is
   * measured.
   */
  Provenance of(By asker, Field field) {
    How usual = field.task().isPresent() ? How.MEASURED : How.TOLD;
    return new Provenance(by.orElse(By.PLAYER), how.orElse(usual), "");
  }

  /** Asks who answers and how it is known. */
  void ask(Console console) {
    console.say("Who gives the answers from here on?");
    by = Choice.of(console, by, By.values(), Source::words);
    console.say("How are they known?");
    how = Choice.of(console, how, How.values(), Source::words);
    console.say(
        "From here on: "
            + by.map(Source::words).orElse("as before")
            + ", "
            + how.map(Source::words).orElse("as before")
            + ".");
  }

  static String words(By by) {
    return switch (by) {
      case PLAYER -> "the player";
      case HELPER -> "a helper or family member";
      case VOLUNTEER -> "a volunteer, by watching";
      case CLINICIAN -> "a clinician";
    };
  }

  static String words(How how) {
    return switch (how) {
      case TOLD -> "told";
      case SEEN -> "seen";
      case MEASURED -> "measured";
    };
  }
}
