package closehand.cli;

import closehand.interview.Interview;
import closehand.line.Console;
import closehand.line.Narrator;
import closehand.report.Advisor;
import closehand.screen.Command;
import closehand.screen.Effect;
import closehand.screen.Follower;
import java.util.Optional;

/** Writes down, in the words of the line face, what happens on the full screen. */
final class Transcript implements Follower {
  private final Console console;
  private Optional<Narrator> narrator = Optional.empty();

  /** A transcript on this console. */
  Transcript(Console console) {
    this.console = console;
  }

  @Override
  public void begun(Advisor advisor, Interview interview) {
    Narrator fresh = new Narrator(console, advisor);
    narrator = Optional.of(fresh);
    fresh.begin(interview);
  }

  @Override
  public void heard(Effect effect) {
    narrator.ifPresent(n -> tell(n, effect));
  }

  private static void tell(Narrator narrator, Effect effect) {
    if (effect instanceof Effect.Sent sent) {
      narrator.sent(sent.message(), sent.before(), sent.after(), sent.why());
    } else if (effect instanceof Effect.Undone undone) {
      narrator.undone(undone.now());
    } else if (effect instanceof Effect.Shown shown) {
      tell(narrator, shown);
    }
  }

  private static void tell(Narrator narrator, Effect.Shown shown) {
    if (shown.command() == Command.HELP) {
      narrator.helped(shown.interview());
    } else if (shown.command() == Command.OVERVIEW || shown.command() == Command.JUMP) {
      narrator.overview(shown.interview());
    } else {
      narrator.read(shown.interview(), shown.lines());
    }
  }
}
