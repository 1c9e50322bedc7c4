package closehand.bank;

import java.util.List;
import java.util.Optional;

/** What kind of value a fact can hold. */
public sealed interface FactType {

  /** Yes or no. */
  record YesNo() implements FactType {}

  /**
   * A number in a range, both ends allowed.
   *
   * @param minimum smallest value
   * @param maximum largest value
   * @param decimals digits after the point; 0 for whole numbers
   * @param unit the UCUM code, or empty
   */
  record Amount(double minimum, double maximum, int decimals, String unit) implements FactType {}

  /**
   * One of several answers; a scale when every option has its place ({@code ordinal}).
   *
   * @param options in the order shown
   */
  record OneOf(List<Option> options) implements FactType {
    public OneOf {
      options = List.copyOf(options);
    }

    /** Whether the answers are ordered, so that rules may ask for "2 or more". */
    public boolean isScale() {
      for (Option option : options) {
        if (option.ordinal().isEmpty()) {
          return false;
        }
      }
      return true;
    }
  }

  /** Any number of answers out of a list. */
  record SeveralOf(List<Option> options) implements FactType {
    public SeveralOf {
      options = List.copyOf(options);
    }
  }

  /** Free words, at most {@code maximumLength} characters. */
  record Words(int maximumLength) implements FactType {}

  /** A list of free words or codes that no rule reads. */
  record WordList() implements FactType {}

  /** The options to pick from; empty for every type without options. */
  default List<Option> choices() {
    if (this instanceof OneOf one) {
      return one.options();
    }
    return this instanceof SeveralOf several ? several.options() : List.of();
  }

  /** The option with this code. */
  default Optional<Option> option(String code) {
    for (Option option : choices()) {
      if (option.code().equals(code)) {
        return Optional.of(option);
      }
    }
    return Optional.empty();
  }

  /** Whether both take the same answers; the words of options and where they stand may differ. */
  default boolean takesTheSame(FactType other) {
    List<Option> ours = choices();
    List<Option> theirs = other.choices();
    boolean same = getClass().equals(other.getClass()) && ours.size() == theirs.size();
    for (int i = 0; same && i < ours.size(); i++) {
      same = ours.get(i).isTheSame(theirs.get(i));
    }
    return same && (!ours.isEmpty() || equals(other));
  }
}
