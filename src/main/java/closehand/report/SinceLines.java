package closehand.report;

import java.util.ArrayList;
import java.util.List;

/** What has changed since an earlier page. */
final class SinceLines {
  private SinceLines() {}

  /** Notices, then changes; nothing on a first page. */
  static List<Piece> of(PageInput input) {
    List<Piece> pieces = new ArrayList<>();
    input.since().notices().forEach(n -> pieces.add(Paragraph.of(n)));
    if (!input.since().changes().isEmpty()) {
      pieces.add(new Heading("Since last time"));
      input.since().changes().forEach(c -> pieces.add(Paragraph.of(c)));
    }
    if (!input.since().tried().isEmpty()) {
      pieces.add(new Heading("What you tried"));
      input.since().tried().forEach(t -> pieces.add(Paragraph.item(t)));
    }
    return pieces;
  }
}
