package closehand.screen;

import closehand.screen.view.Block;
import closehand.screen.view.Content;
import java.util.ArrayList;
import java.util.List;

/** Puts the content of the screen in sight together with what came of the last key. */
final class Foot {
  private Foot() {}

  static Content content(ScreenModel model) {
    Shown shown = model.shown();
    if (model.said().refusal()) {
      int last = shown.offers().size() - 1;
      int chosen = Math.max(0, Math.min(model.top().spot().chosen(), last));
      shown = refused(shown, model.said().sentence(), chosen);
    }
    return shown.content(status(model), keys(model), model.settings().shared());
  }

  /** The same with the refusal right above the line with the mark, so that it cannot be missed. */
  private static Shown refused(Shown shown, String sentence, int chosen) {
    List<Block> blocks = new ArrayList<>();
    int stop = 0;
    for (Block block : shown.blocks()) {
      if (block.isStop() && stop++ == chosen) {
        blocks.add(Block.warning("Please note: " + sentence));
      }
      blocks.add(block);
    }
    return new Shown(shown.heading(), blocks, shown.offers(), shown.aside(), shown.begin());
  }

  private static List<String> status(ScreenModel model) {
    List<String> status = new ArrayList<>();
    model.talk().ifPresent(t -> status.addAll(t.trouble()));
    if (!model.said().refusal() && !model.said().sentence().isBlank()) {
      status.add(model.said().sentence().strip());
    }
    boolean question = model.top().screen() instanceof QuestionScreen;
    if (question && !model.settings().shared()) {
      status.add(String.join(" ", model.talk().orElseThrow().consultation().quietLine()));
    }
    return status;
  }

  private static List<Content.Hint> keys(ScreenModel model) {
    List<Content.Hint> keys = new ArrayList<>();
    Screen top = model.top().screen();
    if (top instanceof ReadingScreen read && read.kind() == ReadingScreen.Kind.MOMENT) {
      return keys;
    }
    // A passphrase may hold any character, also a blank.
    boolean spelling = top instanceof SecretScreen secret && secret.spells();
    keys.add(new Content.Hint(spelling ? "F1" : "?", "help"));
    StopKey.of(model).ifPresent(key -> keys.add(new Content.Hint(key, "stop", true)));
    keys.add(spelling ? new Content.Hint("Down", "next") : new Content.Hint("Space", "next"));
    keys.add(new Content.Hint("Enter", "take"));
    if (top instanceof QuestionScreen q
        && (q.draft().isEmpty()
            || q.draft().get().kind() == Draft.Kind.WORDS && q.draft().get().isEmpty())) {
      keys.add(new Content.Hint("0", "more"));
    }
    if (!top.equals(Menu.of(Menu.Kind.START))) {
      keys.add(new Content.Hint("Backspace", "back"));
    }
    return keys;
  }
}
