package closehand.report;

import closehand.strain.Band;
import closehand.strain.DayLoad;
import closehand.strain.Driver;
import closehand.strain.EffectorReading;
import closehand.strain.Factor;
import closehand.strain.Load;
import closehand.strain.LoadWords;
import closehand.strain.PlanLoad;
import java.util.List;
import java.util.Optional;

/**
 * What the leading plan asks of the body, in one line for the player: a count or a share of time of
 * the part with most to do, and no figure of a method. Those stand on the set-up sheet and on the
 * clinician's page, with what they are not.
 */
final class AskedLines {
  private AskedLines() {}

  /** The line; nothing where nobody looked, or the plan has no presses. */
  static List<Piece> of(PageInput input) {
    Optional<PlanLoad> leading =
        input.load().map(DayLoad::games).flatMap(g -> g.stream().findFirst());
    return leading.flatMap(PlanLoad::heaviest).stream()
        .<Piece>map(
            part ->
                Paragraph.of(
                    "Most to do: "
                        + LoadWords.yours(part.effector())
                        + ", "
                        + much(part)
                        + ": "
                        + words(part)
                        + "."))
        .toList();
  }

  private static String much(EffectorReading part) {
    boolean holds =
        part.light()
            .figure()
            .map(Load.Figure::drivers)
            .flatMap(d -> d.stream().findFirst())
            .map(Driver::factor)
            .filter(f -> f == Factor.HELD_SHARE)
            .isPresent();
    return holds
        ? "held " + LoadLines.percent(part.presses().heldShare()) + " of the time"
        : LoadWords.often(part.presses().perMinute());
  }

  private static String words(EffectorReading part) {
    Optional<Band> light = part.light().figure().map(Load.Figure::band);
    if (light.isEmpty() || light.get() == Band.UPPER) {
      return "very busy";
    }
    if (part.isHeavyByIndex()) {
      return "hard or long presses";
    }
    return light.get() == Band.MIDDLE ? "busy, worth sharing" : "it has room";
  }
}
