package closehand.report;

import closehand.bank.Bank;
import closehand.bank.GameProfile;
import closehand.interview.Wording;
import java.util.ArrayList;
import java.util.List;

/** The kinds of game of a bank in words, with what is done in each. */
final class GamePaperWords {
  private GamePaperWords() {}

  static PaperPart of(Bank bank) {
    PaperPart part =
        new PaperPart(
            "games",
            "Games",
            "What a kind of game asks of a player, each action with its rate in active play.");
    bank.games().forEach(g -> part.add("Game " + g.genre(), lines(g)));
    return part;
  }

  private static List<String> lines(GameProfile game) {
    List<String> lines = new ArrayList<>();
    lines.add(
        Phrases.sentence(game.title())
            + " "
            + Phrases.sentence(game.note())
            + " Basis: "
            + ApproachPaperWords.basis(game.basis()));
    if (!game.settings().isEmpty()) {
      lines.add("Look first in its menus: " + String.join(" ", game.settings()));
    }
    game.actions().forEach(a -> lines.add(action(a)));
    return lines;
  }

  private static String action(GameProfile.Action action) {
    return action.id()
        + ", "
        + Phrases.bare(action.name())
        + ": "
        + (action.perMinute().isPresent()
            ? Wording.number(action.perMinute().getAsDouble()) + " times a minute"
            : "no known rate")
        + "; done as "
        + (action.style().isEmpty() ? "nothing named" : Phrases.and(action.style()))
        + hold(action)
        + "; "
        + urgency(action.urgency())
        + "; "
        + importance(action.importance())
        + (action.pressedWith().isEmpty()
            ? ""
            : "; at the same moment as " + Phrases.and(action.pressedWith()))
        + (action.options().isEmpty()
            ? ""
            : "; games often offer: " + String.join(", ", action.options()))
        + ".";
  }

  private static String hold(GameProfile.Action action) {
    if (action.continuous()) {
      return "; never stops while playing";
    }
    double least = action.holdSeconds().minimum();
    double most = action.holdSeconds().maximum();
    String text = action.holdSeconds().text();
    return most == 0 && text.isEmpty()
        ? ""
        : "; held "
            + Wording.number(least)
            + (least == most ? "" : " to " + Wording.number(most))
            + " s"
            + (text.isEmpty() ? "" : " (" + Phrases.bare(text) + ")");
  }

  private static String urgency(int urgency) {
    return switch (urgency) {
      case 3 -> "within about 0.3 s";
      case 2 -> "within 1 s";
      case 1 -> "within 3 s";
      default -> "no hurry";
    };
  }

  private static String importance(int importance) {
    return switch (importance) {
      case 3 -> "a must";
      case 2 -> "wanted";
      case 1 -> "nice to have";
      default -> "rarely missed";
    };
  }
}
