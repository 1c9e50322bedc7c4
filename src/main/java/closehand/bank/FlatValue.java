package closehand.bank;

import java.util.List;

/** A value as it stands in an answers file, before it is matched with a question. */
public sealed interface FlatValue {
  /** Where it stands. */
  Where where();

  /** True or false. */
  record Flag(boolean value, Where where) implements FlatValue {}

  /** A number. */
  record Number(double value, Where where) implements FlatValue {}

  /** Words or a code. */
  record Text(String value, Where where) implements FlatValue {}

  /** A list of words or codes. */
  record Texts(List<String> values, Where where) implements FlatValue {
    public Texts {
      values = List.copyOf(values);
    }
  }

  /**
   * No value, with the reason's name: {@code unknown}, {@code declined}, {@code notApplicable} or
   * {@code later}.
   */
  record Absent(String reason, Where where) implements FlatValue {}
}
