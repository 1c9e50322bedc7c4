package closehand.json.snapshot;

import closehand.bank.CautionClass;
import closehand.bank.Rule;
import closehand.bank.TaskKind;
import closehand.bank.Term;
import java.util.List;

/** Terms and rules; examples of rules are for the check of a bank and are left out. */
final class RulesSnapshot {
  private static final CautionClass[] CLASSES = CautionClass.values();
  private static final TaskKind[] TASKS = TaskKind.values();
  private static final Term.Computation[] COMPUTATIONS = Term.Computation.values();

  private RulesSnapshot() {}

  static void term(Term term, SnapshotOut out) {
    out.flag(term instanceof Term.Derived);
    out.text(term.id());
    out.text(term.text());
    if (term instanceof Term.Derived derived) {
      ConditionSnapshot.write(derived.when(), out);
    } else if (term instanceof Term.Computed computed) {
      out.name(computed.computation());
      out.texts(computed.of());
    }
    out.where(term.where());
  }

  static Term term(SnapshotIn in) {
    return in.flag()
        ? new Term.Derived(in.text(), in.text(), ConditionSnapshot.read(in), in.where())
        : new Term.Computed(in.text(), in.text(), in.name(COMPUTATIONS), in.texts(), in.where());
  }

  static void rule(Rule r, SnapshotOut out) {
    out.text(r.id());
    out.text(r.instance());
    out.text(r.theme());
    out.text(r.title());
    ConditionSnapshot.write(r.when(), out);
    out.maybe(r.unless(), c -> ConditionSnapshot.write(c, out));
    effects(r.effects(), out);
    out.text(r.reason());
    out.text(r.briefReason());
    out.maybe(r.clinicianReason(), out::text);
    out.texts(r.basis());
    out.where(r.where());
  }

  static Rule rule(SnapshotIn in) {
    return new Rule(
        in.text(),
        in.text(),
        in.text(),
        in.text(),
        ConditionSnapshot.read(in),
        in.maybe(() -> ConditionSnapshot.read(in)),
        effects(in),
        in.text(),
        in.text(),
        in.maybe(in::text),
        in.texts(),
        List.of(),
        in.where());
  }

  private static void effects(Rule.Effects e, SnapshotOut out) {
    out.list(e.exclude(), x -> located(x, out));
    out.list(e.support(), s -> support(s, out));
    out.list(e.cautions(), c -> raised(c, out));
    out.texts(e.restingEffectors());
    out.list(e.effort(), f -> effort(f, out));
    out.list(e.advice(), a -> advice(a, out));
    out.list(e.holds(), out::name);
  }

  private static Rule.Effects effects(SnapshotIn in) {
    return new Rule.Effects(
        in.list(() -> new Rule.Located(in.text(), in.where())),
        in.list(() -> new Rule.Support(in.text(), in.number() - 5, in.where())),
        in.list(() -> new Rule.Raised(in.text(), in.name(CLASSES), in.where())),
        in.texts(),
        in.list(() -> new Rule.Effort(in.texts(), in.texts(), in.fraction())),
        in.list(() -> new Rule.Advice(in.text(), in.text())),
        in.list(() -> in.name(TASKS)));
  }

  private static void located(Rule.Located x, SnapshotOut out) {
    out.text(x.name());
    out.where(x.where());
  }

  /** Points run from -5 to 5, so that they are written from 0 to 10. */
  private static void support(Rule.Support s, SnapshotOut out) {
    out.text(s.approach());
    out.number(s.points() + 5);
    out.where(s.where());
  }

  private static void raised(Rule.Raised c, SnapshotOut out) {
    out.text(c.code());
    out.name(c.cautionClass());
    out.where(c.where());
  }

  private static void effort(Rule.Effort f, SnapshotOut out) {
    out.texts(f.effectors());
    out.texts(f.inputs());
    out.fraction(f.factor());
  }

  private static void advice(Rule.Advice a, SnapshotOut out) {
    out.text(a.topic());
    out.text(a.say());
  }
}
