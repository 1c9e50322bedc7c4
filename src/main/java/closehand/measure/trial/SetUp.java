package closehand.measure.trial;

import java.util.Optional;
import java.util.OptionalInt;

/**
 * What was tried.
 *
 * @param name what it is called here, such as "side-button mouse, left"
 * @param minutesToSetUp how long it takes before play can start
 * @param cost what it costs
 * @param weight what has to be lifted or held
 */
public record SetUp(
    String name, OptionalInt minutesToSetUp, Optional<Cost> cost, Optional<Weight> weight) {
  /** A set-up of which only the name is known. */
  public static SetUp named(String name) {
    return new SetUp(name, OptionalInt.empty(), Optional.empty(), Optional.empty());
  }

  /** What it costs, cheapest first. */
  public enum Cost {
    NOTHING("nothing", "nothing new to buy"),
    LITTLE("little", "a little"),
    SOME("some", "some saving up or a loan"),
    MUCH("much", "a lot, or funding is needed");

    private final String code;
    private final String words;

    Cost(String code, String words) {
      this.code = code;
      this.words = words;
    }

    /** The name in files. */
    public String code() {
      return code;
    }

    /** Plain words. */
    public String words() {
      return words;
    }

    /** The one with this code. */
    public static Optional<Cost> of(String code) {
      return java.util.Arrays.stream(values()).filter(c -> c.code.equals(code)).findFirst();
    }
  }

  /** What has to be lifted, held or carried, lightest first. */
  public enum Weight {
    NONE("none", "nothing to lift or hold"),
    LIGHT("light", "light"),
    MIDDLE("middle", "in between"),
    HEAVY("heavy", "heavy, or somebody has to help");

    private final String code;
    private final String words;

    Weight(String code, String words) {
      this.code = code;
      this.words = words;
    }

    /** The name in files. */
    public String code() {
      return code;
    }

    /** Plain words. */
    public String words() {
      return words;
    }

    /** The one with this code. */
    public static Optional<Weight> of(String code) {
      return java.util.Arrays.stream(values()).filter(w -> w.code.equals(code)).findFirst();
    }
  }
}
