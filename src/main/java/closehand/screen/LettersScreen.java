package closehand.screen;

import closehand.screen.view.Block;
import java.util.List;
import java.util.Optional;

/**
 * Where letters are changed.
 *
 * @param page which page of the commands
 * @param waiting the command whose new letter is to be typed next, if any
 */
record LettersScreen(int page, Optional<Command> waiting) implements Screen {
  /** Letters on one page: the digits behind them put all back and turn the page; 9 stays stop. */
  private static final int A_PAGE = 6;

  @Override
  public Shown shown(ScreenModel model) {
    Shown.Builder letters = new Shown.Builder("Letters");
    if (waiting.isPresent()) {
      letters.add(Block.strong("Type the letter for: " + waiting.get().meaning() + "."));
      letters.gap();
      return letters.offer(0, "Leave it as it is", turn(page)).build();
    }
    letters.add(Block.strong("Which letter do you want to change?")).gap();
    List<Command> all = List.of(Command.values());
    int digit = 0;
    for (Command command : Pages.entries(all, page, A_PAGE)) {
      letters.offer(
          ++digit,
          model.settings().letter(command) + ": " + command.meaning(),
          new Act.Turn(new LettersScreen(page, Optional.of(command))));
    }
    letters.offer(
        A_PAGE + 1,
        "All as they were at first",
        new Act.Adjust(model.settings().withUsualLetters()));
    Pages.turn(letters, A_PAGE + 2, all.size(), page, A_PAGE, LettersScreen::turn);
    return letters.offer(0, "Back", new Act.Close()).build();
  }

  private static Act turn(int page) {
    return new Act.Swap(new LettersScreen(page, Optional.empty()));
  }

  /** What a typed letter does while one is waited for. */
  Act typed(char letter, Settings settings) {
    return new Act.Adjust(settings.with(waiting.orElseThrow(), letter));
  }
}
