package closehand.screen;

import closehand.bank.FactType;
import closehand.bank.Field;
import closehand.interview.Answer;
import closehand.interview.Message;
import closehand.interview.NamedList;
import closehand.interview.Prompt;
import closehand.interview.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Carries out what was taken. */
final class Acting {
  private Acting() {}

  static ScreenModel.Step on(ScreenModel model, Act act) {
    if (act instanceof Act.Give give) {
      return give(model, give);
    }
    if (act instanceof Act.Absent absent) {
      return absent(model, absent.reason());
    }
    if (act instanceof Act.Send send) {
      return talking(model, () -> Leading.send(model, send.message(), sentence(send.message())));
    }
    if (act instanceof Act.AnswerAgain again) {
      return answerAgain(model, again.fact());
    }
    if (act instanceof Act.Correct correct) {
      return talking(model, () -> Correcting.at(model, correct.fact()));
    }
    if (act instanceof Act.GoOn) {
      return talking(model, () -> Steering.goOn(model));
    }
    if (act instanceof Act.Undo) {
      return talking(model, () -> Leading.undo(model));
    }
    if (act instanceof Act.Accept) {
      return accept(model);
    }
    if (act instanceof Act.Do command) {
      return Commanding.on(model, command.command());
    }
    return around(model, act);
  }

  private static ScreenModel.Step around(ScreenModel model, Act act) {
    if (act instanceof Act.Adjust adjust) {
      return adjust(model, adjust.settings());
    }
    if (act instanceof Act.Source source) {
      return source(model, source);
    }
    if (act instanceof Act.Also also) {
      ScreenModel.Step first = on(model, also.first());
      List<Effect> effects = new ArrayList<>(first.effects());
      effects.add(also.then());
      return new ScreenModel.Step(first.model(), effects);
    }
    if (act instanceof Act.Run run) {
      return new ScreenModel.Step(model, List.of(run.effect()));
    }
    if (act instanceof Act.Explain explain) {
      return talking(model, () -> only(explained(model, explain.id())));
    }
    if (act instanceof Act.Say say) {
      return only(model.saying(Said.refused(say.sentence())));
    }
    return only(piling(model, act));
  }

  private static ScreenModel piling(ScreenModel model, Act act) {
    if (act instanceof Act.Show show) {
      return model.pushing(show.screen());
    }
    if (act instanceof Act.Swap swap) {
      return model.swapping(swap.screen());
    }
    if (act instanceof Act.Turn turn) {
      return model.replacing(new Layer(turn.screen(), model.top().spot()));
    }
    if (act instanceof Act.Close) {
      return model.closing();
    }
    if (act instanceof Act.Return) {
      return Leading.toBase(model);
    }
    throw new IllegalArgumentException("unknown act " + act.getClass().getSimpleName());
  }

  static ScreenModel.Step only(ScreenModel model) {
    return new ScreenModel.Step(model, List.of());
  }

  /** Acts that need an interview do nothing before there is one. */
  static ScreenModel.Step talking(
      ScreenModel model, java.util.function.Supplier<ScreenModel.Step> act) {
    return model.talk().isPresent()
        ? act.get()
        : only(model.saying(Said.that("That works once an interview has begun.")));
  }

  private static Optional<Prompt> prompt(ScreenModel model) {
    return model.talk().flatMap(Talk::prompt);
  }

  private static ScreenModel.Step give(ScreenModel model, Act.Give give) {
    Optional<Prompt> prompt = prompt(model);
    if (prompt.isEmpty()) {
      return only(model);
    }
    Field field = prompt.get().field();
    boolean free = field.type() instanceof FactType.Words;
    Talk talk = model.talk().orElseThrow();
    Map<String, String> names = talk.advisor().names(talk.interview(), field);
    String given =
        names.isEmpty()
            ? Wording.of(field.type(), give.value())
            : new NamedList(names).words(give.value());
    String words = free ? "" : ": " + given;
    Message message = new Message.Give(give.value(), talk.source(field));
    return Leading.send(model, message, "Noted" + words + ".");
  }

  private static ScreenModel.Step absent(ScreenModel model, Answer.Reason reason) {
    Optional<Prompt> prompt = prompt(model);
    if (prompt.isEmpty()) {
      return only(model.saying(Said.that("There is no question to answer at the moment.")));
    }
    Message message =
        new Message.NoAnswer(reason, model.talk().orElseThrow().source(prompt.get().field()));
    return Leading.send(model, message, "Noted: " + Wording.of(reason) + ".");
  }

  private static String sentence(Message message) {
    if (message instanceof Message.Note) {
      return "Noted.";
    }
    if (message instanceof Message.Conduct conduct) {
      return "Who asks from here on: " + People.asking(conduct.asker()) + ".";
    }
    if (message instanceof Message.TakeRoute take) {
      return People.route(take.route()) + ".";
    }
    return message instanceof Message.Lower
        ? "Lowered. The page will say so, with your name and reason."
        : "";
  }

  private static ScreenModel.Step answerAgain(ScreenModel model, String fact) {
    return talking(
        model,
        () -> {
          ScreenModel.Step step = Leading.send(model, new Message.JumpTo(fact), "");
          Talk talk = step.model().talk().orElseThrow().answering(true);
          return new ScreenModel.Step(Leading.toBase(step.model()).with(talk), step.effects());
        });
  }

  /** The line on this screen, or the one put together for the screen below. */
  private static ScreenModel.Step accept(ScreenModel model) {
    Screen top = model.top().screen();
    if (top instanceof BoardScreen board) {
      ScreenModel below = model.closing();
      Screen typed = below.top().screen().typing(board.line());
      return on(below.replacing(new Layer(typed, below.top().spot())), typed.accept(below));
    }
    return on(model, top.accept(model));
  }

  private static ScreenModel explained(ScreenModel model, String id) {
    Talk talk = model.talk().orElseThrow();
    return model.told(
        "Why, and what would change it", talk.advisor().explain(talk.interview(), id));
  }

  private static ScreenModel.Step adjust(ScreenModel model, Settings settings) {
    ScreenModel next = model.with(settings);
    if (next.top().screen() instanceof LettersScreen letters) {
      next = next.replacing(next.fresh(new LettersScreen(letters.page(), Optional.empty())));
    }
    return new ScreenModel.Step(next, List.of(new Effect.KeepSettings(settings)));
  }

  private static ScreenModel.Step source(ScreenModel model, Act.Source source) {
    return talking(
        model,
        () -> {
          Talk talk = model.talk().orElseThrow().from(source.by(), source.how());
          String sentence =
              "From here on: "
                  + talk.by().map(People::answering).orElse("as before")
                  + ", "
                  + talk.how()
                      .map(People::known)
                      .orElse("as before")
                      .toLowerCase(java.util.Locale.ROOT)
                  + ".";
          return only(Leading.toBase(model.with(talk)).saying(Said.that(sentence)));
        });
  }
}
