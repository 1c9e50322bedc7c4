package closehand.interview;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How a message names a fact, so that somebody finds it in a file of answers. */
public final class FactWords {
  private static final Pattern OF_A_GAME = Pattern.compile("games\\.([1-9])\\.([A-Za-z]+)");
  private static final List<String> PLACES = List.of("first", "second", "third");

  private FactWords() {}

  /**
   * The fact's id in quotation marks; what is written of a game in the list of games is named as it
   * stands there, with the place of its game.
   */
  public static String of(String fact) {
    Matcher matcher = OF_A_GAME.matcher(fact);
    if (!matcher.matches()) {
      return "\"" + fact + "\"";
    }
    int game = Integer.parseInt(matcher.group(1));
    String place = game <= PLACES.size() ? "the " + PLACES.get(game - 1) + " game" : "game " + game;
    return "\"" + matcher.group(2) + "\" of " + place;
  }
}
