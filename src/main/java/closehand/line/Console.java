package closehand.line;

import java.util.List;
import java.util.Optional;

/** Where lines come from and go to: a keyboard and a terminal, a pipe, or a test. */
public interface Console {
  /** Prints a paragraph, wrapped to the width. */
  void say(String paragraph);

  /** Prints a line of a list, its continuation indented under the text. */
  void item(String mark, String text);

  /** Prints lines that are laid out already. */
  void lines(List<String> lines);

  /** Prints an empty line. */
  void gap();

  /**
   * Asks for a line.
   *
   * @param prompt what stands before it
   * @return the line, or nothing at the end of input
   */
  Optional<String> ask(String prompt);

  /** What came while time passed. */
  sealed interface Heard {
    /** A line, with the moment it arrived in nanoseconds. */
    record Line(String text, long at) implements Heard {}

    /** The moment waited for has come. */
    record TimeUp(long at) implements Heard {}

    /** There will be no more lines. */
    record Ended() implements Heard {}
  }

  /**
   * Waits quietly for a line, at most until a moment; without one, until a line comes.
   *
   * @param endNanos the moment, by the clock of {@link #nanos}
   */
  default Heard askUntil(Optional<Long> endNanos) {
    Optional<String> line = ask("");
    return line.isPresent() ? new Heard.Line(line.get(), nanos()) : new Heard.Ended();
  }

  /** Lets go of lines that were typed ahead, so that they are not taken for what comes now. */
  default void forgetTyped() {}

  /** Now, in nanoseconds of a steady clock that tells no date. */
  default long nanos() {
    return System.nanoTime();
  }

  /**
   * Whether lines come from a file or pipe, one answer a line, so that a line that cannot be
   * followed ends the run.
   */
  boolean scripted();

  /** The number of the line read last, 1 for the first. */
  int lineNumber();
}
