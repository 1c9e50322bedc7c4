package closehand.screen.view;

import closehand.report.Glyphs;
import closehand.screen.frame.Role;
import closehand.screen.frame.ScreenSize;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Content at one size: its lines, and how far one can see and move.
 *
 * <p>Nothing that is not seen can be accepted: while the chosen item is below the last row, that
 * row says that there is more, and going on shows more first.
 */
public final class Layout {
  /** On lower screens a long heading comes last, so that the question itself is seen first. */
  private static final int HEADING_FIRST = 10;

  private final Content content;
  private final Rooms rooms;
  private final List<Line> lines;

  private Layout(Content content, Rooms rooms, List<Line> lines) {
    this.content = content;
    this.rooms = rooms;
    this.lines = lines;
  }

  /** The content at this size. */
  public static Layout of(Content content, ScreenSize size, Glyphs glyphs) {
    Rooms rooms = Rooms.of(content, size, glyphs);
    boolean apart = rooms.heading() || content.heading().isEmpty();
    boolean first = !apart && size.rows() >= HEADING_FIRST;
    Block heading = new Block.Prose(content.heading(), Role.BAR);
    List<Block> blocks = new ArrayList<>();
    // Gaps at the top are not seen; they keep the count, so that a place is found again.
    blocks.add(first ? heading : Block.gap());
    blocks.add(Block.gap());
    blocks.addAll(content.blocks());
    if (!apart && !first) {
      blocks.add(Block.gap());
      blocks.add(heading);
    }
    return new Layout(content, rooms, Body.lines(blocks, rooms.columns(), glyphs, content.roomy()));
  }

  Content content() {
    return content;
  }

  Rooms rooms() {
    return rooms;
  }

  List<Line> lines() {
    return lines;
  }

  /** The spot moved down as far as is needed to see the chosen item. */
  public Spot revealed(Spot spot) {
    Spot settled = settle(spot);
    return isUnread(settled) ? new Spot(settled.chosen(), topFor(settled.chosen())) : settled;
  }

  /** The spot, on this content at this size: nothing out of range, the chosen item not above. */
  public Spot settle(Spot spot) {
    int chosen = inRange(spot.chosen());
    int top = Math.max(0, Math.min(spot.top(), Math.max(0, lines.size() - rooms.rows())));
    int first = firstLine(chosen);
    return new Spot(chosen, first >= 0 && first < top ? first : top);
  }

  /** The same place after the size has changed: the line that was at the top is at the top. */
  public Spot moved(Spot spot, Layout before) {
    if (spot.top() == 0 || before.lines.isEmpty()) {
      return reveal(settle(new Spot(spot.chosen(), 0)), before.isUnread(spot));
    }
    Line was = before.lines.get(Math.min(spot.top(), before.lines.size() - 1));
    int top = 0;
    while (top + 1 < lines.size() && lines.get(top).block() < was.block()) {
      top++;
    }
    return reveal(settle(new Spot(spot.chosen(), top)), before.isUnread(spot));
  }

  private Spot reveal(Spot spot, boolean wasUnread) {
    return wasUnread || !isUnread(spot) ? spot : new Spot(spot.chosen(), topFor(spot.chosen()));
  }

  /** Whether the chosen item is still below what is seen. */
  public boolean isUnread(Spot spot) {
    int last = mustSee(spot.chosen());
    return last >= 0 && rooms.rows() > 1 && last >= spot.top() + rooms.rows();
  }

  /** Whether a thing one can stand on is seen as a whole, or as much of it as there is room for. */
  public boolean isInSight(Spot spot, int stop) {
    Spot now = settle(spot);
    int rows = isUnread(now) ? rooms.rows() - 1 : rooms.rows();
    return firstLine(stop) >= now.top() && mustSee(stop) < now.top() + rows;
  }

  /**
   * The spot with the mark on a thing one can stand on, moved no further than it takes to see it.
   */
  public Spot bringing(Spot spot, int stop) {
    int top = settle(spot).top();
    int above = Math.min(top, firstLine(stop));
    return new Spot(stop, isInSight(spot, stop) ? top : Math.max(above, topFor(stop)));
  }

