package closehand.screen;

import closehand.interview.Answer;
import closehand.interview.Message;
import java.util.List;

/** What each command does. */
final class Commanding {
  private Commanding() {}

  static ScreenModel.Step on(ScreenModel model, Command command) {
    return switch (command) {
      case HELP -> told(show(model, ReadingScreen.help()), command);
      case SETTINGS -> show(model, Menu.of(Menu.Kind.SETTINGS));
      case SHARED -> shared(model);
      case LEAVE -> show(model, Menu.of(Menu.Kind.LEAVE));
      default -> Acting.talking(model, () -> inTalk(model, command));
    };
  }

  private static ScreenModel.Step inTalk(ScreenModel model, Command command) {
    Talk talk = model.talk().orElseThrow();
    if (model.waits() && passesBy(command)) {
      return Acting.only(model.saying(readFirst(model)));
    }
    if (command == Command.BACK && isAway(model)) {
      return Acting.on(model, model.top().screen().back());
    }
    if (isNoAnswer(command) && !atQuestion(model) || command == Command.UNDO && isAway(model)) {
      return Acting.only(model.saying(Said.that("That works at a question. Backspace goes back.")));
    }
    return switch (command) {
      case UNKNOWN -> absent(model, Answer.Reason.UNKNOWN, 0);
      case DECLINE -> absent(model, Answer.Reason.DECLINED, 1);
      case NOT_APPLICABLE -> absent(model, Answer.Reason.NOT_APPLICABLE, 2);
      case LATER -> absent(model, Answer.Reason.LATER, 3);
      case BACK -> Acting.on(model, new Act.Send(new Message.Back()));
      case UNDO -> Acting.on(model, new Act.Undo());
      case OVERVIEW, JUMP -> told(show(model, OverviewScreen.at(talk.interview())), command);
      case MEASURE -> measure(model, talk);
      case NOTE -> show(model, TextScreen.note());
      case WHO -> show(model, Menu.of(Menu.Kind.WHO_ANSWERS));
      case SO_FAR -> told(show(model, ReadingScreen.soFar(talk)), command);
      case EXPLAIN -> show(model, ExplainScreen.of(talk));
      case PLAN -> plan(model, talk);
      case PAGE -> told(show(model, ReadingScreen.page(talk)), command);
      case LOWER -> show(model, Menu.of(Menu.Kind.LOWER));
      case ASKER -> show(model, Menu.of(Menu.Kind.CONDUCT));
      default -> show(model, Menu.of(Menu.Kind.STOP));
    };
  }

  /** Whether a command would leave a notice behind that was not read. */
  private static boolean passesBy(Command command) {
    return switch (command) {
      case BACK, OVERVIEW, JUMP, MEASURE, NOTE, WHO, ASKER -> true;
      default -> isNoAnswer(command);
    };
  }

  private static Said readFirst(ScreenModel model) {
    return Said.that(
        model.top().screen().isReadFirst()
            ? "Please read this first, and take one line."
            : "Something waits to be read first. Backspace goes back to it.");
  }

  /** Whether something is read or chosen that has its place to itself, away from the question. */
  private static boolean isAway(ScreenModel model) {
    Screen top = model.top().screen();
    return model.layers().size() > 1
        && !(top instanceof NoticeScreen)
        && !top.equals(Menu.of(Menu.Kind.SKIP))
        && !top.equals(Menu.of(Menu.Kind.MORE));
  }

  private static boolean isNoAnswer(Command command) {
    return switch (command) {
      case UNKNOWN, DECLINE, NOT_APPLICABLE, LATER -> true;
      default -> false;
    };
  }

  /** A question that is not in sight is not answered. */
  private static boolean atQuestion(ScreenModel model) {
    Screen top = model.top().screen();
    return top instanceof QuestionScreen || top.equals(Menu.of(Menu.Kind.SKIP));
  }

  private static ScreenModel.Step measure(ScreenModel model, Talk talk) {
    return talk.task()
        .map(task -> Acting.on(model, new Act.Send(task)))
        .orElseGet(() -> Acting.only(model.saying(Said.that("No task belongs to this question."))));
  }

  /** Where answers need Enter, a letter only moves to the line on the list. */
  private static ScreenModel.Step absent(ScreenModel model, Answer.Reason reason, int line) {
    if (!model.settings().needsEnter()) {
      return Acting.on(model, new Act.Absent(reason));
    }
    ScreenModel shown = model.pushing(Menu.of(Menu.Kind.SKIP));
    return Acting.only(shown.at(new closehand.screen.view.Spot(line, 0)));
  }

  private static ScreenModel.Step shared(ScreenModel model) {
    boolean on = !model.settings().shared();
    ScreenModel.Step step = Acting.on(model, new Act.Adjust(model.settings().withShared(on)));
    return new ScreenModel.Step(
        step.model().saying(Said.that(on ? "Shared view is on." : "Shared view is off.")),
        step.effects());
  }

  /** With word to whoever follows, once there is an interview. */
  private static ScreenModel.Step told(ScreenModel.Step step, Command command) {
    List<String> lines =
        step.model().top().screen() instanceof ReadingScreen read ? read.lines() : List.of();
    return step.model()
        .talk()
        .map(t -> new Effect.Shown(t.interview(), command, lines))
        .map(e -> new ScreenModel.Step(step.model(), List.of(e)))
        .orElse(step);
  }

  private static ScreenModel.Step plan(ScreenModel model, Talk talk) {
    boolean there =
        model.top().screen() instanceof ReadingScreen read
            && read.kind() == ReadingScreen.Kind.PLAN;
    return there
        ? Acting.only(model)
        : new ScreenModel.Step(
            model, List.of(new Effect.WorkOutPlan(talk.interview(), /* load= */ false)));
  }

  /** A screen that is in sight already is not put on top of itself. */
  private static ScreenModel.Step show(ScreenModel model, Screen screen) {
    return Acting.only(model.top().screen().equals(screen) ? model : model.pushing(screen));
  }
}
