package closehand.screen;

import closehand.interview.Interview;
import closehand.interview.Message;
import closehand.interview.Prompt;
import closehand.interview.StillOpen;
import java.util.Optional;

/** An answer is corrected out of the list of all answers; afterwards it goes on where it was. */
final class Correcting {
  private Correcting() {}

  /** Goes to an answer, and remembers where somebody was. */
  static ScreenModel.Step at(ScreenModel model, String fact) {
    Optional<String> here = model.talk().orElseThrow().interview().at();
    ScreenModel.Step step = Leading.send(model, new Message.JumpTo(fact), "");
    Talk talk = step.model().talk().orElseThrow();
    boolean gone = talk.interview().refusal().isEmpty() && !here.equals(talk.interview().at());
    return gone
        ? new ScreenModel.Step(step.model().with(talk.returning(here)), step.effects())
        : step;
  }

  /**
   * Where it goes on after a message: back, unless the correction has opened something new or its
   * question is not answered in full.
   */
  static Talk after(Talk before, Message message, Talk after) {
    if (before.then().isEmpty() || after.interview().refusal().isPresent()) {
      return after;
    }
    if (message instanceof Message.Back) {
      return after.returning(Optional.empty());
    }
    boolean answered =
        message instanceof Message.Give
            || message instanceof Message.NoAnswer
            || message instanceof Message.Onward;
    if (!answered) {
      return after;
    }
    return goesOn(before.interview(), after.interview())
        ? after.returning(Optional.empty())
        : after.returned();
  }

  private static boolean goesOn(Interview before, Interview after) {
    Optional<Prompt> next = after.current();
    if (next.isEmpty()) {
      return false;
    }
    String fact = next.get().field().fact();
    boolean sameQuestion =
        before
            .current()
            .map(p -> p.question().id())
            .equals(Optional.of(next.get().question().id()));
    boolean wasOpen =
        before.open().stream().map(StillOpen::field).anyMatch(f -> f.fact().equals(fact));
    return sameQuestion || !wasOpen;
  }
}
