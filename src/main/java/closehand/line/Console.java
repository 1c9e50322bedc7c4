package closehand.line;

import java.util.List;
import java.util.Optional;

/** Where lines come from and go to: a keyboard and a terminal, a pipe, or a test. */
public interface Console {
  /** Prints a paragraph, wrapped to the width. */
  void say(String paragraph);

  /** Prints a line of a list, its continuation indented under the text. */
  void item(String mark, String text);

  /** Prints the name of a file or folder on a line of its own, cut at a slash at most. */
  default void path(String path) {
    say(path);
  }

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

  /**
   * Whether lines come from a file or pipe, one answer a line, so that a line that cannot be
   * followed ends the run.
   */
  boolean scripted();

  /** The number of the line read last, 1 for the first. */
  int lineNumber();
}
