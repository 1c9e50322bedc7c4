package closehand.line;

import closehand.interview.Interview;
import closehand.interview.Message;
import closehand.interview.Provenance;
import java.util.Optional;

/** Who asks, and how long the interview is to be. */
public final class Sitting {
  private Sitting() {}

  private enum Change {
    ASKER,
    CORE,
    FULL,
    BRIEF
  }

  /** Asks who leads the interview; a volunteer if nothing is chosen. */
  public static Provenance.By askWho(Console console) {
    console.say("Who asks the questions?");
    return Choice.of(
            console, Optional.of(Provenance.By.VOLUNTEER), Provenance.By.values(), Sitting::asker)
        .orElseThrow();
  }

  /** Asks for the short or the whole interview; the short one if nothing is chosen. */
  public static Interview.Route askRoute(Console console) {
    console.say("How long may it take?");
    return Choice.of(
            console, Optional.of(Interview.Route.CORE), Interview.Route.values(), Sitting::route)
        .orElseThrow();
  }

  static Optional<Message> change(Console console, Interview interview) {
    console.say("Now: " + asker(interview.asker()) + "; " + route(interview.route()) + ".");
    Optional<Change> change = Choice.of(console, Optional.empty(), Change.values(), Sitting::words);
    return change.map(
        c ->
            switch (c) {
              case ASKER -> new Message.Conduct(askWho(console));
              case CORE -> new Message.TakeRoute(Interview.Route.CORE);
              case FULL -> new Message.TakeRoute(Interview.Route.FULL);
              case BRIEF -> new Message.TakeRoute(Interview.Route.BRIEF);
            });
  }

  private static String words(Change change) {
    return switch (change) {
      case ASKER -> "somebody else asks";
      case CORE -> route(Interview.Route.CORE);
      case FULL -> route(Interview.Route.FULL);
      case BRIEF -> route(Interview.Route.BRIEF);
    };
  }

  private static String asker(Provenance.By by) {
    return switch (by) {
      case PLAYER -> "I am the player, and I do this on my own";
      case HELPER -> "a helper or family member";
      case VOLUNTEER -> "a volunteer";
      case CLINICIAN -> "a clinician, such as an occupational therapist";
    };
  }

  private static String route(Interview.Route route) {
    return switch (route) {
      case CORE -> "the short interview, about 40 minutes";
      case FULL -> "the whole interview, about an hour or in parts";
      case BRIEF -> "the briefest: warning signs, then only what tells most, about 30 minutes";
    };
  }
}
