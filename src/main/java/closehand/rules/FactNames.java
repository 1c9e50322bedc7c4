package closehand.rules;

import java.util.AbstractList;
import java.util.List;
import java.util.RandomAccess;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * An unchanging list of fact ids that is worked out when somebody first reads it. Most reasons are
 * never read, and finding them all would take longer than judging the rules.
 */
final class FactNames extends AbstractList<String> implements RandomAccess {
  private @Nullable Supplier<List<String>> source;
  private List<String> names = List.of();

  /** A list that {@code source} works out, once, whoever asks first. */
  FactNames(Supplier<List<String>> source) {
    this.source = source;
  }

  /** The list itself if it cannot change, else a copy. */
  static List<String> unchanging(List<String> names) {
    return names instanceof FactNames ? names : List.copyOf(names);
  }

  private synchronized List<String> names() {
    if (source != null) {
      names = source.get();
      source = null;
    }
    return names;
  }

  @Override
  public String get(int index) {
    return names().get(index);
  }

  @Override
  public int size() {
    return names().size();
  }
}
