package closehand.bank;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A place inside a JSON document, kept as a chain so that no text is built unless somebody asks.
 *
 * @param parent the enclosing place, or null for the document itself
 * @param step a member name or an array index
 */
public record Path(@Nullable Path parent, String step) {
  /** The whole document. */
  public static final Path ROOT = new Path(null, "");

  /** The member or element one step further in. */
  public Path child(String name) {
    return new Path(this, name);
  }

  /** The array element at {@code index}. */
  public Path child(int index) {
    return new Path(this, Integer.toString(index));
  }

  /** How many steps it is from the document to here. */
  public int depth() {
    int depth = 0;
    for (Path at = this; at.parent != null; at = at.parent) {
      depth++;
    }
    return depth;
  }

  /** Every step from the document to here, outermost first. */
  public List<String> steps() {
    Deque<String> steps = new ArrayDeque<>();
    for (Path at = this; at.parent != null; at = at.parent) {
      steps.push(at.step);
    }
    return List.copyOf(steps);
  }

  /** Whether this is the other place or stands inside it. */
  public boolean isWithin(Path other) {
    Path at = this;
    for (int above = depth() - other.depth(); above > 0 && at.parent != null; above--) {
      at = at.parent;
    }
    return at.equals(other);
  }

  /** The JSON pointer (RFC 6901) of this place; empty for the whole document. */
  @Override
  public String toString() {
    StringBuilder pointer = new StringBuilder();
    for (String one : steps()) {
      pointer.append('/').append(one.replace("~", "~0").replace("/", "~1"));
    }
    return pointer.toString();
  }
}
