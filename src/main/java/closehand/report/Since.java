package closehand.report;

import java.util.List;

/**
 * What a page says about the time since an earlier one.
 *
 * @param notices what the reader must know first, whole sentences
 * @param changes what was answered otherwise since the last review, a line each
 * @param tried what was tried since then, a line each
 */
public record Since(List<String> notices, List<String> changes, List<String> tried) {
  /** A first page, or one without anything to say about an earlier one. */
  public static final Since NOTHING = new Since(List.of(), List.of(), List.of());

  public Since {
    notices = List.copyOf(notices);
    changes = List.copyOf(changes);
    tried = List.copyOf(tried);
  }

  /** The same with what was tried. */
  public Since tried(List<String> lines) {
    return new Since(notices, changes, lines);
  }
}
