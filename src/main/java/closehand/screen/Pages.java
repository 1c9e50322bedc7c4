package closehand.screen;

import java.util.List;
import java.util.function.IntFunction;

/**
 * Long lists in pages, so that every entry keeps one digit for good, whatever the size of the
 * screen.
 */
final class Pages {
  /** Entries on a page of a list where 8 turns the page. */
  static final int OF_SEVEN = 7;

  private Pages() {}

  static int count(int entries, int perPage) {
    return Math.max(1, (entries + perPage - 1) / perPage);
  }

  static int of(int entry, int perPage) {
    return Math.max(0, entry) / perPage;
  }

  /** The entries of one page. */
  static <T> List<T> entries(List<T> all, int page, int perPage) {
    int from = Math.min(all.size(), wrapped(all.size(), page, perPage) * perPage);
    return all.subList(from, Math.min(all.size(), from + perPage));
  }

  static int wrapped(int entries, int page, int perPage) {
    return Math.floorMod(page, count(entries, perPage));
  }

  /** An offer that turns the page, where there is more than one. */
  static void turn(
      Shown.Builder builder, int digit, int entries, int page, int perPage, IntFunction<Act> act) {
    int pages = count(entries, perPage);
    if (pages > 1) {
      int next = (wrapped(entries, page, perPage) + 1) % pages;
      String where = "More: page " + (next + 1) + " of " + pages;
      builder.offer(digit, where, act.apply(next));
    }
  }
}
