package closehand.report;

import closehand.bank.Approach;
import closehand.bank.GameProfile;
import closehand.rules.Advice;
import closehand.rules.Standing;
import java.util.ArrayList;
import java.util.List;

/** Everything about setting up, for the clinician. */
final class KitLines {
  private static final List<String> TOPICS =
      List.of(
          "settings",
          "setup",
          "mount",
          "pace",
          "learn",
          "borrow",
          "trial",
          "refer",
          "text",
          "stop");

  private KitLines() {}

  /** Settings of the games, what the rules say, then each suggested approach. */
  static List<Piece> of(PageInput input) {
    List<Piece> pieces = new ArrayList<>();
    for (GameProfile game : SettingLines.games(input)) {
      pieces.add(new Heading("Settings to look for: " + game.title()));
      game.settings().forEach(s -> pieces.add(Paragraph.item(s)));
    }
    Advice advice = input.together();
    for (String topic : TOPICS) {
      List<String> sentences = new ArrayList<>(Sayings.all(advice, topic));
      if (PlayLimit.of(input).minutes().isPresent()) {
        sentences.removeIf(PaceLines::isAboutLength);
      }
      if (!sentences.isEmpty()) {
        pieces.add(new Heading("Advice: " + title(topic)));
        sentences.forEach(s -> pieces.add(Paragraph.item(s)));
      }
    }
    advice.suggestions().forEach(s -> pieces.addAll(approach(input, s)));
    return pieces;
  }

  private static List<Piece> approach(PageInput input, Standing standing) {
    Approach approach = standing.approach();
    Approach.Words words = approach.words();
    List<Piece> pieces = new ArrayList<>();
    pieces.add(new Heading(words.name()));
    pieces.add(Paragraph.of(words.summary()));
    pieces.add(Paragraph.item("Worked by: " + words.effectors()));
    pieces.add(Paragraph.item("Good at: " + words.goodAt()));
    pieces.add(Paragraph.item("Less good at: " + words.badAt()));
    pieces.add(Paragraph.item("Leave out when: " + words.contraIndications()));
    pieces.add(Paragraph.item("Load on the body: " + words.strain()));
    pieces.add(Paragraph.item("Force: " + approach.forceNewtons().text()));
    pieces.add(Paragraph.item("Placing: " + words.mounting()));
    pieces.add(Paragraph.item("Borrowing: " + words.borrow()));
    pieces.add(Paragraph.item("First try: " + words.firstTry()));
    pieces.add(Paragraph.item(KitWords.effortAndCost(input.bank(), approach)));
    return pieces;
  }

  private static String title(String topic) {
    return switch (topic) {
      case "setup" -> "setting up";
      case "mount" -> "fixing things in place";
      case "pace" -> "pace and load";
      case "learn" -> "learning";
      case "borrow" -> "borrowing";
      case "trial" -> "trying out";
      case "refer" -> "whom to ask";
      case "text" -> "other";
      case "stop" -> "when to stop";
      default -> topic;
    };
  }
}
