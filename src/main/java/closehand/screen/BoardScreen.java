package closehand.screen;

import closehand.screen.view.Block;
import java.util.List;

/**
 * Figures or letters to choose from, for whoever types with two keys or with digits alone.
 *
 * @param line what has been put together
 * @param group the group of letters that is open; -1 for none
 */
record BoardScreen(Draft line, int group) implements Screen {
  private static final int NONE = -1;
  static final List<List<String>> GROUPS =
      List.of(
          List.of("a", "b", "c", "d", "e", "f", "g"),
          List.of("h", "i", "j", "k", "l", "m", "n"),
          List.of("o", "p", "q", "r", "s", "t", "u"),
          List.of("v", "w", "x", "y", "z", "'", "-"),
          List.of("1", "2", "3", "4", "5"),
          List.of("6", "7", "8", "9", "0"),
          List.of(" ", ",", ".", "?"));

  static BoardScreen figures(Draft line) {
    return new BoardScreen(line, NONE);
  }

  static BoardScreen letters(Draft line) {
    return new BoardScreen(line, NONE);
  }

  @Override
  public Shown shown(ScreenModel model) {
    Shown.Builder board = new Shown.Builder("Choose one after the other");
    board.add(Block.strong("So far: " + soFar() + "."));
    board.gap();
    if (line.kind() == Draft.Kind.FIGURES) {
      figures(board);
    } else if (group == NONE) {
      groups(board);
    } else {
      letters(board);
    }
    return board.build();
  }

  private boolean isSecret() {
    return line.kind() == Draft.Kind.SECRET;
  }

  private String soFar() {
    return line.isEmpty() ? "nothing" : isSecret() ? "typed, not shown" : line.text();
  }

  private void figures(Shown.Builder board) {
    for (int digit = 0; digit <= 9; digit++) {
      board.offer(digit, "figure " + digit, turn(String.valueOf(digit)));
    }
    if (line.decimals() > 0) {
      board.offer(Offer.plain("point", turn(".")));
    }
    board.gap();
    board.offer(Offer.plain("Take back the last one", shorter()));
    board.offer(Offer.plain("Done", new Act.Accept()));
    board.offer(Offer.plain("Back, and change nothing", new Act.Close()));
  }

  private void groups(Shown.Builder board) {
    int digit = 0;
    for (List<String> some : GROUPS) {
      int open = digit;
      board.offer(
          ++digit,
          some.contains(" ") ? "space , . ? and taking back" : String.join(" ", some),
          new Act.Swap(new BoardScreen(line, open)));
    }
    board.gap();
    board.offer(8, "Done", new Act.Accept());
    board.offer(0, "Back, and change nothing", unchanged());
  }

  private Act unchanged() {
    return isSecret()
        ? new Act.Also(new Act.Close(), new Effect.SecretForgotten())
        : new Act.Close();
  }

  private void letters(Shown.Builder board) {
    int digit = 0;
    for (String letter : GROUPS.get(group)) {
      board.offer(++digit, letter.equals(" ") ? "space" : letter, plus(letter));
    }
    if (GROUPS.get(group).contains(" ")) {
      board.offer(++digit, "Take back the last one", minus());
    }
    board.gap();
    board.offer(0, "Other letters", swap(line));
  }

  /** The line with one more character. */
  Act plus(String character) {
    Act longer = swap(line.plus(character));
    return isSecret() ? new Act.Also(longer, new Effect.SecretTyped(character)) : longer;
  }

  private Act minus() {
    Act shorter = swap(line.minus());
    return isSecret() ? new Act.Also(shorter, new Effect.SecretShortened()) : shorter;
  }

  private Act turn(String character) {
    return new Act.Turn(new BoardScreen(line.plus(character), group));
  }

  private Act shorter() {
    return new Act.Turn(new BoardScreen(line.minus(), group));
  }

  private static Act swap(Draft next) {
    return new Act.Swap(new BoardScreen(next, NONE));
  }

  @Override
  public Act back() {
    return group == NONE ? unchanged() : swap(line);
  }
}
