package closehand.json.snapshot;

import closehand.bank.Approach;

/** Approaches with their inputs and texts. */
final class ApproachesSnapshot {
  private ApproachesSnapshot() {}

  static void approach(Approach a, SnapshotOut out) {
    out.text(a.id());
    words(a.words(), out);
    out.list(a.inputs(), i -> input(i, out));
    span(a.forceNewtons(), out);
    span(a.travelMillimetres(), out);
    out.fraction(a.steadinessMillimetres());
    span(a.latencyMilliseconds(), out);
    span(a.setupMinutes(), out);
    out.texts(a.costClasses());
    out.flag(a.needsMount());
    out.flag(a.clinicianFirst());
    out.text(a.sides());
    out.text(a.family());
    out.texts(a.basis());
    out.where(a.where());
  }

  static Approach approach(SnapshotIn in) {
    return new Approach(
        in.text(),
        words(in),
        in.list(() -> input(in)),
        span(in),
        span(in),
        in.maybeFraction(),
        span(in),
        span(in),
        in.texts(),
        in.flag(),
        in.flag(),
        in.text(),
        in.text(),
        in.texts(),
        in.where());
  }

  private static void words(Approach.Words w, SnapshotOut out) {
    out.text(w.name());
    out.text(w.brief());
    out.text(w.summary());
    out.text(w.offers());
    out.text(w.effectors());
    out.text(w.reach());
    out.text(w.steadiness());
    out.text(w.goodAt());
    out.text(w.badAt());
    out.text(w.strain());
    out.text(w.contraIndications());
    out.text(w.mounting());
    out.text(w.borrow());
    out.text(w.firstTry());
  }

  private static Approach.Words words(SnapshotIn in) {
    return new Approach.Words(
        in.text(), in.text(), in.text(), in.text(), in.text(), in.text(), in.text(), in.text(),
        in.text(), in.text(), in.text(), in.text(), in.text(), in.text());
  }

  static void span(Approach.Span s, SnapshotOut out) {
    out.fraction(s.minimum());
    out.fraction(s.maximum());
    out.text(s.text());
  }

  static Approach.Span span(SnapshotIn in) {
    return new Approach.Span(in.fraction(), in.fraction(), in.text());
  }

  private static void input(Approach.Input i, SnapshotOut out) {
    out.text(i.id());
    out.text(i.kind());
    out.text(i.name());
    out.texts(i.effectors());
    out.texts(i.does());
    out.fraction(i.effort());
    out.text(i.usage());
    out.where(i.where());
  }

  private static Approach.Input input(SnapshotIn in) {
    return new Approach.Input(
        in.text(),
        in.text(),
        in.text(),
        in.texts(),
        in.texts(),
        in.fraction(),
        in.text(),
        in.where());
  }
}
