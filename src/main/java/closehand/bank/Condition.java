package closehand.bank;

import java.util.List;

/** What must hold for a rule or a term. Evaluated with unknowns by the rules package. */
public sealed interface Condition {
  /** Where it stands in the bank. */
  Where where();

  /** Holds whatever the answers. */
  record Always(Where where) implements Condition {}

  /**
   * One comparison of a fact.
   *
   * @param fact the fact or term id
   * @param operator one of {@code < <= > >= is in has how}
   * @param value what it is compared with
   * @param where where the whole comparison stands
   * @param factWhere where the fact id stands
   * @param operatorWhere where the operator stands
   */
  record Test(
      String fact,
      String operator,
      Operand value,
      Where where,
      Where factWhere,
      Where operatorWhere)
      implements Condition {}

  /** All parts hold. */
  record All(List<Condition> parts, Where where) implements Condition {
    public All {
      parts = List.copyOf(parts);
    }
  }

  /** At least one part holds. */
  record Any(List<Condition> parts, Where where) implements Condition {
    public Any {
      parts = List.copyOf(parts);
    }
  }

  /** The part does not hold. */
  record Not(Condition part, Where where) implements Condition {}

  /** At least {@code count} of the parts hold. */
  record AtLeast(int count, List<Condition> parts, Where where) implements Condition {
    public AtLeast {
      parts = List.copyOf(parts);
    }
  }

  /** The part holds for at least one of the wanted games. */
  record AnyGame(Condition part, Where where) implements Condition {}

  /** The part holds for every wanted game, and there is at least one. */
  record EveryGame(Condition part, Where where) implements Condition {}

  /** What a fact is compared with. */
  sealed interface Operand {
    /** Where it stands in the bank. */
    Where where();

    /** A number. */
    record Number(double value, Where where) implements Operand {}

    /** Yes or no. */
    record Flag(boolean value, Where where) implements Operand {}

    /** An answer's code. */
    record Code(String value, Where where) implements Operand {}

    /** Several codes, one of which is meant. */
    record Codes(List<Code> values, Where where) implements Operand {
      public Codes {
        values = List.copyOf(values);
      }
    }
  }
}
