package closehand.screen;

import closehand.screen.frame.Key;
import closehand.screen.view.Layout;
import closehand.screen.view.Spot;
import java.util.List;
import java.util.Optional;

/** Takes the keys that have names. */
final class Moving {
  private Moving() {}

  static ScreenModel.Step take(ScreenModel before, Key.Named key) {
    // A refusal stands beside one line; it was read, and does not move along.
    ScreenModel model = before.said().refusal() ? before.saying(Said.NOTHING) : before;
    return switch (key) {
      case SPACE -> space(model);
      case ENTER -> enter(model);
      case DOWN, TAB -> Acting.only(model.at(layout(model).next(spot(model))));
      case UP -> Acting.only(model.at(layout(model).previous(spot(model))));
      case PAGE_DOWN -> Acting.only(model.at(layout(model).pageDown(spot(model))));
      case PAGE_UP -> Acting.only(model.at(layout(model).pageUp(spot(model))));
      case HOME -> Acting.only(model.at(Spot.START));
      case END -> Acting.only(model.at(end(model)));
      case LEFT -> Pressing.beside(model, -1);
      case RIGHT -> Pressing.beside(model, 1);
      case BACKSPACE, DELETE -> shorten(model.saying(Said.NOTHING), key);
      case ESCAPE -> escape(model);
      case HELP -> Acting.on(model.saying(Said.NOTHING), new Act.Do(Command.HELP));
      case INTERRUPT -> Acting.on(model.saying(Said.NOTHING), new Act.Do(Command.LEAVE));
      default -> Acting.only(model);
    };
  }

  private static ScreenModel.Step escape(ScreenModel model) {
    if (StopKey.is(model, Key.Named.ESCAPE)) {
      return Acting.on(model.saying(Said.NOTHING), new Act.Do(Command.STOP));
    }
    return model.layers().size() > 1 ? back(model) : Acting.only(model);
  }

  private static Layout layout(ScreenModel model) {
    return Pressing.layout(model);
  }

  private static Spot spot(ScreenModel model) {
    return layout(model).settle(model.top().spot());
  }

  private static Spot end(ScreenModel model) {
    Layout layout = layout(model);
    Spot last = layout.settle(new Spot(Integer.MAX_VALUE - 1, Integer.MAX_VALUE));
    return layout.settle(last);
  }

  /** A blank where words are being typed; otherwise on to the next line. */
  private static ScreenModel.Step space(ScreenModel model) {
    Optional<Draft> draft = model.top().screen().draft();
    boolean writing =
        draft.filter(d -> d.kind() != Draft.Kind.FIGURES && !d.isEmpty()).isPresent()
            && chosen(model) instanceof Act.Accept;
    if (!writing) {
      return Acting.only(model.at(layout(model).next(spot(model))));
    }
    ScreenModel written = Pressing.written(model, draft.orElseThrow().plus(" "));
    return secret(draft)
        ? new ScreenModel.Step(written, List.of(new Effect.SecretTyped(" ")))
        : Acting.only(written);
  }

  /** Takes the chosen line once it is in sight; until then it shows more. */
  private static ScreenModel.Step enter(ScreenModel model) {
    Layout layout = layout(model);
    if (layout.isUnread(spot(model))) {
      return Acting.only(model.at(layout.next(spot(model))));
    }
    return Acting.on(model.saying(Said.NOTHING), chosen(model));
  }

  private static Act chosen(ScreenModel model) {
    List<Offer> offers = model.shown().offers();
    int chosen = spot(model).chosen();
    return chosen < offers.size() ? offers.get(chosen).act() : new Act.Close();
  }

  private static ScreenModel.Step shorten(ScreenModel model, Key.Named key) {
    Optional<Draft> draft = model.top().screen().draft().filter(d -> !d.isEmpty());
    if (draft.isPresent()) {
      ScreenModel written = Pressing.written(model, draft.get().minus());
      return secret(draft)
          ? new ScreenModel.Step(written, List.of(new Effect.SecretShortened()))
          : Acting.only(written);
    }
    return key == Key.Named.BACKSPACE ? back(model) : Acting.only(model);
  }

  private static boolean secret(Optional<Draft> draft) {
    return draft.filter(d -> d.kind() == Draft.Kind.SECRET).isPresent();
  }

  private static ScreenModel.Step back(ScreenModel model) {
    return Acting.on(model, model.top().screen().back());
  }
}
