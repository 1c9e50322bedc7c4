package closehand.bank;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Checks rules: names they use, effects they have, reasons and examples they give. */
final class RuleCheck {
  private static final List<String> TOPICS =
      List.of(
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
  private static final List<String> INPUTS =
      List.of(
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
  private final Doubt doubt;
  private final Findings findings;
  private final List<String> approachIds;
  private final List<String> sourceIds;
  private final List<String> cautionCodes;
  private final List<String> effectors = List.copyOf(Effectors.all());
  private List<Problem> problems = new ArrayList<>();
  private Names names;

  RuleCheck(Bank bank, FactKinds kinds, Doubt doubt, List<Problem> all) {
    this.bank = bank;
    this.kinds = kinds;
    this.doubt = doubt;
    this.findings = new Findings(all);
    this.approachIds = bank.approaches().stream().map(Approach::id).toList();
    this.sourceIds = bank.sources().stream().map(Source::id).toList();
    this.cautionCodes = bank.cautions().stream().map(Caution::code).toList();
    this.names = new Names(doubt, problems);
  }

  void check() {
    Map<String, Where> ids = new HashMap<>();
    for (Rule rule : bank.rules()) {
      problems = new ArrayList<>();
      names = new Names(doubt, problems);
      Where first = ids.putIfAbsent(rule.id(), rule.where());
      if (first != null && !first.equals(rule.where()) && !rule.id().isEmpty()) {
        report(
            rule.where().child("id"),
            "duplicate-id",
            "The rule id \"" + rule.id() + "\" is used already, in " + first + ".",
            "Choose another.");
      }
      rule(rule);
      findings.addInstance(problems);
    }
  }

  private void rule(Rule rule) {
    ConditionCheck conditions = new ConditionCheck(kinds, problems);
    conditions.check(rule.when());
    rule.unless().ifPresent(conditions::check);
    Where then = rule.where().child("then");
    approaches(rule.effects());
    cautions(rule);
    effectors(rule.effects().restingEffectors(), then.child("excludeEffectors"));
    effort(rule.effects().effort(), then.child("effort"));
    advice(rule.effects().advice(), then.child("advise"));
    Where basis = rule.where().child("basis");
    int index = 0;
    for (String source : rule.basis()) {
      names.known(
          source,
          basis.child(index++),
          Catalogue.SOURCES,
          sourceIds,
          "unknown-source",
          "a source or a named basis of this bank");
    }
    how(rule);
    texts(rule);
    RuleExamples.check(rule, kinds, doubt, problems);
  }

  private void approaches(Rule.Effects effects) {
    Set<String> excluded = new TreeSet<>();
    for (Rule.Located one : effects.exclude()) {
      approach(one.name(), one.where());
      if (!excluded.add(one.name())) {
        contradicts(one.where(), "\"" + one.name() + "\" is ruled out twice.");
      }
    }
    for (Rule.Support one : effects.support()) {
      approach(one.approach(), one.where());
      if (excluded.contains(one.approach())) {
        contradicts(one.where(), "\"" + one.approach() + "\" gets points and is ruled out.");
      }
    }
  }

  private void contradicts(Where where, String what) {
    report(where, "contradiction", what, "Keep one of the two.");
  }

  private void approach(String id, Where where) {
    names.known(
        id,
        where,
        Catalogue.APPROACHES,
        approachIds,
        "unknown-approach",
        "an approach of this bank");
  }

  private void effort(List<Rule.Effort> efforts, Where where) {
    int index = 0;
    for (Rule.Effort effort : efforts) {
      Where here = where.child(index++);
      effectors(effort.effectors(), here.child("effectors"));
      if (effort.effectors().isEmpty() && !doubt.about(here)) {
        report(here.child("effectors"), "empty-list", "This list is empty.", "Name a body part.");
      }
      int inner = 0;
      for (String input : effort.inputs()) {
        names.known(
            input,
            here.child("inputs").child(inner++),
            INPUTS,
            "unknown-input",
            "a kind of use (" + String.join(", ", INPUTS) + ")");
      }
    }
  }

  private void effectors(List<String> parts, Where where) {
    int index = 0;
    for (String part : parts) {
      names.known(
          part, where.child(index++), effectors, "unknown-effector", "a body part, such as L.T");
    }
  }

  private void advice(List<Rule.Advice> advice, Where where) {
    int index = 0;
    for (Rule.Advice one : advice) {
      Where here = where.child(index++);
      names.known(
          one.topic(),
          here.child("topic"),
          TOPICS,
          "unknown-topic",
          "a topic of advice (" + String.join(", ", TOPICS) + ")");
      text(one.say(), here.child("say"));
    }
  }

  private void cautions(Rule rule) {
    for (Rule.Raised raised : rule.effects().cautions()) {
      Where here = raised.where();
      names.known(
          raised.code(),
          here.child("code"),
          Catalogue.CAUTIONS,
          cautionCodes,
          "unknown-caution",
          "a caution of this bank");
      bank.caution(raised.code())
          .filter(c -> !doubt.about(c.where()))
          .ifPresent(c -> caution(rule, raised, c, here));
    }
  }

  private void caution(Rule rule, Rule.Raised raised, Caution caution, Where here) {
    if (!caution.classes().contains(raised.cautionClass()) && !caution.classes().isEmpty()) {
      List<String> can = caution.classes().stream().map(CautionClass::code).toList();
      report(
          here.child("class"),
          "unknown-level",
          raised.code() + " is never " + raised.cautionClass().code() + ".",
          "It can be " + String.join(" or ", can) + ".");
    }
    Where unless = rule.where().child("unless");
    boolean readable =
        !doubt.about(rule.where()) && problems.stream().noneMatch(p -> p.where().isWithin(unless));
    if (raised.cautionClass().stops() && readable) {
      StopCheck.check(rule, caution, problems);
    }
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
          rule.where().child("then"),
          "how-in-decision",
          "A rule that asks how something is known may only raise NOTE or CARE, give advice and hold"
              + " tasks.",
          "Move the other effects to a rule of their own.");
    }
  }

  private void texts(Rule rule) {
    text(rule.title(), rule.where().child("title"));
    Where because = rule.where().child("because");
    text(rule.reason(), because.child("player"));
    if (!rule.briefReason().equals(rule.reason())) {
      text(rule.briefReason(), because.child("short"));
    }
    rule.clinicianReason().ifPresent(r -> text(r, because.child("clinician")));
  }

  private void text(String text, Where where) {
    if (text.contains("{")) {
      report(
          where,
          "placeholder",
          "A placeholder in braces is left in this text.",
          "Set \"for\" to side or digit, or mend its name.");
    }
  }

  private void report(Where where, String code, String what, String mend) {
    problems.add(Problem.error(where, code, what, mend));
  }
}
