package closehand.bank;

import java.util.Comparator;
import java.util.List;

/**
 * Something wrong with a file that was handed in: what, where, and how to mend it. Problems are
 * collected, never thrown.
 *
 * @param severity whether it stops the file from being used
 * @param where the place
 * @param code a short stable name of the kind of mistake, such as {@code unknown-fact}
 * @param what one plain sentence
 * @param mend how to mend it, or empty
 */
public record Problem(Severity severity, Where where, String code, String what, String mend) {

  /** The order of lines and columns inside a file. */
  public static final Comparator<Problem> BY_PLACE = Problem::compareByPlace;

  /** How bad a problem is. */
  public enum Severity {
    /** The file cannot be used as it is. */
    ERROR,
    /** The file can be used; somebody should look. */
    WARNING
  }

  /** A mistake that stops the file from being used. */
  public static Problem error(Where where, String code, String what, String mend) {
    return new Problem(Severity.ERROR, where, code, what, mend);
  }

  /** Something odd that does not stop the file from being used. */
  public static Problem warning(Where where, String code, String what, String mend) {
    return new Problem(Severity.WARNING, where, code, what, mend);
  }

  /** Whether any of these stops the file from being used. */
  public static boolean anyError(List<Problem> problems) {
    return problems.stream().anyMatch(p -> p.severity == Severity.ERROR);
  }

  private static int compareByPlace(Problem one, Problem other) {
    int lines = Integer.compare(one.where.line(), other.where.line());
    return lines != 0 ? lines : Integer.compare(one.where.column(), other.where.column());
  }

  /** Problems of one file in the order of its lines, those about the whole file first. */
  public static List<Problem> inLineOrder(List<Problem> problems) {
    return problems.stream().distinct().sorted(BY_PLACE).toList();
  }

  /** {@code file:line:column at /pointer [code] What. Mend.} */
  @Override
  public String toString() {
    return where + " [" + code + "] " + what + (mend.isEmpty() ? "" : " " + mend);
  }
}
