package closehand.strain;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What a method says about a load: a figure with its reasons, or that it cannot say. */
public sealed interface Load {
  /** The method. */
  Method method();

  /** What to know beside it, or why there is no figure. */
  List<Flag> flags();

  /**
   * A figure.
   *
   * @param value in the method's own unit
   * @param band where it lies
   * @param drivers the two that count most, heaviest first
   */
  record Figure(Method method, double value, Band band, List<Driver> drivers, List<Flag> flags)
      implements Load {
    public Figure {
      drivers = List.copyOf(drivers);
      flags = List.copyOf(flags);
    }
  }

  /** The case lies outside the method; no figure is made up for it. */
  record Outside(Method method, List<Flag> flags) implements Load {
    public Outside {
      flags = List.copyOf(flags);
    }
  }

  /** The case lies outside the method for this reason. */
  static Load outside(Method method, Flag why) {
    return new Outside(method, List.of(why));
  }

  /** The same with something more to know beside its figure; as it is where there is none. */
  default Load flagged(Flag flag) {
    if (!(this instanceof Figure figure) || figure.flags().contains(flag)) {
      return this;
    }
    List<Flag> more = new ArrayList<>(figure.flags());
    more.add(flag);
    return new Figure(figure.method(), figure.value(), figure.band(), figure.drivers(), more);
  }

  /** The figure, where there is one. */
  default Optional<Figure> figure() {
    return this instanceof Figure figure ? Optional.of(figure) : Optional.empty();
  }

  /** The value, where there is one. */
  default OptionalDouble amount() {
    return this instanceof Figure figure
        ? OptionalDouble.of(figure.value())
        : OptionalDouble.empty();
  }
}
