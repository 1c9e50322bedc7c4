package closehand.report;

import closehand.rules.Advice;
import closehand.rules.Standing;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** How the games compare when each is judged alone. */
final class GameLines {
  private GameLines() {}

  /** One entry a game, where there are several. */
  static List<Piece> of(PageInput input) {
    if (input.byGame().size() < 2) {
      return List.of();
    }
    List<Piece> pieces = new ArrayList<>();
    pieces.add(new Heading("Game by game"));
    pieces.add(
        Paragraph.of("Above, all games count together. Judged alone, each game comes out so:"));
    for (Map.Entry<Integer, Advice> game : input.byGame().entrySet()) {
      pieces.add(Paragraph.item(name(input, game.getKey()) + ": " + ideas(game.getValue())));
    }
    return pieces;
  }

  private static String name(PageInput input, int slot) {
    Facts facts = input.facts();
    String kind = facts.words("games." + slot + ".genre").orElse("Game " + slot);
    return kind + facts.text("games." + slot + ".name").map(n -> " (" + n + ")").orElse("");
  }

  private static String ideas(Advice advice) {
    if (advice.withheld()) {
      return "suggestions wait for a medical review.";
    }
    List<Standing> ideas = advice.suggestions();
    return ideas.isEmpty() ? "no suggestion yet." : Phrases.lower(TryLines.briefs(ideas));
  }
}
