package closehand.plan;

import closehand.bank.GameProfile;
import closehand.bank.GameProfile.Action;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * What a player changed by hand: the actions of a wanted game, and wishes for where they sit. Kept
 * with the case, so that every plan is made around it.
 *
 * @param games by slot from 1; only games in which something is changed
 */
public record PlanChanges(Map<Integer, OfGame> games) {
  /** Nothing is changed. */
  public static final PlanChanges NONE = new PlanChanges(Map.of());

  public PlanChanges {
    games = Collections.unmodifiableMap(new TreeMap<>(games));
  }

  /**
   * The changes of one game.
   *
   * @param genre the kind of game they were made for; they wait while the slot holds another kind
   * @param actions actions as they are now, changed or added; they outrank what the answers say of
   *     these actions
   * @param removed ids of actions of the profile that are taken away
   * @param wishes where actions must sit, one an action
   */
  public record OfGame(
      String genre, List<Action> actions, Set<String> removed, List<PlanAsk.Wish> wishes) {
    public OfGame {
      actions = List.copyOf(actions);
      removed = Set.copyOf(removed);
      wishes = List.copyOf(wishes);
    }

    /** Nothing changed in a game of this kind. */
    public static OfGame none(String genre) {
      return new OfGame(genre, List.of(), Set.of(), List.of());
    }

    /** Whether nothing is changed. */
    public boolean isEmpty() {
      return actions.isEmpty() && removed.isEmpty() && wishes.isEmpty();
    }

    /** The action with this id, where it was changed or added. */
    public Optional<Action> action(String id) {
      return actions.stream().filter(a -> a.id().equals(id)).findFirst();
    }

    /** The same with an action as it is now, in place of how it was. */
    public OfGame with(Action action) {
      List<Action> next = new ArrayList<>(actions);
      next.removeIf(a -> a.id().equals(action.id()));
      next.add(action);
      return new OfGame(genre, next, less(removed, action.id()), wishes);
    }

    /** The same without this action of the profile, or without one that was added. */
    public OfGame without(String id) {
      Set<String> gone = new HashSet<>(removed);
      gone.add(id);
      return new OfGame(genre, others(id), gone, unwished(id).wishes());
    }

    /** The same with this action as the profile has it; one that was added is gone. */
    public OfGame asBefore(String id) {
      return new OfGame(genre, others(id), less(removed, id), wishes);
    }

    /** The same with a wish, in place of an earlier one for the same action or part of it. */
    public OfGame wishing(PlanAsk.Wish wish) {
      List<PlanAsk.Wish> next = new ArrayList<>(unwished(wish.action()).wishes());
      next.add(wish);
      return new OfGame(genre, actions, removed, next);
    }

    /** The same without a wish for this action. */
    public OfGame unwished(String id) {
      return new OfGame(
          genre, actions, removed, wishes.stream().filter(w -> !w.action().equals(id)).toList());
    }

    private List<Action> others(String id) {
      return actions.stream().filter(a -> !a.id().equals(id)).toList();
    }

    private static Set<String> less(Set<String> ids, String id) {
      Set<String> fewer = new HashSet<>(ids);
      fewer.remove(id);
      return fewer;
    }

    /** The profile with these changes. */
    public GameProfile in(GameProfile profile) {
      Map<String, Action> all = new LinkedHashMap<>();
      profile.actions().forEach(a -> all.put(a.id(), a));
      actions.forEach(a -> all.put(a.id(), a));
      removed.forEach(all::remove);
      return new GameProfile(
          profile.genre(),
          profile.title(),
          profile.note(),
          profile.settings(),
          List.copyOf(all.values()),
          profile.basis(),
          profile.where());
    }

    /** Ids of the actions that are changed or added here. */
    Set<String> rated() {
      Set<String> ids = new HashSet<>();
      actions.forEach(a -> ids.add(a.id()));
      return ids;
    }
  }

  /** The changes of the game in this slot, if they were made for its kind. */
  public OfGame of(int slot, String genre) {
    OfGame game = games.get(slot);
    return game != null && game.genre().equals(genre) ? game : OfGame.none(genre);
  }

  /** The same with these changes of one game. */
  public PlanChanges with(int slot, OfGame game) {
    Map<Integer, OfGame> next = new TreeMap<>(games);
    if (game.isEmpty()) {
      next.remove(slot);
    } else {
      next.put(slot, game);
    }
    return new PlanChanges(next);
  }
}
