package closehand.screen;

import closehand.interview.Interview;
import closehand.interview.Message;
import closehand.interview.Overview;
import closehand.screen.view.Block;
import java.util.ArrayList;
import java.util.List;

/**
 * All answers, part by part; taking a line goes to its question.
 *
 * @param parts the parts with their answers, as they stand when the screen comes up
 * @param progress how far the interview is, in sentences
 * @param here the id of the part of the question at hand, or empty
 * @param part the part that is open, counted from 0; -1 for the list of parts
 * @param page which page of the list
 */
record OverviewScreen(List<Overview.Part> parts, String progress, String here, int part, int page)
    implements Screen {
  private static final int NONE = -1;
  private static final int MORE = 8;

  OverviewScreen {
    parts = List.copyOf(parts);
  }

  /** The list of parts, at the part of the question at hand. */
  static OverviewScreen at(Interview interview) {
    String here = interview.current().map(p -> p.section().id()).orElse("");
    List<Overview.Part> parts = interview.overview().parts();
    int now = 0;
    for (int i = 0; i < parts.size(); i++) {
      now = parts.get(i).id().equals(here) ? i : now;
    }
    return new OverviewScreen(
        parts, interview.progress().words(), here, NONE, Pages.of(now, Pages.OF_SEVEN));
  }

  /** Whether the answers of one part are in sight. */
  boolean isPart() {
    return part != NONE;
  }

  private OverviewScreen on(int otherPart, int otherPage) {
    return new OverviewScreen(parts, progress, here, otherPart, otherPage);
  }

  @Override
  public Shown shown(ScreenModel model) {
    boolean shared = model.settings().shared();
    return part == NONE || part >= parts.size() ? parts(shared) : rows(parts.get(part), shared);
  }

  private Shown parts(boolean shared) {
    Shown.Builder screen = new Shown.Builder("All answers, part by part");
    screen.add(Block.strong(progress)).gap();
    int from = Pages.wrapped(parts.size(), page, Pages.OF_SEVEN) * Pages.OF_SEVEN;
    int digit = 0;
    for (Overview.Part one : Pages.entries(parts, page, Pages.OF_SEVEN)) {
      OverviewScreen open = on(from + digit++, 0);
      screen.offer(
          new Offer(
              digit,
              "Part " + (from + digit) + ", " + one.title() + ": " + one.words(!shared) + ".",
              one.id().equals(here) ? "(now)" : "",
              new Act.Show(open)));
      if (one.id().equals(here)) {
        screen.beginHere();
      }
    }
    Pages.turn(
        screen, MORE, parts.size(), page, Pages.OF_SEVEN, next -> new Act.Swap(on(NONE, next)));
    return screen.gap().offer(0, "Back", new Act.Close()).build();
  }

  private Shown rows(Overview.Part one, boolean shared) {
    Shown.Builder screen = new Shown.Builder(one.title());
    List<Overview.Row> rows = new ArrayList<>(one.rows());
    rows.removeIf(r -> shared && r.state() == Overview.State.FOR_CLINICIAN);
    screen
        .add(
            Block.strong(
                rows.isEmpty()
                    ? "Nothing can be asked here yet."
                    : "Taking a line goes to its question."))
        .gap();
    int digit = 0;
    for (Overview.Row row : Pages.entries(rows, page, Pages.OF_SEVEN)) {
      String fact = row.field().fact();
      boolean answered = row.state() == Overview.State.ANSWERED;
      screen.offer(
          ++digit,
          words(row),
          answered ? new Act.Correct(fact) : new Act.Send(new Message.JumpTo(fact)));
    }
    Pages.turn(
        screen, MORE, rows.size(), page, Pages.OF_SEVEN, next -> new Act.Swap(on(part, next)));
    return screen.gap().offer(0, "Back", new Act.Close()).build();
  }

  private static String words(Overview.Row row) {
    String name = row.question().shortName().orElse(row.question().id());
    String label = row.question().fields().size() > 1 ? name + ", " + row.field().label() : name;
    String words =
        switch (row.state()) {
          case ANSWERED -> row.words();
          case SET_ASIDE -> row.words() + " (set aside: it does not apply now)";
          case OPEN -> row.words().isEmpty() ? "open" : "open. " + row.words();
          case FOR_CLINICIAN -> "left for a clinician";
          case HELD -> "waiting. " + row.words();
        };
    return row.question().id() + " " + label + ": " + words;
  }
}
