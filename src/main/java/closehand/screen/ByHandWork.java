package closehand.screen;

import closehand.interview.Interview;
import closehand.report.ByHand;
import closehand.report.ByHandPage;
import closehand.report.Desk;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Carries out what is chosen while a control plan is changed by hand. */
final class ByHandWork {
  private ByHandWork() {}

  /** The first page on top, or a sentence where there is no plan to change. */
  static ScreenModel begun(ScreenModel model, Optional<ByHand> byHand) {
    return byHand
        .map(b -> model.pushing(ByHandScreen.of(b)))
        .orElseGet(
            () ->
                model.told(
                    "The plan, changed by hand",
                    List.of("A plan comes after medical review, as the suggestions do.")));
  }

  /** What comes of a choice or of a typed line. */
  static ByHand after(Effect.ChangeByHand change) {
    return change.typed().isEmpty()
        ? change.at().take(change.digit())
        : change.at().typed(change.typed());
  }

  /** The next page in place of the one before; what was changed is kept. */
  static ScreenModel shown(
      ScreenModel model, ByHand before, ByHand after, Desk desk, Interview interview) {
    ScreenModel kept =
        after.changes().equals(before.changes())
            ? model
            : model.kept(desk.keep(interview, after.changes()));
    return after.left() ? kept.closing() : kept.replacing(kept.fresh(ByHandScreen.of(after)));
  }

  /** A page as lines, for whoever follows. */
  static List<String> lines(ByHand byHand) {
    List<String> lines = new ArrayList<>();
    lines.add(byHand.page().heading());
    lines.addAll(byHand.page().lines());
    for (ByHandPage.Choice choice : byHand.page().choices()) {
      lines.add(choice.digit() + "  " + choice.words());
    }
    return lines;
  }
}
