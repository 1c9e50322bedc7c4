package closehand.screen;

import closehand.bank.FactType;
import closehand.interview.Message;
import closehand.interview.PlainText;
import closehand.screen.frame.Key;
import closehand.screen.frame.ScreenSize;
import closehand.screen.view.Layout;
import closehand.screen.view.Spot;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Takes keys: moves, types, or takes what is offered. */
final class Pressing {
  private static final String HELP = "?";

  /** The digit that goes on where more stands below and no line has it. */
  private static final int READ_ON = 8;

  private static final Said IN_SIGHT = Said.that("The same key again or Enter takes it.");

  private Pressing() {}

  static ScreenModel.Step take(ScreenModel model, Key key) {
    if (key instanceof Key.Resized resized) {
      return Acting.only(resized(model, resized.size()));
    }
    if (key instanceof Key.Closed) {
      return new ScreenModel.Step(model, List.of(new Effect.Leave(Effect.Ending.CLOSED)));
    }
    if (key instanceof Key.Named named) {
      return Moving.take(model, named);
    }
    ScreenModel quiet = model.saying(Said.NOTHING);
    if (key instanceof Key.Typed typed) {
      return typed(model, quiet, typed);
    }
    if (key instanceof Key.Pasted pasted) {
      return pasted(quiet, pasted.text());
    }
    return Acting.only(
        model.saying(
            Said.that(
                key instanceof Key.Dropped dropped
                    ? dropped(dropped.why())
                    : "That key has no meaning here. ? shows the keys.")));
  }

  private static String dropped(Key.Dropped.Why why) {
    return switch (why) {
      case HELD -> "A key that is held down counts once.";
      case BOUNCED -> "A key that comes right after another does not count.";
      case MEANWHILE -> "Keys pressed meanwhile did not count.";
    };
  }

  private static ScreenModel resized(ScreenModel model, ScreenSize size) {
    Layout before = layout(model);
    ScreenModel next = model.with(size);
    return next.at(layout(next).moved(model.top().spot(), before));
  }

  /** With the line with the mark in sight, and what is said above it. */
  static ScreenModel revealed(ScreenModel model) {
    return model.at(layout(model).revealed(model.top().spot()));
  }

  static Layout layout(ScreenModel model) {
    return Layout.of(Foot.content(model), model.size(), model.glyphs());
  }

  /**
   * What comes of a character; what is in sight is judged by what stood there, the last words too.
   */
  private static ScreenModel.Step typed(ScreenModel seen, ScreenModel model, Key.Typed key) {
    Screen top = model.top().screen();
    if (key.text().equals(HELP) && !spells(top)) {
      return Acting.on(model, new Act.Do(Command.HELP));
    }
    if (top instanceof LettersScreen letters
        && letters.waiting().isPresent()
        && isLetter(key.text())) {
      char letter = Character.toLowerCase(key.text().charAt(0));
      return Acting.on(model, letters.typed(letter, model.settings()));
    }
    if (top instanceof BoardScreen board
        && board.line().kind() != Draft.Kind.FIGURES
        && key.digit() < 0) {
      return Acting.on(model, board.plus(key.text()));
    }
    Optional<Draft> draft = top.draft();
    if (draft.isPresent()) {
      return writing(seen, model, draft.get(), key);
    }
    return key.digit() >= 0 ? digit(seen, model, key.digit()) : letter(seen, model, key.text());
  }

  /** Whether every character that comes now belongs to a passphrase. */
  private static boolean spells(Screen top) {
    return top instanceof SecretScreen secret && secret.spells();
  }

  private static boolean isLetter(String text) {
    return text.length() == 1
        && text.charAt(0) > ' '
        && text.charAt(0) < 0x7f
        && !Character.isDigit(text.charAt(0));
  }

  private static ScreenModel.Step writing(
      ScreenModel seen, ScreenModel model, Draft draft, Key.Typed key) {
    boolean figures = draft.kind() == Draft.Kind.FIGURES;
    boolean figure = key.digit() >= 0 || key.text().equals(".") || key.text().equals(",");
    if (figures && !figure) {
      return letter(seen, model, key.text());
    }
    if (!figures && draft.isEmpty() && chooses(model, key.digit())) {
      return digit(seen, model, key.digit());
    }
    Draft next = draft.plus(key.text());
    if (next.equals(draft)) {
      return Acting.only(model.saying(Said.refused("No more has a place here.")));
    }
    ScreenModel written = written(model, next);
    if (draft.kind() == Draft.Kind.SECRET) {
      return secretly(written, key.text());
    }
    boolean full = figures && next.isFull() && written.top().screen() instanceof QuestionScreen;
    return full ? checking(written) : Acting.only(written);
  }

  /**
   * Whether a digit means a line, or skip or stop, where words are typed: any other figure begins
   * the words.
   */
  private static boolean chooses(ScreenModel model, int digit) {
    return digit >= 0
        && !spells(model.top().screen())
        && (digit == Answers.SKIP
            || digit == Answers.STOP
            || model.shown().offers().stream().anyMatch(o -> o.digit() == digit));
  }

  private static ScreenModel.Step secretly(ScreenModel written, String characters) {
    return new ScreenModel.Step(written, List.of(new Effect.SecretTyped(characters)));
  }

