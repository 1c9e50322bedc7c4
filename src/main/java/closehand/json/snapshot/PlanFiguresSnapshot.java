package closehand.json.snapshot;

import closehand.bank.PlanFigures;

/** What a control plan is weighed with. */
final class PlanFiguresSnapshot {
  private PlanFiguresSnapshot() {}

  static void write(PlanFigures f, SnapshotOut out) {
    effort(f.effort(), out);
    prices(f.prices(), out);
    load(f.load(), out);
    time(f.time(), out);
    out.number(f.reliability().digitPerMille());
    out.number(f.reliability().quickSitePerMille());
    out.number(f.reliability().slowSitePerMille());
    out.number(f.reliability().dwellPerMille());
    parts(f.parts(), out);
    out.map(f.kinds(), k -> kind(k, out));
    out.map(f.families(), x -> family(x, out));
    layout(f.layout(), out);
    DemandFiguresSnapshot.write(f.demand(), out);
    out.texts(f.basis());
    out.where(f.where());
  }

  static PlanFigures read(SnapshotIn in) {
    return new PlanFigures(
        effort(in),
        prices(in),
        load(in),
        time(in),
        new PlanFigures.Reliability(in.number(), in.number(), in.number(), in.number()),
        parts(in),
        in.map(() -> kind(in)),
        in.map(() -> family(in)),
        layout(in),
        DemandFiguresSnapshot.read(in),
        in.texts(),
        in.where());
  }

  private static void effort(PlanFigures.Effort e, SnapshotOut out) {
    out.fraction(e.pointsPerPress());
    out.fraction(e.pointsPerHeldSecond());
    out.fraction(e.leastFactor());
    out.fraction(e.mostFactor());
    out.fraction(e.lastResortFrom());
    out.fraction(e.lastResortTimes());
    out.list(e.importanceTimes(), out::fraction);
    out.fraction(e.uncertainTimes());
    out.map(e.effectorTimes(), out::fraction);
    out.fraction(e.longHoldSeconds());
  }

  private static PlanFigures.Effort effort(SnapshotIn in) {
    return new PlanFigures.Effort(
        in.fraction(),
        in.fraction(),
        in.fraction(),
        in.fraction(),
        in.fraction(),
        in.fraction(),
        in.list(in::fraction),
        in.fraction(),
        in.map(in::fraction),
        in.fraction());
  }

  private static void prices(PlanFigures.Prices p, SnapshotOut out) {
    out.list(p.leftOutPoints(), out::number);
    out.list(p.missTenths(), out::number);
    out.number(p.togglePoints());
    out.number(p.waitPointsPerSecond());
    out.number(p.longHoldOnLayerMilliseconds());
    out.number(p.crossPoints());
    out.number(p.apartPoints());
    out.number(p.habitPoints());
    out.number(p.usualPoints());
  }

  private static PlanFigures.Prices prices(SnapshotIn in) {
    return new PlanFigures.Prices(
        in.list(in::number),
        in.list(in::number),
        in.number(),
        in.number(),
        in.number(),
        in.number(),
        in.number(),
        in.number(),
        in.number());
  }

  private static void load(PlanFigures.Load l, SnapshotOut out) {
    out.fraction(l.mostPressesPerMinute());
    out.fraction(l.mostShareOfTapRate());
    out.fraction(l.greenPressesPerMinute());
    out.fraction(l.greenShareOfTapRate());
    out.fraction(l.mostHeldShare());
    out.fraction(l.greenHeldShare());
    out.fraction(l.shareOfMeasuredHold());
    out.fraction(l.longestMeasuredHoldSeconds());
    out.fraction(l.quickSitePressesPerMinute());
    out.fraction(l.slowSitePressesPerMinute());
    out.fraction(l.spokenPerMinute());
    out.fraction(l.overuseTimes());
    out.number(l.amberPointsPerPress());
    out.number(l.amberPointsPerHeldSecond());
  }

  private static PlanFigures.Load load(SnapshotIn in) {
    return new PlanFigures.Load(
        in.fraction(),
        in.fraction(),
        in.fraction(),
        in.fraction(),
        in.fraction(),
        in.fraction(),
        in.fraction(),
        in.fraction(),
        in.fraction(),
        in.fraction(),
        in.fraction(),
        in.fraction(),
        in.number(),
        in.number());
  }

  private static void time(PlanFigures.Time t, SnapshotOut out) {
    out.list(t.urgencyMilliseconds(), out::number);
    out.fraction(t.latencyShare());
    out.number(t.digitMilliseconds());
    out.number(t.quickSiteMilliseconds());
    out.number(t.slowSiteMilliseconds());
    out.number(t.layerMilliseconds());
  }

  private static PlanFigures.Time time(SnapshotIn in) {
    return new PlanFigures.Time(
        in.list(in::number), in.fraction(), in.number(), in.number(), in.number(), in.number());
  }

  private static void parts(PlanFigures.Parts p, SnapshotOut out) {
    out.number(p.most());
    out.number(p.pointsPerSetupMinute());
    out.number(p.pointsPerRulePoint());
    out.map(p.costPoints(), out::number);
    out.number(p.overBudgetPoints());
    out.number(p.overTimePoints());
    out.fraction(p.ownedTimes());
    out.map(p.owned(), out::texts);
  }

  private static PlanFigures.Parts parts(SnapshotIn in) {
    return new PlanFigures.Parts(
        in.number(),
        in.number(),
        in.number(),
        in.map(in::number),
        in.number(),
        in.number(),
        in.fraction(),
        in.map(in::texts));
  }

  private static void kind(PlanFigures.Kind k, SnapshotOut out) {
    out.texts(k.uses());
    out.texts(k.speaks());
    out.flag(k.needsCursor());
    out.fraction(k.times());
  }

  private static PlanFigures.Kind kind(SnapshotIn in) {
    return new PlanFigures.Kind(in.texts(), in.texts(), in.flag(), in.fraction());
  }

  private static void family(PlanFigures.Family f, SnapshotOut out) {
    out.text(f.occupies());
    out.number(f.leastMove());
    out.number(f.leastPress());
    out.texts(f.buttonsSpeak());
    out.texts(f.uses());
  }

  private static PlanFigures.Family family(SnapshotIn in) {
    return new PlanFigures.Family(in.text(), in.number(), in.number(), in.texts(), in.texts());
  }

  private static void layout(PlanFigures.Layout l, SnapshotOut out) {
    out.texts(l.keyOrder());
    out.map(l.places(), p -> out.list(p, out::number));
    out.list(l.crosses(), out::texts);
    out.number(l.phrasesFrom90());
    out.number(l.phrasesFrom70());
  }

  private static PlanFigures.Layout layout(SnapshotIn in) {
    return new PlanFigures.Layout(
        in.texts(),
        in.map(() -> in.list(in::number)),
        in.list(in::texts),
        in.number(),
        in.number());
  }
}
