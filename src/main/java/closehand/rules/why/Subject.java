package closehand.rules.why;

import closehand.bank.Approach;
import closehand.bank.Bank;
import closehand.bank.Caution;
import closehand.bank.Effectors;
import closehand.bank.Rule;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** What somebody asks "why" about. */
public sealed interface Subject {
  /** Its id, as bank files write it. */
  String id();

  /** Whether a rule says something about it. */
  boolean concerns(Rule rule);

  /** A kind of control. */
  record OfApproach(Approach approach) implements Subject {
    @Override
    public String id() {
      return approach.id();
    }

    @Override
    public boolean concerns(Rule rule) {
      return rule.effects().support().stream().anyMatch(s -> s.approach().equals(id()))
          || rule.effects().exclude().stream().anyMatch(e -> e.name().equals(id()));
    }
  }

  /** A caution. */
  record OfCaution(Caution caution) implements Subject {
    @Override
    public String id() {
      return caution.code();
    }

    @Override
    public boolean concerns(Rule rule) {
      return rule.effects().cautions().stream().anyMatch(c -> c.code().equals(id()));
    }
  }

  /** A kind of use that rules may make easier or harder, such as {@code trigger}. */
  record OfInput(String id) implements Subject {
    @Override
    public boolean concerns(Rule rule) {
      return rule.effects().effort().stream().anyMatch(e -> e.inputs().contains(id));
    }
  }

  /** A part of the body that works inputs, such as {@code L.T}. */
  record OfEffector(String id) implements Subject {
    @Override
    public boolean concerns(Rule rule) {
      return rule.effects().restingEffectors().contains(id)
          || rule.effects().effort().stream().anyMatch(e -> e.effectors().contains(id));
    }
  }

  /** What goes by this name in a bank; upper and lower case are the same. */
  static Optional<Subject> of(Bank bank, String name) {
    for (Approach approach : bank.approaches()) {
      if (approach.id().equalsIgnoreCase(name)) {
        return Optional.of(new OfApproach(approach));
      }
    }
    for (Caution caution : bank.cautions()) {
      if (caution.code().equalsIgnoreCase(name)) {
        return Optional.of(new OfCaution(caution));
      }
    }
    for (String effector : Effectors.all()) {
      if (effector.equalsIgnoreCase(name)) {
        return Optional.of(new OfEffector(effector));
      }
    }
    return inputs(bank).stream()
        .filter(i -> i.toLowerCase(Locale.ROOT).equals(name.toLowerCase(Locale.ROOT)))
        .findFirst()
        .map(OfInput::new);
  }

  /** Every name that can be asked about. */
  static List<String> names(Bank bank) {
    List<String> names = new ArrayList<>();
    bank.approaches().forEach(a -> names.add(a.id()));
    bank.cautions().forEach(c -> names.add(c.code()));
    names.addAll(inputs(bank));
    names.addAll(Effectors.all());
    return names;
  }

  /** Every kind of use that a rule of the bank names, in rule order. */
  static Set<String> inputs(Bank bank) {
    Set<String> inputs = new LinkedHashSet<>();
    bank.rules().forEach(r -> r.effects().effort().forEach(e -> inputs.addAll(e.inputs())));
    return inputs;
  }
}
