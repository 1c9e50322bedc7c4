package closehand.measure.task;

import java.util.List;

/** Something that happens during a run. Times are nanoseconds of the edge's steady clock. */
public sealed interface TaskMessage {
  /** Enter: read, ready, begin, or the go is over. */
  record Next(long at) implements TaskMessage {}

  /** Yes or no. */
  record Say(boolean yes) implements TaskMessage {}

  /** One of the choices shown, from 0. */
  record Pick(int choice) implements TaskMessage {}

  /** Several of the choices shown, each from 0. */
  record Picks(List<Integer> choices) implements TaskMessage {
    public Picks {
      choices = List.copyOf(choices);
    }
  }

  /** A number. */
  record Number(int value) implements TaskMessage {}

  /** A number was asked for and is not known. */
  record NotKnown() implements TaskMessage {}

  /** Anything that is no tap arrived during a go: it stops. */
  record Halt(long at) implements TaskMessage {}

  /** A key arrived during a go: a tap, or a stop where taps are not counted. */
  record Key(String key, long at) implements TaskMessage {}

  /** Time has passed. */
  record Clock(long at) implements TaskMessage {}

  /** Something happened that makes the go worthless. */
  record Spoil(Spoilt cause) implements TaskMessage {}

  /** Stop, because of pain. */
  record Pain() implements TaskMessage {}

  /** Stop, for this reason: the id of a stop of the bank. */
  record Stop(String id) implements TaskMessage {
    /** The player says or signals stop. */
    public static final String SIGNAL = "signal";

    /** Pain. */
    public static final String PAIN = "pain";
  }

  /** Leave the task as it stands, without a result. */
  record Leave() implements TaskMessage {}
}
