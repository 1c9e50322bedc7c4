package closehand.screen;

import closehand.screen.view.Block;
import java.util.List;
import java.util.Map;

/**
 * Every control with how it stands; taking one tells why, and what would change it.
 *
 * @param controls id and words of each
 * @param page which page of the list
 */
record ExplainScreen(List<Map.Entry<String, String>> controls, int page) implements Screen {
  private static final int MORE = 8;

  ExplainScreen {
    controls = List.copyOf(controls);
  }

  static ExplainScreen of(Talk talk) {
    Map<String, String> all = talk.advisor().explainable(talk.interview());
    return new ExplainScreen(
        all.entrySet().stream().map(e -> Map.entry(e.getKey(), e.getValue())).toList(), 0);
  }

  @Override
  public Shown shown(ScreenModel model) {
    Shown.Builder screen = new Shown.Builder("Why, and what would change it");
    screen.add(Block.strong("Which control?")).gap();
    int digit = 0;
    for (Map.Entry<String, String> one : Pages.entries(controls, page, Pages.OF_SEVEN)) {
      screen.offer(++digit, one.getValue(), new Act.Explain(one.getKey()));
    }
    Pages.turn(
        screen,
        MORE,
        controls.size(),
        page,
        Pages.OF_SEVEN,
        next -> new Act.Swap(new ExplainScreen(controls, next)));
    return screen.gap().offer(0, "Back", new Act.Close()).build();
  }
}
