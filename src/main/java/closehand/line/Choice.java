package closehand.line;

import java.util.Optional;
import java.util.function.Function;

/** A short numbered choice outside the questionnaire. */
final class Choice {
  private Choice() {}

  /**
   * Lists the choices and reads a number; asks again until it is one of them.
   *
   * @return what was chosen; what held before when nothing was typed or the input has ended
   */
  static <T> Optional<T> of(
      Console console, Optional<T> before, T[] choices, Function<T, String> words) {
    for (int i = 0; i < choices.length; i++) {
      boolean usual = before.equals(Optional.of(choices[i]));
      console.item(
          Integer.toString(i + 1), words.apply(choices[i]) + (usual ? " (or press Enter)" : ""));
    }
    String otherwise = before.map(words).orElse("leave it as it is");
    while (true) {
      Optional<String> line = console.ask("Number: ").map(String::strip);
      if (line.isEmpty()) {
        return before;
      }
      if (line.get().isEmpty()) {
        before.map(words).ifPresent(w -> console.say("Taken: " + w + "."));
        return before;
      }
      Optional<T> picked = pick(line.get(), choices);
      if (picked.isPresent() || console.scripted()) {
        return picked.or(() -> before);
      }
      console.say(
          "Please type a number from 1 to "
              + choices.length
              + ", or press Enter alone for this: "
              + otherwise
              + ".");
    }
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
