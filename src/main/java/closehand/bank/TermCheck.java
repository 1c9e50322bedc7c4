package closehand.bank;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Checks what is worked out from answers: its name, and what it is worked out from. */
final class TermCheck {
  private final Bank bank;
  private final FactKinds kinds;
  private final Findings findings;
  private List<Problem> problems = new ArrayList<>();

  TermCheck(Bank bank, FactKinds kinds, List<Problem> all) {
    this.bank = bank;
    this.kinds = kinds;
    this.findings = new Findings(all);
  }

  void check() {
    Map<String, Where> ids = new HashMap<>();
    for (Term term : bank.terms()) {
      problems = new ArrayList<>();
      name(term, ids.putIfAbsent(term.id(), term.where()));
      if (term.text().contains("{")) {
        report(
            term.where().child("text"),
            "placeholder",
            "A placeholder in braces is left in this text.",
            "Set \"for\" to side or digit, or mend its name.");
      }
      if (term instanceof Term.Derived derived) {
        new ConditionCheck(kinds, problems).check(derived.when());
        if (ConditionCheck.asksHow(derived.when())) {
          report(
              term.where().child("when"),
              "how-in-decision",
              "A term must not depend on how something is known.",
              "Compare the answer itself.");
        }
      } else if (term instanceof Term.Computed computed) {
        computed(computed);
      }
      findings.addInstance(problems);
    }
  }

  private void name(Term term, @org.jspecify.annotations.Nullable Where first) {
    if (term.id().isEmpty()) {
      return;
    }
    Where where = term.where().child("id");
    if (kinds.asked().contains(term.id()) || term.id().equals(FactKinds.CLEARED)) {
      report(
          where,
          "duplicate-id",
          "The name \"" + term.id() + "\" belongs to a question or to the program itself.",
          "Choose another.");
    } else if (first != null && first.equals(term.where())) {
      report(
          where,
          "duplicate-id",
          "The name \"" + term.id() + "\" is the same for every side or digit.",
          "Put {X} or {D} into it.");
    } else if (first != null) {
      report(
          where,
          "duplicate-id",
          "The name \"" + term.id() + "\" is used already, in " + first + ".",
          "Choose another.");
    }
  }

  private void computed(Term.Computed computed) {
    Where where = computed.where().child(member(computed.computation()));
    int size = computed.of().size();
    switch (computed.computation()) {
      case DIFFERENCE -> size(where, size == 2, "A difference is computed from two names.");
      case COUNT -> size(where, size == 1, "A count is computed from one name.");
      default -> size(where, size > 0, "This list of names is empty.");
    }
    int index = 0;
    for (String part : computed.of()) {
      part(computed, part, where.child(index++));
    }
  }

  private static String member(Term.Computation computation) {
    return switch (computation) {
      case MAXIMUM -> "max";
      case MINIMUM -> "min";
      case COUNT -> "count";
      case DIFFERENCE -> "difference";
    };
  }

  private void size(Where where, boolean fits, String what) {
    if (!fits) {
      report(where, "empty-list", what, "");
    }
  }

  private void part(Term.Computed computed, String part, Where where) {
    if (!kinds.known(part)) {
      if (kinds.complete()) {
        report(
            where,
            "unknown-fact",
            "\"" + part + "\" is neither asked nor worked out in this bank.",
            Hint.didYouMean(part, kinds.names()));
      }
      return;
    }
    boolean loop = kinds.term(part).orElse(null) instanceof Term.Computed && !kinds.judged(part);
    if (loop || (kinds.fact(part).isPresent() && !kinds.judged(part))) {
      return;
    }
    switch (computed.computation()) {
      case COUNT -> counted(part, where);
      case DIFFERENCE -> number(part, where, true);
      default -> number(part, where, false);
    }
  }

  private void counted(String part, Where where) {
    if (!(kinds.fact(part).orElse(null) instanceof FactType.SeveralOf several)) {
      report(where, "wrong-type", "\"" + part + "\" is no question with several answers.", "");
    } else if (FactKinds.countable(several) == 0) {
      report(where, "wrong-type", "\"" + part + "\" has no answer that counts.", "");
    }
  }

  private void number(String part, Where where, boolean whole) {
    if (kinds.span(part).isEmpty()) {
      report(where, "wrong-type", "\"" + part + "\" is neither a number nor a scale.", "");
    } else if (whole
        && kinds.fact(part).orElse(null) instanceof FactType.Amount amount
        && amount.decimals() > 0) {
      report(where, "wrong-type", "A difference needs whole numbers.", "");
    }
  }

  private void report(Where where, String code, String what, String mend) {
    problems.add(Problem.error(where, code, what, mend));
  }
}
