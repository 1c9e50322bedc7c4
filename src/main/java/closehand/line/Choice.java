package closehand.line;

import java.util.Optional;
import java.util.function.Function;

/** A short numbered choice outside the questionnaire. */
final class Choice {
  private Choice() {}

  /**
   * Lists the choices and reads a number.
   *
   * @return what was chosen; what held before when nothing or something else was typed
   */
  static <T> Optional<T> of(
      Console console, Optional<T> before, T[] choices, Function<T, String> words) {
    for (int i = 0; i < choices.length; i++) {
      console.item(Integer.toString(i + 1), words.apply(choices[i]));
    }
    Optional<String> line = console.ask("Number: ");
    return line.flatMap(l -> pick(l.strip(), choices)).or(() -> before);
  }

  private static <T> Optional<T> pick(String typed, T[] choices) {
    if (typed.isEmpty() || typed.length() > 2 || !typed.chars().allMatch(Character::isDigit)) {
      return Optional.empty();
    }
    int number = Integer.parseInt(typed);
    return number >= 1 && number <= choices.length
        ? Optional.of(choices[number - 1])
        : Optional.empty();
  }
}
