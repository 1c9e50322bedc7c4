package closehand.screen;

import closehand.screen.view.Block;
import java.util.Optional;

/**
 * A saved case that was found: what is to be done with it.
 *
 * @param name its name
 * @param found what is known of it
 */
record CaseScreen(String name, CaseBook.Found.Case found) implements Screen {
  @Override
  public Shown shown(ScreenModel model) {
    Shown.Builder screen = new Shown.Builder("A saved case");
    boolean first = true;
    for (String sentence : found.sentences()) {
      screen.add(first ? Block.strong(sentence) : Block.plain(sentence));
      first = false;
    }
    screen.gap();
    wish(screen, 1, Wish.GO_ON, "Go on", run(Wish.GO_ON));
    wish(screen, 2, Wish.LOOK, "Only look at it", run(Wish.LOOK));
    wish(screen, 3, Wish.DISCARD, "Discard it", new Act.Show(Menu.of(Menu.Kind.DISCARD)));
    wish(
        screen,
        4,
        Wish.REVIEW,
        "Review it: changes, warning signs and pain are asked again",
        run(Wish.REVIEW));
    wish(
        screen,
        5,
        Wish.SEAL,
        "Seal it with a passphrase from now on, and go on",
        new Act.Show(new SealScreen(Optional.empty())));
    return screen.offer(0, "Back", back()).build();
  }

  private void wish(Shown.Builder screen, int digit, Wish wish, String words, Act act) {
    if (found.wishes().contains(wish)) {
      screen.offer(digit, words, act);
    }
  }

  private static Act run(Wish wish) {
    return new Act.Run(new Effect.Take(wish));
  }

  @Override
  public Act back() {
    return new Act.Also(new Act.Close(), new Effect.PutBack());
  }

  /** Asks once more before a case is removed. */
  static Shown discarding() {
    Shown.Builder discard = new Shown.Builder("Discard a case");
    discard.add(Block.strong("Remove everything kept of this case on this machine?"));
    discard.add(Block.warning("Please note: nothing brings it back.")).gap();
    discard.offer(1, "No, keep it", new Act.Close());
    return discard.offer(2, "Yes, remove it", new Act.Run(new Effect.Take(Wish.DISCARD))).build();
  }
}
