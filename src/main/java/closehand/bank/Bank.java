package closehand.bank;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A question bank: everything that can be asked and everything that is known.
 *
 * @param questionnaire the questions
 * @param terms what is worked out from answers
 * @param rules in file order, templates already made out for each side and digit
 * @param themes titles of the rule themes by id
 * @param approaches in declared order, which also settles ties
 * @param costClasses words for the classes of cost
 * @param mixes approaches that often work together
 * @param games game profiles
 * @param cautions cautions and their words
 * @param sources what the content rests on
 * @param planFigures what a control plan is weighed with; a bank without it makes no plans
 * @param tasks the measured tasks; a bank without them measures nothing
 * @param fingerprint a hash of the files it was read from
 */
public record Bank(
    Questionnaire questionnaire,
    List<Term> terms,
    List<Rule> rules,
    Map<String, String> themes,
    List<Approach> approaches,
    List<Approach.CostClass> costClasses,
    List<Approach.Mix> mixes,
    List<GameProfile> games,
    List<Caution> cautions,
    List<Source> sources,
    Optional<PlanFigures> planFigures,
    Optional<TaskBook> tasks,
    String fingerprint) {
  public Bank {
    terms = List.copyOf(terms);
    rules = List.copyOf(rules);
    themes = Map.copyOf(themes);
    approaches = List.copyOf(approaches);
    costClasses = List.copyOf(costClasses);
    mixes = List.copyOf(mixes);
    games = List.copyOf(games);
    cautions = List.copyOf(cautions);
    sources = List.copyOf(sources);
  }

  /** How many games an interview can hold. */
  public static final int GAME_SLOTS = 3;

  /** The approach with this id. */
  public Optional<Approach> approach(String id) {
    return approaches.stream().filter(a -> a.id().equals(id)).findFirst();
  }

  /** The caution with this code. */
  public Optional<Caution> caution(String code) {
    return cautions.stream().filter(c -> c.code().equals(code)).findFirst();
  }

  /** The profile of this kind of game. */
  public Optional<GameProfile> game(String genre) {
    return games.stream().filter(g -> g.genre().equals(genre)).findFirst();
  }

  /** The source with this id. */
  public Optional<Source> source(String id) {
    return sources.stream().filter(s -> s.id().equals(id)).findFirst();
  }
}
