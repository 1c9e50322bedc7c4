package closehand.line;

import closehand.bank.FactType;
import closehand.bank.Field;
import closehand.bank.Option;
import closehand.interview.Answer;
import java.util.Locale;
import java.util.Optional;

/**
 * What a typed line means: a command or an answer.
 *
 * <p>A single letter is a command unless the question has an answer of just that letter; with a
 * colon before it, it is always a command, and with an equals sign before it a line is always an
 * answer.
 */
sealed interface Typed {
  /** An answer, to be read against the field. */
  record AnswerText(String text) implements Typed {}

  /** A command with what followed it. */
  record Ask(Command command, String rest) implements Typed {}

  /** Nothing was typed. */
  record Nothing() implements Typed {}

  /** What can be asked of the interview at any question. */
  enum Command {
    WHY("?", "why this is asked, and how to see it for yourself"),
    BACK("b", "back to the question before"),
    JUMP("j", "jump: j 5 to part 5, j DIG-03 to a question"),
    OVERVIEW("o", "overview of all answers; o 5 shows part 5"),
    UNKNOWN("k", "don't know"),
    DECLINE("d", "rather not say"),
    NOT_APPLICABLE("x", "does not apply to me"),
    LATER("l", "ask me later"),
    NOTE("+", "add a note: + and your words"),
    TASK("t", "measure what is asked, step by step, where there is a task for it"),
    WHO("w", "who answered and how it is known"),
    SO_FAR("s", "what the answers so far point to, with reasons"),
    EXPLAIN("e", "explain: why a control is suggested or not, and what would change it"),
    PLAN("g", "the control plan of your games as it stands; g change changes it by hand"),
    PAGE("p", "the page as it stands"),
    FIND_OUT("f", "find out more: practise the plan, or note a trial of a set-up"),
    LOWER("c", "a clinician lowers a stop"),
    ASKER("a", "change who asks, or short or whole interview"),
    REPEAT("r", "say the question again"),
    HELP("h", "this list"),
    LEAVE("q", "leave and keep everything");

    private final String key;
    private final String meaning;

    Command(String key, String meaning) {
      this.key = key;
      this.meaning = meaning;
    }

    String key() {
      return key;
    }

    String meaning() {
      return meaning;
    }

    /** Why there is no answer, for a command that gives none. */
    Answer.Reason reason() {
      return switch (this) {
        case UNKNOWN -> Answer.Reason.UNKNOWN;
        case DECLINE -> Answer.Reason.DECLINED;
        case NOT_APPLICABLE -> Answer.Reason.NOT_APPLICABLE;
        case LATER -> Answer.Reason.LATER;
        default -> throw new IllegalStateException(key + " gives no reason");
      };
    }

    private static Optional<Command> of(String key) {
      for (Command command : values()) {
        if (command.key.equals(key)) {
          return Optional.of(command);
        }
      }
      return Optional.empty();
    }
  }

  /** Reads a line typed at a question. */
  static Typed read(String line, Optional<Field> field) {
    String text = line.strip();
    if (text.isEmpty()) {
      return new Nothing();
    }
    if (text.startsWith("=")) {
      return new AnswerText(text.substring(1).strip());
    }
    boolean forced = text.startsWith(":");
    String bare = forced ? text.substring(1).strip() : text;
    Optional<Ask> ask = command(bare);
    boolean isAnswer = !forced && field.map(f -> names(f.type(), bare)).orElse(false);
    return ask.isPresent() && !isAnswer ? ask.get() : new AnswerText(text);
  }

  private static Optional<Ask> command(String text) {
    if (text.startsWith("+")) {
      return Optional.of(new Ask(Command.NOTE, text.substring(1).strip()));
    }
    int space = text.indexOf(' ');
    String key = (space < 0 ? text : text.substring(0, space)).toLowerCase(Locale.ROOT);
    String rest = space < 0 ? "" : text.substring(space + 1).strip();
    Optional<Command> command = Command.of(key);
    boolean takesRest =
        command
            .filter(
                c ->
                    c == Command.JUMP
                        || c == Command.PLAN && rest.equals("change")
                        || c == Command.OVERVIEW
                        || c == Command.EXPLAIN
                        || c == Command.HELP)
            .isPresent();
    return command
        .filter(c -> rest.isEmpty() || takesRest && isPlace(rest))
        .map(c -> new Ask(c, rest));
  }

  /**
   * A place is one word, so that a free answer that begins with a single letter stays an answer.
   */
  private static boolean isPlace(String rest) {
    return rest.indexOf(' ') < 0;
  }

  private static boolean names(FactType type, String text) {
    if (type instanceof FactType.YesNo) {
      return text.equalsIgnoreCase("y") || text.equalsIgnoreCase("n");
    }
    for (Option option : type.choices()) {
      if (option.code().equalsIgnoreCase(text) || option.display().equalsIgnoreCase(text)) {
        return true;
      }
    }
    return false;
  }
}
