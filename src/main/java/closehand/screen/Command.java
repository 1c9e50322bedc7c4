package closehand.screen;

import java.util.Optional;

/** What a letter can do at a question. Each can be reached by digits and by Space and Enter too. */
public enum Command {
  /** To the question before. */
  BACK('b', "back to the question before"),
  /** Everything answered and open, and the way to any question. */
  OVERVIEW('o', "all answers, and the way to any question"),
  /** The same place under the letter of the line face. */
  JUMP('j', "to another question"),
  /** No answer: not known. */
  UNKNOWN('k', "don't know"),
  /** No answer: not to be said. */
  DECLINE('d', "rather not say"),
  /** No answer: does not apply. */
  NOT_APPLICABLE('x', "does not apply to me"),
  /** No answer yet. */
  LATER('l', "ask me later"),
  /** A task that answers the question. */
  MEASURE('m', "measure what is asked, step by step"),
  /** Words beside an answer. */
  NOTE('n', "a note beside the answer"),
  /** Who answers. */
  WHO('w', "who answers, and how it is known"),
  /** Suggestions as they stand. */
  SO_FAR('s', "what the answers so far point to"),
  /** Why a control stands as it does. */
  EXPLAIN('e', "why a control is suggested or not, and what would change it"),
  /** Which action goes on which input. */
  PLAN('g', "the control plan of your games as it stands"),
  /** The player's page. */
  PAGE('p', "the page as it stands"),
  /** A clinician lowers a stop. */
  LOWER('c', "a clinician lowers a stop"),
  /** Who asks. */
  ASKER('a', "who asks, short or whole interview"),
  /** Takes back the last change. */
  UNDO('u', "take back the last change"),
  /** For reading along on a call. */
  SHARED('v', "shared view on or off"),
  /** Settings. */
  SETTINGS('t', "settings"),
  /** Stops for now. */
  STOP('z', "stop: pain or feeling unwell"),
  /** Help. */
  HELP('h', "help"),
  /** Leaves. */
  LEAVE('q', "leave");

  private final char letter;
  private final String meaning;

  Command(char letter, String meaning) {
    this.letter = letter;
    this.meaning = meaning;
  }

  /** The letter unless it was changed. */
  public char letter() {
    return letter;
  }

  /** What it does, in a few words. */
  public String meaning() {
    return meaning;
  }

  /** The command with this name, as in a file of settings. */
  public static Optional<Command> named(String name) {
    for (Command command : values()) {
      if (command.name().equals(name)) {
        return Optional.of(command);
      }
    }
    return Optional.empty();
  }
}
