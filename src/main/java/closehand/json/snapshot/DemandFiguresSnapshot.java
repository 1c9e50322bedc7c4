package closehand.json.snapshot;

import closehand.bank.DemandFigures;

/** What a game asks for, in figures. */
final class DemandFiguresSnapshot {
  private static final DemandFigures.Effect[] EFFECTS = DemandFigures.Effect.values();

  private DemandFiguresSnapshot() {}

  static void write(DemandFigures d, SnapshotOut out) {
    out.fraction(d.movingShare());
    out.fraction(d.movementCountsAs());
    out.fraction(d.longestHeldShare());
    out.fraction(d.rapidPressesPerSecond());
    out.map(d.directions(), x -> directions(x, out));
    out.map(d.ownDirections(), x -> directions(x, out));
    out.list(d.settings(), s -> setting(s, out));
    out.texts(d.irreversible());
    out.list(d.jobs(), j -> job(j, out));
  }

  static DemandFigures read(SnapshotIn in) {
    return new DemandFigures(
        in.fraction(),
        in.fraction(),
        in.fraction(),
        in.fraction(),
        in.map(() -> directions(in)),
        in.map(() -> directions(in)),
        in.list(() -> setting(in)),
        in.texts(),
        in.list(() -> new DemandFigures.Job(in.text(), in.texts())));
  }

  private static void directions(DemandFigures.Directions d, SnapshotOut out) {
    out.texts(d.names());
    out.texts(d.keys());
    out.list(d.shares(), out::fraction);
  }

  private static DemandFigures.Directions directions(SnapshotIn in) {
    return new DemandFigures.Directions(in.texts(), in.texts(), in.list(in::fraction));
  }

  private static void setting(DemandFigures.Setting s, SnapshotOut out) {
    out.text(s.option());
    out.texts(s.words());
    out.name(s.does());
  }

  private static DemandFigures.Setting setting(SnapshotIn in) {
    return new DemandFigures.Setting(in.text(), in.texts(), in.name(EFFECTS));
  }

  private static void job(DemandFigures.Job j, SnapshotOut out) {
    out.text(j.name());
    out.texts(j.actions());
  }
}
