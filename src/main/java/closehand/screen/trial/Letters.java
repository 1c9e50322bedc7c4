package closehand.screen.trial;

import java.util.List;

/** Words put together from a list: a group first, then a letter of it. */
final class Letters {
  private static final List<String> GROUPS =
      List.of("abcd", "efgh", "ijkl", "mnop", "qrst", "uvwx", "yz -");
  private static final int ERASE = 8;

  private Letters() {}

  /** The groups, or the letters of the group in sight. */
  static TrialPage.Builder of(State state) {
    TrialPage.Builder page = new TrialPage.Builder("Letters");
    page.strong("So far: " + (state.typed().isEmpty() ? "nothing" : state.typed())).gap();
    if (state.page() == State.Page.LETTERS) {
      for (int i = 0; i < GROUPS.size(); i++) {
        page.offer(i + 1, named(GROUPS.get(i)), new Doing.Go(State.Page.LETTER, i));
      }
      page.offer(ERASE, "Take the last one away", new Doing.Erase());
      return foot(page).offer(TrialPages.NOTHING, "Done", Doing.go(State.Page.CHECK));
    }
    String group = GROUPS.get(state.part());
    for (int i = 0; i < group.length(); i++) {
      String letter = group.substring(i, i + 1);
      page.offer(i + 1, named(letter), new Doing.Write(letter));
    }
    return foot(page).offer(TrialPages.NOTHING, "Back", Doing.go(State.Page.LETTERS));
  }

  private static TrialPage.Builder foot(TrialPage.Builder page) {
    return page.offer(
        TrialPages.STOP, "Stop: pain, or I have had enough", Doing.go(State.Page.SIGNS));
  }

  private static String named(String letters) {
    StringBuilder words = new StringBuilder();
    for (char letter : letters.toCharArray()) {
      words.append(words.isEmpty() ? "" : ", ");
      words.append(letter == ' ' ? "blank" : letter == '-' ? "hyphen" : String.valueOf(letter));
    }
    return words.toString();
  }
}
