package closehand.screen;

import closehand.screen.frame.Key;
import java.util.Optional;

/**
 * Which key stops on the screen in sight: 9, but where figures are typed the letter for it, and
 * where words are typed Escape. The line in the list stops as well, everywhere.
 */
final class StopKey {
  private static final String ESCAPE = "Esc";

  private StopKey() {}

  /** The key in a word; nothing before there is an interview, and where stopping is in sight. */
  static Optional<String> of(ScreenModel model) {
    Screen top = model.top().screen();
    if (model.talk().isEmpty() || top.equals(Menu.of(Menu.Kind.STOP))) {
      return Optional.empty();
    }
    Optional<Draft.Kind> typed = typed(top);
    if (typed.isEmpty()) {
      return Optional.of(Integer.toString(Answers.STOP));
    }
    return typed.get() == Draft.Kind.FIGURES && model.settings().letters()
        ? Optional.of(String.valueOf(model.settings().letter(Command.STOP)))
        : Optional.of(ESCAPE);
  }

  /** Whether this key stops here though it leads back elsewhere. */
  static boolean is(ScreenModel model, Key.Named key) {
    return key == Key.Named.ESCAPE && of(model).equals(Optional.of(ESCAPE));
  }

  /** What 9 writes here; nothing where it does not write. */
  private static Optional<Draft.Kind> typed(Screen top) {
    if (top instanceof BoardScreen board) {
      return Optional.of(board.line().kind()).filter(Draft.Kind.FIGURES::equals);
    }
    if (top instanceof SecretScreen secret) {
      return Optional.of(Draft.Kind.SECRET).filter(kind -> secret.spells());
    }
    return top.draft().filter(d -> d.kind() == Draft.Kind.FIGURES || !d.isEmpty()).map(Draft::kind);
  }
}
