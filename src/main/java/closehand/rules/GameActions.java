package closehand.rules;

import closehand.bank.Bank;
import closehand.bank.GameProfile;
import closehand.interview.Answers;
import closehand.interview.Value;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The actions of the wanted games: what the lists of must-have, dropped and hard actions may name.
 */
public final class GameActions {
  private static final Set<String> LISTS = Set.of("must", "drop", "hard");

  private GameActions() {}

  /**
   * Code and name of each action that the list behind this fact may hold; empty if the fact is no
   * such list.
   */
  public static Map<String, String> of(Bank bank, Answers answers, String fact) {
    Map<String, String> actions = new LinkedHashMap<>();
    int end = fact.lastIndexOf('.');
    if (!fact.startsWith("games.") || !LISTS.contains(fact.substring(end + 1))) {
      return actions;
    }
    String genre = fact.substring(0, end) + ".genre";
    List<GameProfile.Action> known =
        answers
            .value(genre)
            .filter(v -> v instanceof Value.Code)
            .flatMap(v -> bank.game(((Value.Code) v).code()))
            .map(GameProfile::actions)
            .orElse(List.of());
    known.forEach(a -> actions.put(a.id(), a.name()));
    return actions;
  }
}
