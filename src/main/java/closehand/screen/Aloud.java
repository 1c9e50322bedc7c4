package closehand.screen;

import closehand.screen.view.Block;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What is told of screens outside the questions to whoever follows: what stands there, with the
 * digits that take it. Of the questions themselves, and of what is read beside them, the line
 * face's own words are told instead. What is typed is never told, nor words that are shown only
 * once.
 */
final class Aloud {
  private Aloud() {}

  /** A screen as far as it is news: without what is being typed on it. */
  record Place(Screen screen, Settings settings) {
    static Place of(ScreenModel model) {
      Screen top = model.top().screen();
      return new Place(top.draft().map(d -> top.typing(d.with(""))).orElse(top), model.settings());
    }
  }

  /** What is told of the screen in sight; nothing where others tell it. */
  static Optional<Effect> of(ScreenModel model) {
    Screen top = model.top().screen();
    if (top instanceof ReadingScreen read && read.kind() == ReadingScreen.Kind.SEALED) {
      String words = "The passphrase stands on the screen. It is not written down here.";
      return Optional.of(new Effect.Came(List.of(new Effect.Came.Part("", words))));
    }
    return isTold(top) ? Optional.of(new Effect.Came(parts(model.shown()))) : Optional.empty();
  }

  private static boolean isTold(Screen screen) {
    if (screen instanceof Menu menu) {
      return switch (menu.kind()) {
        case SKIP, MORE, FINISHED -> false;
        default -> true;
      };
    }
    if (screen instanceof ReadingScreen read) {
      return switch (read.kind()) {
        case FIRST, LINES, ENOUGH -> true;
        default -> false;
      };
    }
    return screen instanceof SealScreen
        || screen instanceof CaseScreen
        || screen instanceof SecretScreen
        || screen instanceof LettersScreen
        || screen instanceof TextScreen
        || screen instanceof ExplainScreen
        || screen instanceof OverviewScreen overview && overview.isPart();
  }

  private static List<Effect.Came.Part> parts(Shown shown) {
    List<Effect.Came.Part> parts = new ArrayList<>();
    for (Block block : shown.blocks()) {
      if (block instanceof Block.Prose prose) {
        parts.add(new Effect.Came.Part("", prose.text()));
      } else if (block instanceof Block.Laid laid && !laid.line().isBlank()) {
        parts.add(new Effect.Came.Part("", laid.line().strip()));
      } else if (block instanceof Block.Item item) {
        String mark = item.mark().isEmpty() ? "-" : item.mark();
        parts.add(new Effect.Came.Part(mark, (item.words() + " " + item.word()).strip()));
      }
    }
    return parts;
  }
}
