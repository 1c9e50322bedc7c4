package closehand.rules;

import closehand.bank.Bank;
import closehand.bank.Condition;
import closehand.bank.Condition.Test;
import closehand.bank.EnableWhen;
import closehand.bank.Field;
import closehand.bank.Rule;
import closehand.bank.Term;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A bank laid out for making its rules out: everything by id, conditions spread over the games.
 *
 * @param fields what can be asked, in order
 * @param terms what is worked out, in order
 * @param derivedWhen the condition of each derived term, spread
 * @param clauses both conditions of each rule, in rule order
 * @param games the game slots
 */
record BankView(
    Bank bank,
    Map<String, Field> fields,
    Map<String, Term> terms,
    Map<String, Condition> derivedWhen,
    List<Clauses> clauses,
    GameScope games) {

  /** The conditions of a rule, spread over the games. */
  record Clauses(Condition when, Optional<Condition> unless) {}

  static BankView of(Bank bank) {
    Map<String, Field> fields = bank.questionnaire().fieldsByFact();
    GameScope games = GameScope.of(fields);
    Map<String, Term> terms = new LinkedHashMap<>();
    Map<String, Condition> derivedWhen = new LinkedHashMap<>();
    for (Term term : bank.terms()) {
      terms.put(term.id(), term);
      if (term instanceof Term.Derived derived) {
        derivedWhen.put(term.id(), games.spread(derived.when()));
      }
    }
    List<Clauses> clauses = new ArrayList<>();
    for (Rule rule : bank.rules()) {
      clauses.add(new Clauses(games.spread(rule.when()), rule.unless().map(games::spread)));
    }
    return new BankView(bank, fields, terms, derivedWhen, clauses, games);
  }

  /** Every comparison of every rule and term. */
  List<Test> tests() {
    List<Test> tests = new ArrayList<>();
    derivedWhen.values().forEach(c -> GameScope.collectTests(c, tests));
    for (Clauses both : clauses) {
      GameScope.collectTests(both.when(), tests);
      both.unless().ifPresent(c -> GameScope.collectTests(c, tests));
    }
    return tests;
  }

  /** Every comparison of every "enable when". */
  List<EnableWhen.Test> enableTests() {
    List<EnableWhen.Test> tests = new ArrayList<>();
    for (Field field : fields.values()) {
      field.conditions().forEach(c -> tests.addAll(c.tests()));
    }
    return tests;
  }

  /** The facts and terms that a fact's applicability or a term's value needs. */
  List<String> needs(String id) {
    List<String> needs = new ArrayList<>();
    Field field = fields.get(id);
    if (field != null) {
      field.conditions().forEach(c -> c.tests().forEach(t -> needs.add(t.fact())));
    } else if (terms.get(id) instanceof Term.Computed computed) {
      needs.addAll(computed.of());
    } else if (derivedWhen.containsKey(id)) {
      List<Test> tests = new ArrayList<>();
      GameScope.collectTests(derivedWhen.get(id), tests);
      tests.forEach(t -> needs.add(t.fact()));
    }
    return needs;
  }
}
