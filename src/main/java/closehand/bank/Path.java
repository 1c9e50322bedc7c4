package closehand.bank;

import java.util.ArrayDeque;
import java.util.Deque;
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

  /** The JSON pointer (RFC 6901) of this place; empty for the whole document. */
  @Override
  public String toString() {
    Deque<String> steps = new ArrayDeque<>();
    for (Path at = this; at.parent != null; at = at.parent) {
      steps.push(at.step.replace("~", "~0").replace("/", "~1"));
    }
    StringBuilder pointer = new StringBuilder();
    steps.forEach(step -> pointer.append('/').append(step));
    return pointer.toString();
  }
}
