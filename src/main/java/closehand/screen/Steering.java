package closehand.screen;

import closehand.interview.Interview;
import closehand.interview.Message;
import closehand.interview.Prompt;
import closehand.interview.StillOpen;
import closehand.report.NextStep;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** On the briefest route: goes to the question that tells most, and says when enough is known. */
final class Steering {
  private Steering() {}

  /**
   * Where to go on after an answer.
   *
   * @param talk at the question that tells most
   * @param lines why it is asked, ready to print; empty where there is nothing to say
   * @param enough what is to be read when enough is known; empty while it is not
   */
  record Course(Talk talk, List<String> lines, List<String> enough) {}

  static Course after(Talk talk, Message message) {
    Interview interview = talk.interview();
    boolean answered =
        message instanceof Message.Give
            || message instanceof Message.NoAnswer
            || message instanceof Message.Lower;
    boolean between = talk.prompt().map(Prompt::firstOfQuestion).orElse(false);
    if (!answered
        || !between
        || interview.route() != Interview.Route.BRIEF
        || talk.consultation().ends()) {
      return new Course(talk, List.of(), List.of());
    }
    Optional<NextStep> next = talk.advisor().next(interview);
    if (next.isEmpty()) {
      return new Course(talk, List.of(), List.of());
    }
    return next.get().question().isEmpty()
        ? new Course(talk, List.of(), next.get().lines())
        : new Course(talk.steered(next.get().question().get()), next.get().lines(), List.of());
  }

  /** On with the short interview, at the first question that has not come up. */
  static ScreenModel.Step goOn(ScreenModel model) {
    ScreenModel.Step step =
        Leading.send(model, new Message.TakeRoute(Interview.Route.CORE), "We go on.");
    Optional<String> first =
        step.model().talk().orElseThrow().interview().open().stream()
            .filter(o -> o.why() == StillOpen.Why.NOT_YET_ASKED)
            .map(o -> o.question().id())
            .findFirst();
    if (first.isEmpty()) {
      return step;
    }
    ScreenModel.Step jumped =
        Leading.send(step.model(), new Message.JumpTo(first.get()), "We go on.");
    List<Effect> effects = new ArrayList<>(step.effects());
    effects.addAll(jumped.effects());
    return new ScreenModel.Step(jumped.model(), effects);
  }
}
