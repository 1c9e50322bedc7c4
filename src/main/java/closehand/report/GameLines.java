package closehand.report;

import closehand.rules.Advice;
import closehand.rules.Standing;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

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
      pieces.add(
          Paragraph.item(
              name(input, game.getKey()) + ": " + ideas(input, game.getKey(), game.getValue())));
    }
    return pieces;
  }

  /**
   * For the player: what is suggested for one game and not for all of them; nothing where they
   * agree.
   */
  static List<Piece> differing(PageInput input, Room room) {
    Set<String> everywhere = new HashSet<>();
    input.byGame().values().forEach(a -> everywhere.addAll(ids(a)));
    input.byGame().values().forEach(a -> everywhere.retainAll(ids(a)));
    Map<String, List<String>> gamesByIdeas = new LinkedHashMap<>();
    for (Map.Entry<Integer, Advice> game : input.byGame().entrySet()) {
      List<Standing> own =
          game.getValue().suggestions().stream()
              .filter(s -> !everywhere.contains(s.approach().id()))
              .filter(s -> !GamesThatRefuse.refuses(input, game.getKey(), s.approach()))
              .toList();
      if (!own.isEmpty()) {
        gamesByIdeas
            .computeIfAbsent(Phrases.lower(TryLines.briefs(own)), i -> new ArrayList<>())
            .add(name(input, game.getKey()));
      }
    }
    if (gamesByIdeas.isEmpty()) {
      return List.of();
    }
    if (room.terse()) {
      List<String> said = new ArrayList<>();
      gamesByIdeas.forEach(
          (ideas, games) -> said.add("Only for " + Phrases.listed(games) + ": " + ideas));
      return List.of(new Gap(), Paragraph.headed("Game by game.", String.join(" ", said)));
    }
    List<Piece> pieces = new ArrayList<>();
    pieces.add(new Heading("Your games differ"));
    gamesByIdeas.forEach(
        (ideas, games) ->
            pieces.add(Paragraph.item("Only for " + Phrases.listed(games) + ": " + ideas)));
    return pieces;
  }

  private static Set<String> ids(Advice advice) {
    return advice.suggestions().stream().map(s -> s.approach().id()).collect(Collectors.toSet());
  }

  /** The kind of game in this place with the name it was given, if any. */
  static String name(PageInput input, int slot) {
    Facts facts = input.facts();
    String kind = facts.words("games." + slot + ".genre").orElse("Game " + slot);
    return kind + facts.text("games." + slot + ".name").map(n -> " (" + n + ")").orElse("");
  }

  private static String ideas(PageInput input, int slot, Advice advice) {
    if (advice.withheld()) {
      return "suggestions wait for a medical review.";
    }
    List<Standing> ideas = new ArrayList<>(advice.suggestions());
    ideas.removeIf(s -> GamesThatRefuse.refuses(input, slot, s.approach()));
    return ideas.isEmpty() ? "no suggestion yet." : Phrases.lower(TryLines.briefs(ideas));
  }
}
