package closehand.report;

import closehand.report.ByHandPage.Choice;
import closehand.report.ByHandPage.Move;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;

/** The choices of one page, each with a digit of its own: 1 to 7, 8 for more, 0 for back. */
final class ByHandChoices {
  private static final int PER_PAGE = 7;
  private static final int MORE = 8;

  private final List<Choice> choices = new ArrayList<>();
  private int last;

  /** An entry of a long list. */
  record Entry(String words, ByHandStep step) {}

  List<Choice> list() {
    return choices;
  }

  void add(int digit, String words, Move move) {
    choices.add(new Choice(digit, words, move));
    last = Math.max(last, digit);
  }

  /** With the next digit. */
  void next(String words, Move move) {
    add(last + 1, words, move);
  }

  void to(String words, ByHandStep step) {
    next(words, new Move.To(step));
  }

  void back(ByHandStep step) {
    add(0, "Back", new Move.To(step));
  }

  /** One page of a long list, and the way to the next. */
  void paged(List<Entry> entries, int page, IntFunction<ByHandStep> turned) {
    int pages = Math.max(1, (entries.size() + PER_PAGE - 1) / PER_PAGE);
    int here = Math.floorMod(page, pages);
    int end = Math.min(entries.size(), (here + 1) * PER_PAGE);
    entries.subList(here * PER_PAGE, end).forEach(e -> to(e.words(), e.step()));
    if (pages > 1) {
      int next = (here + 1) % pages;
      add(MORE, "More: page " + (next + 1) + " of " + pages, new Move.To(turned.apply(next)));
    }
  }
}
