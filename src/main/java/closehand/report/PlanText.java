package closehand.report;

import closehand.plan.ControlPlan;
import closehand.plan.ControlPlan.Assignment;
import closehand.plan.Planned;
import closehand.strain.DayLoad;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Control plans as a list that can be read aloud, one line an action. */
public final class PlanText {
  private PlanText() {}

  /**
   * The plans of all games, one after the other, with what each asks of the body; a red part that
   * no clinician accepted blocks its plan.
   */
  public static String of(PageInput input, List<Planned> plans, Glyphs glyphs) {
    if (!input.ending().isEmpty()) {
      return StopNotice.of(input.ending(), glyphs);
    }
    List<Piece> pieces = new ArrayList<>(StopNotice.all(input));
    if (input.together().forReview()) {
      pieces.add(Paragraph.of("A draft for a clinician to review."));
    }
    if (plans.isEmpty()) {
      pieces.add(Paragraph.of("No plan yet: no game has been named."));
    }
    DayLoad day = LoadText.day(input, plans);
    for (int i = 0; i < plans.size(); i++) {
      pieces.addAll(LoadText.withLoad(input, plans.get(i), day.games().get(i)));
    }
    pieces.addAll(LoadText.under(input, day));
    pieces.addAll(PlanLines.standing());
    pieces.addAll(FooterLines.of(input));
    return Sheet.text(pieces, glyphs);
  }

  /** What is said instead while suggestions wait. */
  public static String withheld(PageInput input, Glyphs glyphs) {
    if (!input.ending().isEmpty()) {
      return StopNotice.of(input.ending(), glyphs);
    }
    List<Piece> pieces = new ArrayList<>(StopNotice.all(input));
    pieces.add(new Heading("Control plan"));
    pieces.add(
        Paragraph.of(
            "A plan comes after medical review, as the suggestions do. Your answers are kept."));
    return Sheet.text(pieces, glyphs);
  }

  /** Whether a plan's game has an action of this id or name. */
  public static boolean names(Planned planned, String action) {
    return find(planned, action).isPresent();
  }

  /** Why one action sits where it does. */
  public static String explained(PageInput input, Planned planned, String action, Glyphs glyphs) {
    List<Piece> pieces = new ArrayList<>();
    find(planned, action).ifPresent(id -> pieces.addAll(PlanReasons.of(input.bank(), planned, id)));
    return Sheet.text(pieces, glyphs);
  }

  /** The id of the action or part that somebody means. */
  private static Optional<String> find(Planned planned, String said) {
    String plain = said.strip().toLowerCase(Locale.ROOT);
    ControlPlan plan = planned.plan();
    List<String> ids = new ArrayList<>();
    plan.assignments().stream()
        .filter(a -> means(plain, a.id(), a.action(), a.name()))
        .map(Assignment::id)
        .forEach(ids::add);
    plan.leftOut().stream()
        .filter(a -> means(plain, a.id(), a.action(), a.name()))
        .map(ControlPlan.LeftOut::id)
        .forEach(ids::add);
    plan.settled().stream()
        .filter(a -> means(plain, a.action(), a.action(), a.name()))
        .map(ControlPlan.Shared::action)
        .forEach(ids::add);
    return ids.stream().findFirst();
  }

  private static boolean means(String plain, String id, String action, String name) {
    String low = name.toLowerCase(Locale.ROOT);
    return !plain.isEmpty()
        && (id.toLowerCase(Locale.ROOT).equals(plain)
            || action.toLowerCase(Locale.ROOT).equals(plain)
            || low.startsWith(plain));
  }
}
