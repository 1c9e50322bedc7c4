package closehand.screen;

import closehand.screen.view.Block;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Every control with how it stands; taking one tells why, and what would change it.
 *
 * @param page which page of the list
 */
record ExplainScreen(int page) implements Screen {
  private static final int MORE = 8;

  @Override
  public Shown shown(ScreenModel model) {
    Talk talk = model.talk().orElseThrow();
    Shown.Builder screen = new Shown.Builder("Why, and what would change it");
    screen.add(Block.strong("Which control?")).gap();
    List<Map.Entry<String, String>> all =
        new ArrayList<>(talk.advisor().explainable(talk.interview()).entrySet());
    int digit = 0;
    for (Map.Entry<String, String> one : Pages.entries(all, page, Pages.OF_SEVEN)) {
      screen.offer(++digit, one.getValue(), new Act.Explain(one.getKey()));
    }
    Pages.turn(
        screen,
        MORE,
        all.size(),
        page,
        Pages.OF_SEVEN,
        next -> new Act.Swap(new ExplainScreen(next)));
    return screen.gap().offer(0, "Back", new Act.Close()).build();
  }
}
