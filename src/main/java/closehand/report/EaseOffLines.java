package closehand.report;

import java.util.ArrayList;
import java.util.List;

/** The signs that mean ease off, and what to do then. */
final class EaseOffLines {
  private static final String SIGNS =
      "Pain up by 2; pain still there after 2 hours; tingling or numbness; swelling; skin mark that"
          + " stays more than 30 minutes; hand shaking more than usual; worse next day. Any of these:"
          + " stop, rest, shorten next time. More than a day, or anything sudden: get medical advice.";
  private static final String SHORTLY =
      "Pain up by 2, or still there after 2 hours; tingling, numbness, swelling; a skin mark for more"
          + " than 30 minutes; more shaking; worse next day. Then stop, rest, shorten next time. More"
          + " than a day, or anything sudden: get medical advice.";

  private EaseOffLines() {}

  /** The fixed list, then what this player stops for besides. */
  static List<Piece> of(PageInput input, Room room) {
    List<String> own =
        Sayings.tellingFirst(input.together(), "stop").stream()
            .filter(s -> !s.startsWith("Ease off"))
            .filter(s -> !(room.tightest() && Sayings.saidInACaution(input.together(), "stop", s)))
            .limit(Math.max(1, room.sayings()))
            .toList();
    List<Piece> pieces = new ArrayList<>();
    pieces.add(new Gap());
    String also = own.isEmpty() ? "" : "For you also: " + String.join(" ", own);
    String signs = room.tightest() ? SHORTLY : SIGNS;
    if (room.tightest()) {
      pieces.add(Paragraph.headed("Ease off when you notice.", Phrases.joined(signs, also)));
      return pieces;
    }
    pieces.add(Paragraph.headed("Ease off when you notice.", signs));
    if (!also.isEmpty()) {
      pieces.add(Paragraph.of(also));
    }
    return pieces;
  }
}
