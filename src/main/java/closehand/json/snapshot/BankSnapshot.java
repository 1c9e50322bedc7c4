package closehand.json.snapshot;

import closehand.bank.Approach;
import closehand.bank.Bank;

/**
 * A whole bank in a few hundred kilobytes that are read in a few hundredths of a second.
 *
 * <p>Texts and places stand once in tables at the front; the body points into them.
 */
public final class BankSnapshot {
  private BankSnapshot() {}

  /** The bank without the examples of its rules. */
  public static byte[] write(Bank bank) {
    SnapshotOut out = new SnapshotOut();
    QuestionsSnapshot.write(bank.questionnaire(), out);
    out.list(bank.terms(), t -> RulesSnapshot.term(t, out));
    out.list(bank.rules(), r -> RulesSnapshot.rule(r, out));
    out.map(bank.themes(), out::text);
    out.list(bank.approaches(), a -> ApproachesSnapshot.approach(a, out));
    out.list(bank.costClasses(), c -> costClass(c, out));
    out.list(bank.mixes(), m -> mix(m, out));
    out.list(bank.games(), g -> CatalogueSnapshot.game(g, out));
    out.list(bank.cautions(), c -> CatalogueSnapshot.caution(c, out));
    out.list(bank.sources(), s -> CatalogueSnapshot.source(s, out));
    out.maybe(bank.planFigures(), f -> PlanFiguresSnapshot.write(f, out));
    out.maybe(bank.tasks(), t -> TasksSnapshot.write(t, out));
    out.text(bank.fingerprint());
    return out.bytes();
  }

  /**
   * The bank that was written.
   *
   * @throws RuntimeException if these are not the bytes of a snapshot
   */
  public static Bank read(byte[] bytes) {
    SnapshotIn in = new SnapshotIn(bytes);
    return new Bank(
        QuestionsSnapshot.read(in),
        in.list(() -> RulesSnapshot.term(in)),
        in.list(() -> RulesSnapshot.rule(in)),
        in.map(in::text),
        in.list(() -> ApproachesSnapshot.approach(in)),
        in.list(() -> new Approach.CostClass(in.text(), in.text())),
        in.list(() -> new Approach.Mix(in.texts(), in.text())),
        in.list(() -> CatalogueSnapshot.game(in)),
        in.list(() -> CatalogueSnapshot.caution(in)),
        in.list(() -> CatalogueSnapshot.source(in)),
        in.maybe(() -> PlanFiguresSnapshot.read(in)),
        in.maybe(() -> TasksSnapshot.read(in)),
        in.text());
  }

  private static void costClass(Approach.CostClass c, SnapshotOut out) {
    out.text(c.code());
    out.text(c.text());
  }

  private static void mix(Approach.Mix m, SnapshotOut out) {
    out.texts(m.approaches());
    out.text(m.text());
  }
}
