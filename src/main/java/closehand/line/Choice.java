package closehand.line;

import java.util.List;
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
    return of(console, before, List.of(choices), words);
  }

  /** The same for choices in a list. */
  static <T> Optional<T> of(
      Console console, Optional<T> before, List<T> choices, Function<T, String> words) {
    for (int i = 0; i < choices.size(); i++) {
      boolean usual = before.equals(Optional.of(choices.get(i)));
      console.item(
          Integer.toString(i + 1),
          words.apply(choices.get(i)) + (usual ? " (or press Enter)" : ""));
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
              + choices.size()
              + ", or press Enter alone for this: "
              + otherwise
              + ".");
    }
  }

  private static <T> Optional<T> pick(String typed, List<T> choices) {
    if (typed.isEmpty() || typed.length() > 2 || !typed.chars().allMatch(Character::isDigit)) {
      return Optional.empty();
    }
    int number = Integer.parseInt(typed);
    return number >= 1 && number <= choices.size()
        ? Optional.of(choices.get(number - 1))
        : Optional.empty();
  }
}
