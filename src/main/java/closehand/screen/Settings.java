package closehand.screen;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * How somebody likes the screen to behave.
 *
 * @param needsEnter whether a number only moves to an answer and Enter takes it
 * @param letters whether letters are commands
 * @param shared whether the screen is set for reading along: wide apart, without notes for the
 *     interviewer
 * @param holdMillis how long the same key is ignored after it came, in milliseconds; 0 for not at
 *     all
 * @param bounceMillis how long any key is ignored after another, in milliseconds; 0 for not at all
 * @param changed letters that are not the usual ones
 */
public record Settings(
    boolean needsEnter,
    boolean letters,
    boolean shared,
    int holdMillis,
    int bounceMillis,
    Map<Command, Character> changed) {
  /** The usual settings; the hold guard is longer than the usual delay before a key repeats. */
  public static final Settings USUAL = new Settings(false, true, false, 750, 30, Map.of());

  /** Copies the letters. */
  public Settings {
    changed = Map.copyOf(changed);
  }

  /** The letter of a command. */
  public char letter(Command command) {
    return changed.getOrDefault(command, command.letter());
  }

  /** The command of a letter, where letters are commands. */
  public Optional<Command> command(String typed) {
    return letters && typed.length() == 1
        ? owner(Character.toLowerCase(typed.charAt(0)))
        : Optional.empty();
  }

  private Optional<Command> owner(char letter) {
    for (Command command : Command.values()) {
      if (letter(command) == letter) {
        return Optional.of(command);
      }
    }
    return Optional.empty();
  }

  /** The same with another letter for a command; a command that had it gets the old one. */
  public Settings with(Command command, char letter) {
    Map<Command, Character> next = new EnumMap<>(Command.class);
    next.putAll(changed);
    owner(letter).ifPresent(other -> next.put(other, letter(command)));
    next.put(command, letter);
    return new Settings(needsEnter, letters, shared, holdMillis, bounceMillis, next);
  }

  /** The same with every letter as usual. */
  public Settings withUsualLetters() {
    return new Settings(needsEnter, letters, shared, holdMillis, bounceMillis, Map.of());
  }

  /** The same with the shared view on or off. */
  public Settings withShared(boolean on) {
    return new Settings(needsEnter, letters, on, holdMillis, bounceMillis, changed);
  }

  /** The same with Enter needed or not. */
  public Settings withEnterNeeded(boolean on) {
    return new Settings(on, letters, shared, holdMillis, bounceMillis, changed);
  }

  /** The same with letters as commands or not. */
  public Settings withLetters(boolean on) {
    return new Settings(needsEnter, on, shared, holdMillis, bounceMillis, changed);
  }

  /** The same with other times for the guards, in milliseconds, 0 for off. */
  public Settings withGuards(int hold, int bounce) {
    return new Settings(needsEnter, letters, shared, hold, bounce, changed);
  }
}
