package closehand.json.snapshot;

import closehand.bank.Caution;
import closehand.bank.CautionClass;
import closehand.bank.GameProfile;
import closehand.bank.Source;

/** Game profiles, cautions and sources. */
final class CatalogueSnapshot {
  private static final CautionClass[] CLASSES = CautionClass.values();

  private CatalogueSnapshot() {}

  static void game(GameProfile g, SnapshotOut out) {
    out.text(g.genre());
    out.text(g.title());
    out.text(g.note());
    out.texts(g.settings());
    out.list(g.actions(), a -> action(a, out));
    out.texts(g.basis());
    out.where(g.where());
  }

  static GameProfile game(SnapshotIn in) {
    return new GameProfile(
        in.text(),
        in.text(),
        in.text(),
        in.texts(),
        in.list(() -> action(in)),
        in.texts(),
        in.where());
  }

  private static void action(GameProfile.Action a, SnapshotOut out) {
    out.text(a.id());
    out.text(a.name());
    out.fraction(a.perMinute());
    out.texts(a.style());
    ApproachesSnapshot.span(a.holdSeconds(), out);
    out.flag(a.continuous());
    out.number(a.urgency());
    out.number(a.importance());
    out.texts(a.pressedWith());
    out.texts(a.options());
    out.where(a.where());
  }

  private static GameProfile.Action action(SnapshotIn in) {
    return new GameProfile.Action(
        in.text(),
        in.text(),
        in.maybeFraction(),
        in.texts(),
        ApproachesSnapshot.span(in),
        in.flag(),
        in.number(),
        in.number(),
        in.texts(),
        in.texts(),
        in.where());
  }

  static void caution(Caution c, SnapshotOut out) {
    out.text(c.code());
    out.list(c.classes(), out::name);
    out.flag(c.lowerable());
    out.flag(c.bindsClinicians());
    out.text(c.title());
    out.text(c.message());
    out.texts(c.actions());
    out.text(c.clinician());
    out.text(c.contact());
    out.list(c.variants(), v -> variant(v, out));
    out.texts(c.keep());
    out.text(c.brief());
    out.where(c.where());
  }

  static Caution caution(SnapshotIn in) {
    return new Caution(
        in.text(),
        in.list(() -> in.name(CLASSES)),
        in.flag(),
        in.flag(),
        in.text(),
        in.text(),
        in.texts(),
        in.text(),
        in.text(),
        in.list(() -> variant(in)),
        in.texts(),
        in.text(),
        in.where());
  }

  private static void variant(Caution.Variant v, SnapshotOut out) {
    out.name(v.cautionClass());
    out.text(v.title());
    out.text(v.message());
    out.texts(v.actions());
    out.text(v.contact());
    out.text(v.brief());
  }

  private static Caution.Variant variant(SnapshotIn in) {
    return new Caution.Variant(
        in.name(CLASSES), in.text(), in.text(), in.texts(), in.text(), in.text());
  }

  static void source(Source s, SnapshotOut out) {
    out.text(s.id());
    out.text(s.usedFor());
    out.text(s.reference());
    out.text(s.status());
  }

  static Source source(SnapshotIn in) {
    return new Source(in.text(), in.text(), in.text(), in.text());
  }
}
