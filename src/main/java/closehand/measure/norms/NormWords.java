package closehand.measure.norms;

import closehand.interview.Wording;
import java.util.List;
import java.util.Locale;

/** A measurement beside what is usual, in words that give context and no verdict. */
public final class NormWords {
  /** Stands under every comparison. */
  public static final String CONTEXT =
      "The people in these tables are non-disabled adults. Your two hands, or two controls you"
          + " tried, tell you more when you compare them with each other.";

  private NormWords() {}

  /** One sentence for the page. */
  public static String sentence(Comparison comparison) {
    if (comparison instanceof Comparison.NoNorm none) {
      return "For " + none.strength().words() + " there is no norm that fits.";
    }
    Comparison.Beside beside = (Comparison.Beside) comparison;
    return "Your "
        + beside.origin().strength().words()
        + " is about "
        + share(beside.share())
        + " of what is usual at this age (about "
        + Math.round(beside.usual())
        + " kg).";
  }

  /** The same for the clinician, with figures and source. */
  public static String figures(Comparison.Beside beside) {
    StringBuilder text = new StringBuilder();
    text.append(Math.round(100 * beside.share())).append(" % of ");
    text.append(oneDecimal(beside.usual())).append(" kg");
    if (beside.deviations().isPresent()) {
      text.append("; z ").append(oneDecimal(beside.deviations().getAsDouble()));
    }
    beside.percent().ifPresent(p -> text.append("; ").append(p).append(" % of the sample below"));
    Origin origin = beside.origin();
    return text + ". " + origin.source() + " (" + origin.status() + "; " + origin.people() + ").";
  }

  /** Reach of a thumb for a hand of so many centimetres, as something to try. */
  public static List<String> reach(ThumbReach thumb, double handCentimetres) {
    ThumbReach.Zone zone = thumb.of(handCentimetres);
    return List.of(
        "For a hand of "
            + Wording.number(handCentimetres)
            + " cm, try buttons "
            + oneDecimal(zone.nearest())
            + " to "
            + oneDecimal(zone.farthest())
            + " cm from the thumb's knuckle first, across about "
            + oneDecimal(zone.sweep())
            + " cm; this is an estimate, so try it.",
        "With the grip moved, up to about "
            + oneDecimal(zone.withShift())
            + " cm from the base of the thumb.");
  }

  /** "half", "about 65 %": in steps of 5, as fine as a number on a dial can bear. */
  private static String share(double share) {
    long percent = 5 * Math.round(20 * share);
    if (percent == 50) {
      return "half";
    }
    return percent < 5 ? "less than 5 %" : percent + " %";
  }

  private static String oneDecimal(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }
}
