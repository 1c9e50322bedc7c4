package closehand.bank;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Checks rules and terms: names they use, effects they have, reasons they give. */
final class RuleCheck {
  private static final Set<String> TOPICS =
      Set.of(
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
  private static final Set<String> INPUTS =
      Set.of(
          "tap",
          "hold",
          "longHold",
          "layerHold",
          "repeat",
          "trigger",
          "stick",
          "sidePanel",
          "farCell",
          "slide",
          "drag",
          "smallTarget",
          "firmPress",
          "pinch",
          "wheelClick",
          "any");

  private final Bank bank;
  private final FactKinds kinds;
  private final List<Problem> problems;
  private final ConditionCheck conditions;
  private final List<String> approachIds;
  private final List<String> sourceIds;
  private final List<String> cautionCodes;
  private final Set<String> effectors;

  RuleCheck(Bank bank, FactKinds kinds, List<Problem> problems) {
    this.bank = bank;
    this.kinds = kinds;
    this.problems = problems;
    this.conditions = new ConditionCheck(kinds, problems);
    this.approachIds = bank.approaches().stream().map(Approach::id).toList();
    this.sourceIds = bank.sources().stream().map(Source::id).toList();
    this.cautionCodes = bank.cautions().stream().map(Caution::code).toList();
    this.effectors = Effectors.all();
  }

  void check() {
    Map<String, Where> ids = new HashMap<>();
    for (Rule rule : bank.rules()) {
      Where first = ids.putIfAbsent(rule.key(), rule.where());
      if (first != null) {
        report(
            rule.where(),
            "duplicate-id",
            "The rule id \"" + rule.id() + "\" is used already, in " + first + ".",
            "");
      }
      rule(rule);
    }
    terms();
  }

  private void terms() {
    Set<String> ids = new HashSet<>();
    for (Term term : bank.terms()) {
      if (!ids.add(term.id()) || kinds.fact(term.id()).isPresent()) {
        report(term.where(), "duplicate-id", "The name \"" + term.id() + "\" is used already.", "");
      }
      if (term instanceof Term.Derived derived) {
        conditions.check(derived.when());
        if (ConditionCheck.asksHow(derived.when())) {
          report(
              term.where(),
              "how-in-decision",
              "A term must not depend on how something is known.",
              "");
        }
      } else if (term instanceof Term.Computed computed) {
        computed(computed);
      }
    }
  }

  private void computed(Term.Computed computed) {
    boolean difference = computed.computation() == Term.Computation.DIFFERENCE;
    boolean count = computed.computation() == Term.Computation.COUNT;
    if (computed.of().isEmpty()
        || (difference && computed.of().size() != 2)
        || (count && computed.of().size() != 1)) {
      report(
          computed.where(),
          "empty-list",
          "This term is computed from the wrong number of facts.",
          "");
    }
    for (String part : computed.of()) {
      boolean fits =
          count
              ? kinds.fact(part).orElse(null) instanceof FactType.SeveralOf
              : kinds.range(part).isPresent() && !part.equals(computed.id());
      if (!kinds.known(part)) {
        report(
            computed.where(),
            "unknown-fact",
            "\"" + part + "\" is neither asked nor worked out in this bank.",
            Hint.didYouMean(part, kinds.names()));
      } else if (!fits) {
        report(computed.where(), "wrong-type", "\"" + part + "\" cannot be computed with.", "");
      }
    }
  }

  private void rule(Rule rule) {
    conditions.check(rule.when());
    rule.unless().ifPresent(conditions::check);
    Rule.Effects effects = rule.effects();
    effects
        .exclude()
        .forEach(a -> name(a.name(), a.where(), approachIds, "unknown-approach", "an approach"));
    effects
        .support()
        .forEach(
            s -> name(s.approach(), s.where(), approachIds, "unknown-approach", "an approach"));
    effects.cautions().forEach(c -> caution(rule, c));
    effects
        .restingEffectors()
        .forEach(
            e -> name(e, rule.where(), List.copyOf(effectors), "unknown-effector", "a body part"));
    for (Rule.Effort effort : effects.effort()) {
      effort
          .effectors()
          .forEach(
              e ->
                  name(e, rule.where(), List.copyOf(effectors), "unknown-effector", "a body part"));
      effort
          .inputs()
          .forEach(
              i -> name(i, rule.where(), List.copyOf(INPUTS), "unknown-input", "a kind of use"));
    }
    effects
        .advice()
        .forEach(
            a ->
                name(
                    a.topic(),
                    rule.where(),
                    List.copyOf(TOPICS),
                    "unknown-topic",
                    "a topic of advice"));
    rule.basis()
        .forEach(
            b -> name(b, rule.where(), sourceIds, "unknown-source", "a source or a named basis"));
    how(rule);
    templates(rule);
    examples(rule);
  }

  private void caution(Rule rule, Rule.Raised raised) {
    name(raised.code(), raised.where(), cautionCodes, "unknown-caution", "a caution");
    bank.caution(raised.code())
        .ifPresent(
            caution -> {
              if (!caution.classes().contains(raised.cautionClass())) {
                report(
                    raised.where(),
                    "unknown-level",
                    raised.code() + " is never " + raised.cautionClass().code() + ".",
                    "It can be "
                        + String.join(
                            ", ", caution.classes().stream().map(CautionClass::code).toList())
                        + ".");
              }
              stop(rule, raised, caution);
            });
  }

  private void stop(Rule rule, Rule.Raised raised, Caution caution) {
    boolean liftable =
        rule.unless().stream()
            .flatMap(u -> ConditionCheck.tests(u).stream())
            .anyMatch(t -> clears(t, raised.code()));
    if (raised.cautionClass().stops() && caution.lowerable() != liftable) {
      report(
          rule.where(),
          "stop-lowering",
          caution.lowerable()
              ? "A clinician may lower " + raised.code() + ", but this rule does not let go."
              : raised.code() + " cannot be lowered, but this rule lets go.",
          caution.lowerable()
              ? "Add \"unless\": [\"cleared\", \"has\", \"" + raised.code() + "\"]."
              : "Remove the unless.");
    }
  }

  private static boolean clears(Condition.Test test, String code) {
    return test.fact().equals(FactKinds.CLEARED)
        && test.value() instanceof Condition.Operand.Code one
        && one.value().equals(code);
  }

  /** One more answer must never undo a conclusion, so "not asked yet" may only bring care. */
  private void how(Rule rule) {
    boolean asks =
        ConditionCheck.asksHow(rule.when())
            || rule.unless().map(ConditionCheck::asksHow).orElse(false);
    Rule.Effects effects = rule.effects();
    boolean decides =
        !effects.exclude().isEmpty()
            || !effects.support().isEmpty()
            || !effects.restingEffectors().isEmpty()
            || !effects.effort().isEmpty()
            || effects.cautions().stream().anyMatch(c -> c.cautionClass().stops());
    if (asks && decides) {
      report(
          rule.where(),
          "how-in-decision",
          "A rule that asks how something is known may only raise NOTE or CARE and give advice.",
          "");
    }
  }

  private void templates(Rule rule) {
    boolean left =
        rule.reason().contains("{")
            || rule.clinicianReason().orElse("").contains("{")
            || rule.title().contains("{");
    if (left) {
      report(
          rule.where(),
          "placeholder",
          "A placeholder in braces is left in a text of this rule.",
          "Set \"for\" to side or digit, or mend its name.");
    }
  }

  private void examples(Rule rule) {
    boolean always = rule.when() instanceof Condition.Always && rule.unless().isEmpty();
    Set<Rule.Expect> wanted =
        new TreeSet<>(always ? Set.of(Rule.Expect.FIRES) : Set.of(Rule.Expect.values()));
    rule.examples().forEach(e -> wanted.remove(e.expect()));
    boolean epistemic = ConditionCheck.asksHow(rule.when());
    if (epistemic) {
      wanted.remove(Rule.Expect.WAITS);
    }
    if (!wanted.isEmpty()) {
      report(
          rule.where(),
          "missing-example",
          "The rule has no example that " + words(wanted) + ".",
          "Add one.");
    }
  }

  private static String words(Set<Rule.Expect> wanted) {
    return String.join(
        " or ",
        wanted.stream()
            .map(
                e ->
                    switch (e) {
                      case FIRES -> "fires";
                      case NOT -> "does not fire";
                      case WAITS -> "waits";
                    })
            .toList());
  }

  private void name(String name, Where where, List<String> known, String code, String what) {
    if (!known.contains(name)) {
      report(
          where,
          code,
          "\"" + name + "\" is not " + what + " of this bank.",
          Hint.didYouMean(name, known));
    }
  }

  private void report(Where where, String code, String what, String mend) {
    problems.add(Problem.error(where, code, what, mend));
  }
}
