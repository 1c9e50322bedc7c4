package closehand.bank;

import java.util.OptionalDouble;

/**
 * One answer a person can pick.
 *
 * @param system the code system's address
 * @param code the stable code, used by rules and answers files
 * @param display the words shown
 * @param ordinal its place on a scale, where the question is a scale
 * @param exclusive whether picking it excludes every other ("none of these")
 * @param where where it stands in the bank
 */
public record Option(
    String system,
    String code,
    String display,
    OptionalDouble ordinal,
    boolean exclusive,
    Where where) {

  /** Whether it is the same answer; its words and where it stands may differ. */
  boolean isTheSame(Option other) {
    return system.equals(other.system)
        && code.equals(other.code)
        && ordinal.equals(other.ordinal)
        && exclusive == other.exclusive;
  }
}
