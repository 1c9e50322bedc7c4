package closehand.screen.trial;

import closehand.bank.StopSign;

/** What happens when a line of a page is taken. */
sealed interface Doing {
  /** An answer, as it would be typed line by line. */
  record Answer(String text) implements Doing {}

  /** The trial ends. */
  record Halt(StopSign sign) implements Doing {}

  /**
   * Another page.
   *
   * @param part which part of it, from 0
   */
  record Go(State.Page page, int part) implements Doing {}

  /** One more character of the line being typed. */
  record Write(String character) implements Doing {}

  /** The last character goes. */
  record Erase() implements Doing {}

  /** The typed line is taken. */
  record Accept() implements Doing {}

  /** To the question before. */
  record Before() implements Doing {}

  /** Out of the trial; everything is kept. */
  record Leave() implements Doing {}

  /** Another page, at its start. */
  static Doing go(State.Page page) {
    return new Go(page, 0);
  }
}
