package closehand.report;

import closehand.bank.Approach;
import closehand.bank.PlanFigures;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Which wanted games take nothing that an idea sends, by what was told of them. */
final class GamesThatRefuse {
  /** The inputs of ideas that change something else and send nothing themselves. */
  private static final String SETTING = "setting";

  private GamesThatRefuse() {}

  /** One sentence; empty where every game takes it or nobody knows what a game takes. */
  static String sentence(PageInput input, Approach approach) {
    return sentence(input, approach, false);
  }

  /** The same, in fewer words where the page is full. */
  static String sentence(PageInput input, Approach approach, boolean brief) {
    List<String> refusing = new ArrayList<>();
    for (int slot : input.byGame().keySet()) {
      if (refuses(input, slot, approach)) {
        refusing.add(GameLines.name(input, slot));
      }
    }
    return refusing.isEmpty()
        ? ""
        : "By your answers, "
            + Phrases.listed(refusing)
            + (refusing.size() == 1 ? " does" : " do")
            + (brief
                ? " not take this: check first."
                : " not take this; check that before you borrow one.");
  }

  /** Whether the game in this place takes nothing that the idea sends, by what was told of it. */
  static boolean refuses(PageInput input, int slot, Approach approach) {
    List<String> taken = input.facts().codes("games." + slot + ".accepts");
    Optional<PlanFigures> figures = input.bank().planFigures();
    return figures.isPresent() && !taken.isEmpty() && !takes(figures.get(), approach, taken);
  }

  private static boolean takes(PlanFigures figures, Approach approach, List<String> taken) {
    return approach.inputs().stream().allMatch(i -> i.kind().equals(SETTING))
        || approach.inputs().stream()
            .filter(i -> !i.kind().equals(SETTING))
            .map(i -> figures.speaks(approach.id(), i.kind()))
            .anyMatch(
                s -> s.contains(PlanFigures.ANYTHING) || s.stream().anyMatch(taken::contains));
  }
}
