package closehand.report;

import closehand.plan.ControlPlan;
import closehand.plan.ControlPlan.LeftOut;
import java.util.List;

/** What a game needs and a plan has no place for, said before everything else about the plan. */
final class NeededLines {
  private static final int MUST = 3;

  private NeededLines() {}

  /** One paragraph; nothing where every needed action has a place. */
  static List<Piece> of(ControlPlan plan) {
    List<String> names =
        plan.leftOut().stream()
            .filter(l -> l.importance() == MUST)
            .map(LeftOut::name)
            .map(n -> "\"" + n + "\"")
            .toList();
    return names.isEmpty()
        ? List.of()
        : List.of(
            Paragraph.headed(
                "Not enough to play alone yet.",
                "The game also needs "
                    + Phrases.and(names)
                    + ", and this plan has no place for "
                    + (names.size() == 1 ? "it" : "them")
                    + ". Another person can do "
                    + (names.size() == 1 ? "it" : "them")
                    + " on a second device (shared control), or a setting, an easier mode or one"
                    + " more control may help."));
  }
}