  /**
   * Where to look first when the number of a thing is pressed that is not in sight; nothing where
   * it is seen and may be taken. Nobody takes what they cannot see.
   */
  public Optional<Spot> lookFirst(Spot spot, int stop) {
    return isInSight(spot, stop) ? Optional.empty() : Optional.of(bringing(spot, stop));
  }

  /** Whether there are lines above or below what is seen. */
  boolean reachesBelow(Spot spot) {
    return spot.top() + rooms.rows() < lines.size();
  }

  /** On to the next item, or further down where it is not in sight yet. */
  public Spot next(Spot spot) {
    if (isUnread(spot)) {
      return furtherDown(spot);
    }
    int chosen = spot.chosen() + 1;
    if (chosen >= content.stops()) {
      return new Spot(inRange(0), 0);
    }
    Spot moved = new Spot(chosen, spot.top());
    if (!isUnread(moved)) {
      return moved;
    }
    int gap = firstLine(chosen) - lastLine(spot.chosen());
    return gap <= rooms.rows() - 1 ? new Spot(chosen, topFor(chosen)) : furtherDown(moved);
  }

  /** Back to the item before, or further up. */
  public Spot previous(Spot spot) {
    if (spot.chosen() <= 0 || isUnread(spot)) {
      return spot.top() > 0
          ? new Spot(spot.chosen(), Math.max(0, spot.top() - step()))
          : lastOf(spot);
    }
    int chosen = spot.chosen() - 1;
    return settle(new Spot(chosen, Math.min(spot.top(), Math.max(0, firstLine(chosen)))));
  }

  private Spot lastOf(Spot spot) {
    int last = content.stops() - 1;
    return isUnread(spot) || last < 0 ? spot : new Spot(last, topFor(last));
  }

  /** A screenful down. */
  public Spot pageDown(Spot spot) {
    int top = Math.min(spot.top() + step(), Math.max(0, lines.size() - rooms.rows()));
    int chosen = spot.chosen();
    while (chosen + 1 < content.stops() && firstLine(chosen) < top) {
      chosen++;
    }
    return settle(new Spot(chosen, top));
  }

  /** A screenful up; the mark stays on what is in sight, if anything there can be taken. */
  public Spot pageUp(Spot spot) {
    Spot up = new Spot(spot.chosen(), Math.max(0, spot.top() - step()));
    for (int stop = spot.chosen(); stop >= 0; stop--) {
      Spot there = new Spot(stop, up.top());
      if (firstLine(stop) >= up.top() && !isUnread(there)) {
        return there;
      }
    }
    return up;
  }

  private Spot furtherDown(Spot spot) {
    int most = Math.max(spot.top() + 1, topFor(spot.chosen()));
    return new Spot(spot.chosen(), Math.min(spot.top() + step(), most));
  }

  private int step() {
    return Math.max(1, rooms.rows() - 1);
  }

  /** The top line with which an item stands at the foot of the screen. */
  private int topFor(int chosen) {
    int first = Math.max(0, firstLine(chosen));
    return Math.max(0, Math.min(first, lastLine(chosen) - rooms.rows() + 1));
  }

  private int mustSee(int chosen) {
    int first = firstLine(chosen);
    return first < 0 ? -1 : Math.min(lastLine(chosen), first + rooms.rows() - 1);
  }

  int firstLine(int chosen) {
    for (int i = 0; i < lines.size(); i++) {
      if (lines.get(i).opens(chosen)) {
        return i;
      }
    }
    return -1;
  }

  int lastLine(int chosen) {
    int last = firstLine(chosen);
    for (int i = Math.max(0, last); i < lines.size(); i++) {
      last = lines.get(i).stop() == chosen ? i : last;
    }
    return last;
  }

  private int inRange(int chosen) {
    return Math.max(0, Math.min(chosen, content.stops() - 1));
  }
}
