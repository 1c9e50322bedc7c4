package closehand.screen;

import closehand.interview.Answer;
import closehand.interview.Message;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Keeps what is half typed when its question is left, so that it can be gone on with. */
final class Unfinished {
  private Unfinished() {}

  /** A key's step, with what was half typed before it kept where the step leaves its question. */
  static ScreenModel.Step kept(ScreenModel before, ScreenModel.Step step) {
    Optional<Message.HalfTyped> typed = typed(before);
    if (typed.isEmpty() || step.model().talk().isEmpty()) {
      return step;
    }
    String fact = typed.get().fact();
    boolean leaves = step.effects().stream().anyMatch(Effect.Leave.class::isInstance);
    boolean stays = question(step.model()).filter(q -> fact(q).equals(fact)).isPresent();
    if ((stays && !leaves) || !answer(before, fact).equals(answer(step.model(), fact))) {
      return step;
    }
    Talk talk = step.model().talk().get().leaving(typed.get());
    List<Effect> effects = new ArrayList<>();
    effects.add(new Effect.Keep(talk.interview()));
    effects.addAll(step.effects());
    return new ScreenModel.Step(step.model().with(talk), effects);
  }

  /** What is typed at the question in sight and not yet given; a list of letters counts too. */
  private static Optional<Message.HalfTyped> typed(ScreenModel model) {
    Optional<Draft> board =
        model.top().screen() instanceof BoardScreen screen
            ? Optional.of(screen.line())
            : Optional.empty();
    return question(model)
        .flatMap(
            q ->
                board
                    .or(q::line)
                    .filter(d -> d.kind() != Draft.Kind.SECRET && !d.text().isBlank())
                    .map(d -> new Message.HalfTyped(fact(q), d.text())));
  }

  private static Optional<QuestionScreen> question(ScreenModel model) {
    return model.layers().get(0).screen() instanceof QuestionScreen question
        ? Optional.of(question)
        : Optional.empty();
  }

  private static String fact(QuestionScreen question) {
    return question.prompt().field().fact();
  }

  private static Optional<Answer> answer(ScreenModel model, String fact) {
    return model.talk().flatMap(t -> t.interview().answers().answer(fact));
  }
}
