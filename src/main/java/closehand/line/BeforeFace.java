package closehand.line;

import closehand.measure.before.Before;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

/** Asks line by line what comes before practice or a trial. */
public final class BeforeFace {
  private final Console console;
  private final Function<Before, List<String>> settle;
  private Before before;

  /**
   * A face over the questions.
   *
   * @param settle keeps what was said and tells why nothing begins; nothing where it may
   */
  public BeforeFace(Console console, Before before, Function<Before, List<String>> settle) {
    this.console = console;
    this.before = before;
    this.settle = settle;
  }

  /** Whether all is well and something may begin. */
  public boolean run() {
    console.gap();
    console.say(
        "A few questions first, as they are today. q leaves, and so does any line that begins with"
            + " stop or pain.");
    while (!before.over()) {
      ask();
    }
    before.ended().ifPresent(console::say);
    List<String> why = settle.apply(before);
    why.forEach(console::say);
    return before.ended().isEmpty() && why.isEmpty();
  }

  private void ask() {
    console.gap();
    if (!before.said().isEmpty()) {
      console.say(before.said());
    }
    console.say(before.ask().words());
    List<String> choices = before.ask().choices();
    for (int i = 0; i < choices.size(); i++) {
      console.item(Integer.toString(i + 1), choices.get(i));
    }
    String hint =
        before.asksNumber()
            ? "Type a number from 0 (not at all) to 10 (the worst)."
            : "Type a number from 1 to " + choices.size() + ".";
    console.say(hint);
    Optional<String> line = console.ask("> ").map(l -> l.strip().toLowerCase(Locale.ROOT));
    if (line.isEmpty() || line.get().equals("q") || StopTyped.in(line.get())) {
      before = before.left();
      return;
    }
    Before next = before.answered(choice(line.get()));
    boolean refused = next.equals(before) && before.said().isEmpty();
    if (refused && console.scripted()) {
      console.say("Line " + console.lineNumber() + " of the answers could not be followed.");
      before = before.left();
    } else {
      before = next;
    }
  }

  private int choice(String typed) {
    if (before.asksNumber()) {
      return number(typed);
    }
    boolean yesNo = before.ask().choices().size() == 2;
    return switch (yesNo ? typed : "") {
      case "y", "yes" -> 0;
      case "n", "no" -> 1;
      default -> number(typed) - 1;
    };
  }

  private static int number(String typed) {
    boolean digits =
        !typed.isEmpty()
            && typed.length() <= 2
            && typed.chars().allMatch(c -> c >= '0' && c <= '9');
    return digits ? Integer.parseInt(typed) : -1;
  }
}