  /** A number that fills its line is asked once more, so that digits alone are enough. */
  private static ScreenModel.Step checking(ScreenModel model) {
    QuestionScreen question = (QuestionScreen) model.top().screen();
    Act act = question.accept(model);
    if (act instanceof Act.Give give) {
      return Acting.only(
          model.pushing(new CheckNumberScreen(question.prompt().field(), give.value())));
    }
    return Acting.on(written(model, question.draft().orElseThrow().with("")), act);
  }

  /** The typed line changed; the cursor stands on it. */
  static ScreenModel written(ScreenModel model, Draft draft) {
    Screen next = model.top().screen().typing(draft);
    ScreenModel typed = model.replacing(new Layer(next, model.top().spot()));
    List<Offer> offers = typed.shown().offers();
    for (int i = 0; i < offers.size(); i++) {
      if (offers.get(i).act() instanceof Act.Accept) {
        Spot spot = new Spot(i, model.top().spot().top());
        return typed.at(layout(typed).revealed(spot));
      }
    }
    return typed;
  }

  private static ScreenModel.Step digit(ScreenModel seen, ScreenModel model, int digit) {
    List<Offer> offers = model.shown().offers();
    for (int i = 0; i < offers.size(); i++) {
      if (offers.get(i).digit() == digit) {
        return line(seen, model, i, offers.get(i));
      }
    }
    Spot below = layout(seen).pageDown(model.top().spot());
    if (digit == READ_ON && !below.equals(model.top().spot())) {
      return Acting.only(model.at(below));
    }
    return digit == Answers.STOP && model.talk().isPresent()
        ? Acting.on(model, new Act.Do(Command.STOP))
        : Acting.only(model.saying(Said.that("There is no line " + digit + " here.")));
  }

  /**
   * Takes a line that is in sight. One that is not comes into sight first, with the mark on it, so
   * that nobody takes what they cannot see.
   */
  private static ScreenModel.Step line(ScreenModel seen, ScreenModel model, int stop, Offer offer) {
    Spot now = model.top().spot();
    boolean stops = offer.digit() == Answers.STOP && offer.act().equals(new Act.Do(Command.STOP));
    if (stops || leadsAway(model, offer) && !model.settings().needsEnter()) {
      return Acting.on(model, offer.act());
    }
    boolean inSight = layout(seen).isInSight(now, stop);
    if (!inSight && model.top().screen().isReadFirst()) {
      ScreenModel told = model.saying(Said.that("Please read on first."));
      return Acting.only(told.at(layout(seen).pageDown(now)));
    }
    if (model.settings().needsEnter()) {
      return Acting.only(model.at(layout(model).bringing(now, stop)));
    }
    if (!inSight) {
      ScreenModel told = model.saying(IN_SIGHT);
      return Acting.only(told.at(layout(told).bringing(now, stop)));
    }
    return Acting.on(model.at(new Spot(stop, now.top())), offer.act());
  }

  /** Whether 0 leads away from a screen for a while, or back; it takes nothing. */
  private static boolean leadsAway(ScreenModel model, Offer offer) {
    Act act = offer.act();
    return offer.digit() == Answers.SKIP
        && !model.top().screen().isReadFirst()
        && !(act instanceof Act.Run || act instanceof Act.Turn);
  }

  private static ScreenModel.Step letter(ScreenModel seen, ScreenModel model, String text) {
    OptionalInt answer = yesOrNo(model, text);
    if (answer.isPresent()) {
      return digit(seen, model, answer.getAsInt());
    }
    Optional<Command> command = model.settings().command(text);
    return command.isPresent()
        ? Acting.on(model, new Act.Do(command.get()))
        : Acting.only(model.saying(Said.that("That key has no meaning here. ? shows the keys.")));
  }

  /** At a yes-or-no question y and n are the first and second answer, as in the line face. */
  private static OptionalInt yesOrNo(ScreenModel model, String text) {
    boolean applies =
        model.settings().letters()
            && !model.settings().needsEnter()
            && model.top().screen() instanceof QuestionScreen q
            && q.prompt().field().type() instanceof FactType.YesNo;
    if (applies && (text.equalsIgnoreCase("y") || text.equalsIgnoreCase("n"))) {
      return OptionalInt.of(text.equalsIgnoreCase("y") ? 1 : 2);
    }
    return OptionalInt.empty();
  }

  /** Pasted text goes where words are typed and nowhere else; it never takes anything. */
  private static ScreenModel.Step pasted(ScreenModel model, String text) {
    Optional<Draft> draft = model.top().screen().draft();
    if (draft.isEmpty() || draft.get().kind() == Draft.Kind.FIGURES) {
      return Acting.only(model.saying(Said.that("Pasted text is not taken as an answer here.")));
    }
    String plain = PlainText.of(text);
    Draft next = draft.get().plus(plain);
    if (next.equals(draft.get())) {
      return Acting.only(model.saying(Said.refused("That is too long to paste here.")));
    }
    return next.kind() == Draft.Kind.SECRET
        ? secretly(written(model, next), plain)
        : Acting.only(written(model, next));
  }

  static ScreenModel.Step beside(ScreenModel model, int step) {
    if (model.top().screen() instanceof QuestionScreen q) {
      Optional<String> fact = Grid.beside(q.grid(), q.prompt().field().fact(), step);
      if (fact.isPresent()) {
        return Acting.on(model, new Act.Send(new Message.JumpTo(fact.get())));
      }
    }
    Layout layout = layout(model);
    Spot spot = model.top().spot();
    return Acting.only(model.at(step > 0 ? layout.pageDown(spot) : layout.pageUp(spot)));
  }
}
