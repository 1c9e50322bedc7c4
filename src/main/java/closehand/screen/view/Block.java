package closehand.screen.view;

import closehand.screen.frame.Role;

/** A piece of content, from top to bottom. */
public sealed interface Block {
  /** A paragraph, wrapped to the width. */
  record Prose(String text, Role role) implements Block {}

  /**
   * A paragraph with its own indentation.
   *
   * @param line the text with its indentation
   * @param hang columns that further lines are indented by
   */
  record Laid(String line, int hang, Role role) implements Block {}

  /** An empty line; never two together, and none at the top. */
  record Gap() implements Block {}

  /**
   * Something that can be chosen.
   *
   * @param mark the key that chooses it at once, or empty
   * @param words what it is
   * @param word a word behind it such as "(chosen)", or empty
   */
  record Item(String mark, String words, String word) implements Block {}

  /**
   * A line being typed, which can be stood on as well.
   *
   * @param label what stands before it
   * @param typed what has been typed so far
   */
  record Field(String label, String typed) implements Block {}

  /** A line whose further lines stand under its first. */
  static Block laid(String line, Role role) {
    return new Laid(line, line.length() - line.stripLeading().length(), role);
  }

  /** Running text. */
  static Block plain(String text) {
    return new Prose(text, Role.PLAIN);
  }

  /** A heading or a sentence that carries the screen. */
  static Block strong(String text) {
    return new Prose(text, Role.STRONG);
  }

  /** A warning; its first word says so. */
  static Block warning(String text) {
    return new Prose(text, Role.WARNING);
  }

  /** Text that matters less. */
  static Block quiet(String text) {
    return new Prose(text, Role.QUIET);
  }

  /** An empty line. */
  static Block gap() {
    return new Gap();
  }

  /** Whether one can stand on it. */
  default boolean isStop() {
    return this instanceof Item || this instanceof Field;
  }
}
