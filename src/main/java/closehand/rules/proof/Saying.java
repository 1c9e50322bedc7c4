package closehand.rules.proof;

import closehand.bank.Rule;
import java.util.ArrayList;
import java.util.List;

/**
 * One thing that follows from a rule.
 *
 * @param sort what sort of thing
 * @param name the approach, caution, body part, sentence or kind of task
 * @param strength points, class of a caution or factor of effort; 0 where there is no more or less
 */
record Saying(Sort sort, String name, double strength) {
  /** What can follow from a rule. */
  enum Sort {
    RULES_OUT,
    POINTS,
    CAUTION,
    RESTS,
    EFFORT,
    ADVICE,
    HOLDS
  }

  /** Everything that follows from a rule, each thing for itself. */
  static List<Saying> of(Rule rule) {
    Rule.Effects effects = rule.effects();
    List<Saying> all = new ArrayList<>();
    effects.exclude().forEach(e -> all.add(new Saying(Sort.RULES_OUT, e.name(), 0)));
    effects.support().forEach(s -> all.add(new Saying(Sort.POINTS, s.approach(), s.points())));
    effects
        .cautions()
        .forEach(c -> all.add(new Saying(Sort.CAUTION, c.code(), c.cautionClass().ordinal())));
    effects.restingEffectors().forEach(e -> all.add(new Saying(Sort.RESTS, e, 0)));
    effects
        .effort()
        .forEach(
            e ->
                e.effectors()
                    .forEach(
                        p -> all.add(new Saying(Sort.EFFORT, p + " " + e.inputs(), e.factor()))));
    effects.advice().forEach(a -> all.add(new Saying(Sort.ADVICE, a.say(), 0)));
    effects.holds().forEach(h -> all.add(new Saying(Sort.HOLDS, h.name(), 0)));
    return List.copyOf(all);
  }

  /** Whether another rule that says this leaves nothing to say; of cautions the stronger counts. */
  boolean isSaidBy(Saying other) {
    return sort == other.sort
        && name.equals(other.name)
        && (sort == Sort.CAUTION ? other.strength >= strength : other.strength == strength);
  }
}
