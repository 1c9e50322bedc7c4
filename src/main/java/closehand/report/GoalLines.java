package closehand.report;

import java.util.ArrayList;
import java.util.List;

/** What the player wants, in the player's words. */
final class GoalLines {
  private GoalLines() {}

  /** The goals, what good looks like, what stays, and the games; nothing when nothing was said. */
  static List<Piece> of(PageInput input) {
    Facts facts = input.facts();
    List<Piece> pieces = new ArrayList<>();
    facts.text("goal.main").ifPresent(words -> pieces.add(new OwnWords("You want to:", words)));
    entry(pieces, facts, "What good looks like:", "goal.good");
    entry(pieces, facts, "What stays as it is:", "goal.keep");
    List<String> games = games(input);
    if (!games.isEmpty()) {
      pieces.add(Paragraph.item("Your games: " + String.join("; ", games) + "."));
    }
    if (!pieces.isEmpty()) {
      pieces.add(0, new Heading("Your goals"));
    }
    return pieces;
  }

  private static void entry(List<Piece> pieces, Facts facts, String lead, String fact) {
    List<String> picked = facts.picked(fact).stream().map(Phrases::lower).toList();
    String start = lead + (picked.isEmpty() ? "" : " " + String.join(", ", picked) + ".");
    if (facts.text(fact + ".words").isPresent()) {
      pieces.add(new OwnWords(start, facts.text(fact + ".words").get()));
    } else if (!picked.isEmpty()) {
      pieces.add(Paragraph.item(start));
    }
  }

  /** The wanted games with how they are played, such as "Racing (online, for fun)". */
  static List<String> games(PageInput input) {
    Facts facts = input.facts();
    List<String> games = new ArrayList<>();
    for (int slot = 1; slot <= closehand.bank.Bank.GAME_SLOTS; slot++) {
      String game = "games." + slot;
      if (facts.genre(input.bank(), slot).isPresent()) {
        String kind = facts.words(game + ".genre").orElse("");
        String name = facts.text(game + ".name").map(n -> n + ", ").orElse("");
        String mode = facts.words(game + ".mode").map(Phrases::lower).orElse("");
        games.add(kind + (name + mode).transform(GoalLines::inBrackets));
      }
    }
    return games;
  }

  private static String inBrackets(String words) {
    String text = words.endsWith(", ") ? words.substring(0, words.length() - 2) : words;
    return text.isEmpty() ? "" : " (" + text + ")";
  }
}
