package closehand.report;

import java.util.ArrayList;
import java.util.List;

/** What the player wants, in the player's words. */
final class GoalLines {
  private GoalLines() {}

  /** The goals, what good looks like, what stays, and the games; nothing when nothing was said. */
  static List<Piece> of(PageInput input, Glyphs glyphs) {
    Facts facts = input.facts();
    List<String> sentences = new ArrayList<>();
    facts
        .text("goal.main")
        .ifPresent(
            words -> sentences.add(Phrases.afterQuote("You want to: " + glyphs.quoted(words))));
    add(sentences, "What good looks like: ", said(facts, "goal.good", glyphs));
    add(sentences, "What stays as it is: ", said(facts, "goal.keep", glyphs));
    add(sentences, "Your games: ", games(input));
    return sentences.isEmpty()
        ? List.of()
        : List.of(new Gap(), Paragraph.headed("Your goals.", String.join(" ", sentences)));
  }

  private static void add(List<String> sentences, String lead, List<String> parts) {
    if (!parts.isEmpty()) {
      sentences.add(Phrases.afterQuote(lead + String.join("; ", parts)));
    }
  }

  private static List<String> said(Facts facts, String fact, Glyphs glyphs) {
    List<String> said = new ArrayList<>();
    facts.picked(fact).forEach(option -> said.add(Phrases.lower(option)));
    facts.text(fact + ".words").ifPresent(words -> said.add(glyphs.quoted(words)));
    return said;
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
