package closehand.plan.demand;

import closehand.plan.KnownFacts;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What the player said about one wanted game.
 *
 * @param slot its place in the interview, from 1
 * @param name what the player calls it, or empty
 * @param accepts what it takes; empty where nobody knows
 * @param cursor whether it is played with a pointer, where somebody knows
 * @param options settings it offers; empty where nobody knows
 * @param automation whether sequences on one button are known to be allowed
 * @param must actions that must work
 * @param drop actions that are not wanted
 * @param waitsFor what is not known
 */
public record GameFacts(
    int slot,
    String name,
    Set<String> accepts,
    Optional<Boolean> cursor,
    Set<String> options,
    boolean automation,
    Set<String> must,
    Set<String> drop,
    List<String> waitsFor) {
  public GameFacts {
    accepts = Set.copyOf(accepts);
    options = Set.copyOf(options);
    must = Set.copyOf(must);
    drop = Set.copyOf(drop);
    waitsFor = List.copyOf(waitsFor);
  }

  /** Reads the answers about the game in this slot, from 1. */
  public static GameFacts of(
      closehand.bank.Questionnaire questionnaire, closehand.interview.Answers answers, int slot) {
    KnownFacts facts = new KnownFacts(questionnaire, answers);
    String game = "games." + slot + ".";
    List<String> accepts = facts.codes(game + "accepts").orElse(List.of());
    Optional<Boolean> cursor =
        facts.code(game + "cursor").filter(c -> !c.equals("unknown")).map(c -> c.equals("yes"));
    List<String> options = facts.codes(game + "options").orElse(List.of());
    boolean automation = facts.code(game + "macros").filter("allowed"::equals).isPresent();
    return new GameFacts(
        slot,
        facts.text(game + "name"),
        new HashSet<>(accepts),
        cursor,
        new HashSet<>(options),
        automation,
        new HashSet<>(facts.words(game + "must")),
        new HashSet<>(facts.words(game + "drop")),
        facts.missing());
  }

  /** The same, where nothing is said of these actions. */
  public GameFacts without(Set<String> actions) {
    return new GameFacts(
        slot,
        name,
        accepts,
        cursor,
        options,
        automation,
        less(must, actions),
        less(drop, actions),
        waitsFor);
  }

  private static Set<String> less(Set<String> some, Set<String> gone) {
    Set<String> fewer = new HashSet<>(some);
    fewer.removeAll(gone);
    return fewer;
  }
}
