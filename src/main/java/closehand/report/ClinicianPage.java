package closehand.report;

import java.util.ArrayList;
import java.util.List;

/** Everything, for the clinician: each line with its reason, its rule and its source. */
public final class ClinicianPage {
  private static final List<Piece> WITHHELD =
      List.of(
          new Heading("Suggestions"),
          Paragraph.of(
              "Withheld until a medical review. They are worked out again once a clinician lowers the stop, with a"
                  + " reason, or the answers behind it change."));

  private ClinicianPage() {}

  /** The pages as one text. Where the session must end, they hold nothing but why. */
  public static String of(PageInput input, Glyphs glyphs) {
    return Sheet.text(input.ending().isEmpty() ? whole(input, glyphs) : ended(input), glyphs);
  }

  /** The stops with what they rest on, and what was answered by whom. */
  private static List<Piece> ended(PageInput input) {
    List<Piece> pieces = new ArrayList<>(TitleLines.of("Game controls, for the clinician", input));
    pieces.addAll(WarningLines.stopsAlone(input));
    pieces.addAll(FoundLines.behind(input, input.together().stops()));
    pieces.addAll(SourceLines.of(input, BasisWords.behind(input.together().stops())));
    pieces.addAll(FooterLines.of(input));
    return pieces;
  }

  private static List<Piece> whole(PageInput input, Glyphs glyphs) {
    List<Piece> pieces = new ArrayList<>(TitleLines.of("Game controls, for the clinician", input));
    pieces.addAll(TitleLines.provisionalLine(input));
    pieces.addAll(SinceLines.of(input));
    pieces.addAll(WarningLines.of(input));
    pieces.addAll(EffortLines.resting(input));
    boolean shown = !input.together().withheld();
    pieces.addAll(shown ? StandingLines.suggested(input, glyphs) : WITHHELD);
    pieces.addAll(LookAtLines.of(input));
    pieces.addAll(GoalLines.of(input, glyphs));
    pieces.addAll(SessionLines.withReasons(input));
    if (shown) {
      input
          .load()
          .ifPresent(
              day -> pieces.addAll(LoadDetails.of(input.bank(), input.limits().accepted(), day)));
      pieces.addAll(StandingLines.others(input, glyphs));
      pieces.addAll(GameLines.of(input));
    }
    pieces.addAll(EffortLines.factors(input));
    pieces.addAll(FoundLines.of(input));
    if (shown) {
      pieces.addAll(KitLines.of(input));
    }
    pieces.addAll(SourceLines.of(input));
    pieces.addAll(FooterLines.of(input));
    return pieces;
  }
}
