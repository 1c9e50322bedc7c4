package closehand.report;

import closehand.bank.CautionClass;
import closehand.rules.Warning;
import java.util.ArrayList;
import java.util.List;

/**
 * A stop in full: what it is, what to do, whom to ask. Kind, without colour, and impossible to
 * miss.
 */
public final class StopNotice {
  private static final int MOST_REASONS = 2;
  private static final String DRAFT = "draft for your clinician";
  private static final String PLACE_UNKNOWN =
      "not told yet; please say so before anything is tried";

  private StopNotice() {}

  /** The notice of one stop as text. */
  public static String of(Warning stop, Glyphs glyphs) {
    return of(List.of(stop), glyphs);
  }

  /** The notices of several stops as text, in the order given. */
  public static String of(List<Warning> stops, Glyphs glyphs) {
    List<Piece> pieces = new ArrayList<>();
    stops.forEach(stop -> pieces.addAll(pieces(stop, List.of(), false)));
    return Sheet.text(pieces, glyphs);
  }

  /** The notices of all stops in full, with the part of the body. */
  static List<Piece> all(PageInput input) {
    return all(input, false);
  }

  /**
   * The notices of all stops on a page that knows the answers, with the part of the body.
   *
   * @param brief whether each is told in the few words that the bank has for it
   */
  static List<Piece> all(PageInput input, boolean brief) {
    List<Piece> pieces = new ArrayList<>();
    input
        .together()
        .stops()
        .forEach(stop -> pieces.addAll(pieces(fitting(stop, input), places(stop, input), brief)));
    return pieces;
  }

  private static List<String> places(Warning stop, PageInput input) {
    List<String> places = input.facts().places(stop);
    return places.isEmpty() && input.facts().asksPlace(stop) ? List.of(PLACE_UNKNOWN) : places;
  }

  /** Where everything waits there is no draft to speak of. */
  private static Warning fitting(Warning stop, PageInput input) {
    return input.together().withheld() ? Without.actions(stop, a -> a.contains(DRAFT)) : stop;
  }

  private static List<Piece> pieces(Warning stop, List<String> places, boolean brief) {
    List<Piece> pieces = new ArrayList<>();
    pieces.add(new Heading(opening(stop.cautionClass()) + stop.caution().title()));
    if (brief && !stop.caution().brief().isEmpty()) {
      pieces.add(Paragraph.of(Phrases.joined(where(places), stop.caution().brief())));
      return pieces;
    }
    pieces.add(Paragraph.of(stop.caution().message()));
    if (!places.isEmpty()) {
      pieces.add(Paragraph.of(where(places)));
    }
    int place = 0;
    for (String action : stop.caution().actions()) {
      pieces.add(Paragraph.numbered(++place, action));
    }
    if (!stop.caution().contact().isEmpty()) {
      pieces.add(Paragraph.of("Whom to ask: " + stop.caution().contact()));
    }
    List<String> reasons = Reasons.sentences(stop.because(), MOST_REASONS);
    if (!reasons.isEmpty()) {
      pieces.add(Paragraph.of("Why you see this: " + String.join(" ", reasons)));
    }
    return pieces;
  }

  private static String where(List<String> places) {
    return places.isEmpty() ? "" : "Where: " + Phrases.lower(Phrases.listed(places)) + ".";
  }

  private static String opening(CautionClass stop) {
    return switch (stop) {
      case STOP_ALL -> "Stop. ";
      case STOP_TASKS -> "Stop. No tasks for now. ";
      case STOP_PART -> "Stop for this part of your body. ";
      case CARE, NOTE -> "Take care. ";
    };
  }
}
