package closehand.report;

import closehand.bank.Approach;
import closehand.bank.Bank;
import closehand.bank.Caution;
import closehand.bank.Condition;
import closehand.bank.Effectors;
import closehand.bank.Rule;
import closehand.bank.TaskKind;
import closehand.interview.Wording;
import java.util.ArrayList;
import java.util.List;

/** A rule as an English sentence, with its reason and what it rests on. */
public final class RuleWords {
  private final Bank bank;
  private final ConditionWords conditions;

  /** Words for the rules of this bank. */
  public RuleWords(Bank bank, Glyphs glyphs) {
    this(bank, new ConditionWords(bank, glyphs));
  }

  /** Words for the rules of this bank, their conditions in these words. */
  RuleWords(Bank bank, ConditionWords conditions) {
    this.bank = bank;
    this.conditions = conditions;
  }

  private static String brief(Rule rule) {
    return rule.briefReason().equals(rule.reason())
        ? ""
        : " In few words: " + Phrases.sentence(rule.briefReason());
  }

  /** "When ..., unless ...: ... Because: ... Basis: ..." */
  public String of(Rule rule) {
    String when =
        rule.when() instanceof Condition.Always ? "Always" : "When " + conditions.of(rule.when());
    String unless = rule.unless().map(u -> ", unless " + conditions.of(u)).orElse("");
    String clinician =
        rule.clinicianReason().map(c -> " For clinicians: " + Phrases.sentence(c)).orElse("");
    return when
        + unless
        + ": "
        + String.join("; ", effects(rule.effects()))
        + ". Because: "
        + Phrases.sentence(rule.reason())
        + brief(rule)
        + clinician
        + " Basis: "
        + (rule.basis().isEmpty() ? "none given" : String.join(", ", rule.basis()))
        + ".";
  }

  private List<String> effects(Rule.Effects effects) {
    List<String> words = new ArrayList<>();
    effects.exclude().forEach(e -> words.add("rule out " + name(e.name())));
    effects
        .support()
        .forEach(
            s -> {
              int points = Math.abs(s.points());
              String count = Phrases.count(points, "point");
              words.add(
                  (s.points() > 0 ? "give " : "take ")
                      + count
                      + (s.points() > 0 ? " to " : " from ")
                      + name(s.approach()));
            });
    effects
        .cautions()
        .forEach(
            c ->
                words.add(
                    "raise "
                        + c.cautionClass().code()
                        + " "
                        + c.code()
                        + " ("
                        + bank.caution(c.code()).map(Caution::title).map(Phrases::bare).orElse("")
                        + ")"));
    effects
        .restingEffectors()
        .forEach(e -> words.add("give the " + Effectors.words(e) + " no job"));
    effects.effort().forEach(e -> words.add(effort(e)));
    effects
        .advice()
        .forEach(a -> words.add("say under " + a.topic() + ": " + Phrases.bare(a.say())));
    effects.holds().forEach(h -> words.add("hold " + task(h)));
    if (words.isEmpty()) {
      words.add("nothing follows");
    }
    return words;
  }

  private String name(String approach) {
    return bank.approach(approach).map(Approach::words).map(Approach.Words::name).orElse(approach);
  }

  private static String effort(Rule.Effort effort) {
    List<String> parts = effort.effectors().stream().map(Effectors::words).toList();
    String of = parts.isEmpty() ? "" : " of the " + Phrases.and(parts);
    String on = effort.inputs().isEmpty() ? "" : " on " + Phrases.and(effort.inputs());
    return "multiply the effort" + of + on + " by " + Wording.number(effort.factor());
  }

  private static String task(TaskKind kind) {
    return switch (kind) {
      case TIMED -> "timed tasks";
      case STRENGTH -> "strength tasks";
      case BREATH -> "breath tasks";
      case HEAD -> "head movement tasks";
    };
  }
}
