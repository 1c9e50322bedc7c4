package closehand.report;

import closehand.bank.Bank;
import closehand.bank.GameProfile;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The settings to try before any new kit. */
final class SettingLines {
  private SettingLines() {}

  /** A handful of settings of the wanted games, then what the answers ask for. */
  static List<Piece> of(PageInput input, Room room) {
    List<String> sentences = new ArrayList<>(ofGames(input, room.gameSettings()));
    Sayings.on(input.together(), "settings").stream()
        .filter(s -> !sentences.contains(s))
        .limit(room.sayings())
        .forEach(sentences::add);
    if (sentences.isEmpty()) {
      return List.of();
    }
    List<Piece> pieces = new ArrayList<>();
    pieces.add(new Heading("Settings to try first"));
    sentences.forEach(s -> pieces.add(Paragraph.item(s)));
    return pieces;
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
