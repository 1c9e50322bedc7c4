package closehand.report;

import java.util.ArrayList;
import java.util.List;

/** Everything, for the clinician: each line with its reason, its rule and its source. */
public final class ClinicianPage {
  private ClinicianPage() {}

  /** The pages as one text. */
  public static String of(PageInput input, Glyphs glyphs) {
    List<Piece> pieces = new ArrayList<>(TitleLines.of("Game controls, for the clinician", input));
    pieces.addAll(TitleLines.provisionalLine(input));
    pieces.addAll(WarningLines.of(input));
    pieces.addAll(LookAtLines.of(input));
    pieces.addAll(GoalLines.of(input, glyphs));
    pieces.addAll(FoundLines.of(input));
    pieces.addAll(StandingLines.of(input, glyphs));
    pieces.addAll(GameLines.of(input));
    pieces.addAll(EffortLines.of(input));
    pieces.addAll(KitLines.of(input));
    pieces.addAll(SourceLines.of(input));
    pieces.addAll(FooterLines.of(input));
    return Sheet.text(pieces, glyphs);
  }
}
