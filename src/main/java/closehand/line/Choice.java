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
    if (typed.length() != 1 || typed.charAt(0) < '1' || typed.charAt(0) >= '1' + choices.length) {
      return Optional.empty();
    }
    return Optional.of(choices[typed.charAt(0) - '1']);
  }
}
