package closehand.report;

import closehand.rules.Warning;
import java.util.ArrayList;
import java.util.List;

/** The page the player takes home: one sheet of paper, in plain words. */
public final class PlayerPage {
  private PlayerPage() {}

  /**
   * The page as text, with who has most to do in the leading plan where it is known and there is
   * room. Where the session must end, it holds the notice that says so alone.
   */
  public static String of(PageInput input, Glyphs glyphs) {
    List<Warning> ending = input.ending();
    if (!ending.isEmpty()) {
      return StopNotice.of(ending, glyphs);
    }
    if (input.together().withheld()) {
      return Sheet.text(withheld(input, glyphs), glyphs);
    }
    // What everybody needs decides how much room there is, before who has most to do in a plan.
    List<Piece> none = List.of();
    Room room = Room.fitting(r -> pieces(input, none, r, glyphs), glyphs);
    List<Piece> page = pieces(input, AskedLines.of(input), room, glyphs);
    boolean fits = Sheet.lines(page, glyphs).size() <= Room.FULL_PAGE;
    return Sheet.text(fits ? page : pieces(input, none, room, glyphs), glyphs);
  }

  private static List<Piece> withheld(PageInput input, Glyphs glyphs) {
    List<Piece> pieces = new ArrayList<>(TitleLines.of("Ideas for your game controls", input));
    pieces.addAll(TitleLines.provisionalLine(input));
    pieces.addAll(StopNotice.all(input));
    pieces.addAll(GoalLines.of(input, glyphs));
    pieces.add(new Heading("What to try"));
    pieces.add(
        Paragraph.of(
            "Suggestions come after medical review. Your answers are kept, so nothing has to be"
                + " asked twice."));
    pieces.addAll(FooterLines.of(input));
    return pieces;
  }

  private static List<Piece> pieces(PageInput input, List<Piece> asked, Room room, Glyphs glyphs) {
    List<Piece> pieces = new ArrayList<>(TitleLines.of("Ideas for your game controls", input));
    pieces.addAll(TitleLines.provisionalLine(input));
    pieces.addAll(SinceLines.of(input));
    pieces.addAll(CautionLines.of(input, room));
    pieces.addAll(GoalLines.of(input, glyphs));
    pieces.addAll(near(GroundLines.of(input, room), room));
    pieces.addAll(near(SettingLines.of(input, room), room));
    pieces.addAll(TryLines.of(input, room, glyphs));
    pieces.addAll(near(GameLines.differing(input, room), room));
    pieces.addAll(near(RuledOutLines.of(input, room), room));
    pieces.addAll(StartLines.of(input, room));
    pieces.addAll(asked);
    pieces.addAll(near(PaceLines.of(input, room), room));
    List<Piece> signs = EaseOffLines.of(input, room);
    pieces.addAll(room.barest() ? near(signs, room) : signs);
    pieces.addAll(near(ContactLines.of(input, room), room));
    pieces.addAll(FooterLines.of(input));
    return pieces;
  }

  /** A part that belongs to the one above: no empty line between them where room is tight. */
  private static List<Piece> near(List<Piece> part, Room room) {
    boolean closes = room.close() && !part.isEmpty() && part.get(0) instanceof Gap;
    return closes ? part.subList(1, part.size()) : part;
  }
}
