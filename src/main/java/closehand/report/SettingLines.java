package closehand.report;

import closehand.bank.Bank;
import closehand.bank.GameProfile;
import closehand.rules.Standing;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The settings to try before any new kit. */
final class SettingLines {
  private static final String WRITE_DOWN = "Write down the old and the new value.";

  private SettingLines() {}

  /** Why, then a handful of settings of the wanted games, then what the answers ask for. */
  static List<Piece> of(PageInput input, Room room) {
    List<String> sentences = new ArrayList<>(ofGames(input, Math.max(1, room.gameSettings())));
    Sayings.tellingFirst(input.together(), "settings").stream()
        .filter(s -> !sentences.contains(s))
        .limit(room.sayings())
        .forEach(sentences::add);
    if (sentences.isEmpty()) {
      return List.of();
    }
    List<Piece> pieces = new ArrayList<>();
    pieces.add(new Gap());
    if (room.lists()) {
      pieces.add(Paragraph.headed("Settings first.", why(input)));
      sentences.forEach(s -> pieces.add(Paragraph.item(s)));
    } else {
      sentences.add(0, room.tightest() ? "They cost nothing. " + WRITE_DOWN : why(input));
      pieces.add(Paragraph.headed("Settings first.", String.join(" ", sentences)));
    }
    return pieces;
  }

  private static String why(PageInput input) {
    for (Standing idea : input.together().suggestions()) {
      if (idea.approach().family().equals(TryLines.SETTINGS)) {
        return String.join(" ", Reasons.weightiest(idea.inFavour(), idea.approach().id(), 1))
            + " "
            + WRITE_DOWN;
      }
    }
    return "Try these before you add or buy anything. " + WRITE_DOWN;
  }

  /** Settings of the wanted games, one from each game in turn, at most so many. */
  static List<String> ofGames(PageInput input, int most) {
    List<GameProfile> games = games(input);
    Set<String> settings = new LinkedHashSet<>();
    int longest = games.stream().mapToInt(g -> g.settings().size()).max().orElse(0);
    for (int place = 0; place < longest; place++) {
      for (GameProfile game : games) {
        if (place < game.settings().size()) {
          settings.add(game.settings().get(place));
        }
      }
    }
    return settings.stream().limit(most).toList();
  }

  /** The profiles of the wanted games, each kind once. */
  static List<GameProfile> games(PageInput input) {
    Facts facts = input.facts();
    Set<GameProfile> games = new LinkedHashSet<>();
    for (int slot = 1; slot <= Bank.GAME_SLOTS; slot++) {
      Optional<String> genre = facts.genre(input.bank(), slot);
      genre.flatMap(input.bank()::game).ifPresent(games::add);
    }
    return List.copyOf(games);
  }
}
