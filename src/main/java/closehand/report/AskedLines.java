package closehand.report;

import closehand.plan.Planned;
import closehand.strain.EffectorReading;
import closehand.strain.LoadWords;
import closehand.strain.PlanLoad;
import java.util.List;
import java.util.Optional;

/** What the leading plan asks of the body, in one short paragraph for the player. */
final class AskedLines {
  private AskedLines() {}

  /** The busiest part, its figures and what they are not; shorter where the page is full. */
  static List<Piece> of(PageInput input, Planned planned, Room room) {
    PlanLoad load = LoadText.day(input, List.of(planned)).games().get(0);
    Optional<EffectorReading> busiest = load.heaviest();
    if (busiest.isEmpty()) {
      return List.of();
    }
    EffectorReading part = busiest.get();
    return List.of(
        new Gap(),
        Paragraph.headed(
            "What it asks of you.",
            "In the plan for "
                + load.title()
                + ", "
                + LoadWords.yours(part.effector())
                + " has the most to do: "
                + LoadWords.often(part.presses().perMinute())
                + ", held "
                + LoadLines.percent(part.presses().heldShare())
                + " ("
                + LoadWords.light(part)
                + "). "
                + (room.terse()
                    ? "This only compares plans; your own signs come first."
                    : "Such figures compare plans, no more: your own signs and your health team"
                        + " come first.")));
  }
}
