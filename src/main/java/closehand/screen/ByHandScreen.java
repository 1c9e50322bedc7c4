package closehand.screen;

import closehand.report.ByHand;
import closehand.report.ByHandPage;
import java.util.List;
import java.util.Optional;

/**
 * A control plan being changed by hand, one page and one choice at a time.
 *
 * @param byHand where that stands
 * @param line the line being typed, where one is asked for
 */
record ByHandScreen(ByHand byHand, Draft line) implements Screen {
  private static final int BACK = 0;

  static ByHandScreen of(ByHand byHand) {
    return new ByHandScreen(byHand, Draft.words());
  }

  @Override
  public Shown shown(ScreenModel model) {
    ByHandPage page = byHand.page();
    Shown.Builder screen = new Shown.Builder(page.heading());
    List<String> lines =
        model.settings().shared() ? ReadingScreen.bare(page.lines()) : page.lines();
    Paragraphs.of(lines).forEach(screen::add);
    screen.gap();
    boolean typing = !page.asked().isEmpty();
    if (typing) {
      screen.field(page.asked(), line.text()).gap();
      screen.offer(
          line.isEmpty() ? 1 : -1,
          "Choose the letters from a list",
          new Act.Show(BoardScreen.letters(line)));
    }
    for (ByHandPage.Choice choice : page.choices()) {
      int digit = typing && !line.isEmpty() ? -1 : choice.digit();
      screen.offer(digit, choice.words(), taking(choice.digit()));
    }
    return screen.build();
  }

  private Act taking(int digit) {
    return new Act.Run(new Effect.ChangeByHand(byHand, digit, ""));
  }

  @Override
  public Act back() {
    return taking(BACK);
  }

  @Override
  public Optional<Draft> draft() {
    return byHand.page().asked().isEmpty() ? Optional.empty() : Optional.of(line);
  }

  @Override
  public Screen typing(Draft draft) {
    return new ByHandScreen(byHand, draft);
  }

  @Override
  public Act accept(ScreenModel model) {
    String words = line.text().strip();
    return words.isEmpty()
        ? new Act.Say("A few words are needed, or 0 goes back.")
        : new Act.Run(new Effect.ChangeByHand(byHand, BACK, words));
  }
}
