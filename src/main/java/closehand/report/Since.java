package closehand.report;

import java.util.List;

/**
 * What a page says about the time since an earlier one.
 *
 * @param notices what the reader must know first, whole sentences
 * @param changes what was answered otherwise since the last review, a line each
 */
public record Since(List<String> notices, List<String> changes) {
  /** A first page, or one without anything to say about an earlier one. */
  public static final Since NOTHING = new Since(List.of(), List.of());

  public Since {
    notices = List.copyOf(notices);
    changes = List.copyOf(changes);
  }
}
