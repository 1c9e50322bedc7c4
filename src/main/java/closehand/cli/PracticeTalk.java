package closehand.cli;

import closehand.line.Console;
import java.io.IOException;
import java.util.List;
import java.util.Optional;

/** Tells line by line what came of practice, and asks about one change after the other. */
final class PracticeTalk {
  private final Console console;
  private final PracticeLoop loop;

  PracticeTalk(Console console, PracticeLoop loop) {
    this.console = console;
    this.loop = loop;
  }

  /**
   * Tells what was found and what would change.
   *
   * @param trouble what went wrong with keeping it
   * @param ask whether somebody is there to decide
   */
  void told(List<String> trouble, boolean ask) throws IOException {
    trouble.forEach(console::say);
    loop.found().forEach(console::say);
    loop.nothingOnOffer().forEach(console::say);
    List<String> offer = loop.offer();
    while (!offer.isEmpty()) {
      console.gap();
      console.say("One change that practice speaks for:");
      offer.forEach(console::say);
      if (!ask) {
        console.say("Nothing is changed. At a terminal you can take it or leave it.");
        return;
      }
      if (!decided()) {
        return;
      }
      offer = loop.offer();
    }
  }

  private boolean decided() throws IOException {
    console.item("1", "Take this change");
    console.item("2", "Keep it as it was");
    Optional<String> answer = console.ask("> ");
    while (answer.isPresent()) {
      switch (answer.get().strip()) {
        case "1" -> {
          loop.take().forEach(console::say);
          console.say("Taken. Set it up like that and try it; it is easy to take back.");
          return true;
        }
        case "2" -> {
          loop.leave();
          console.say("Kept as it was.");
          return true;
        }
        case "q" -> {
          return false;
        }
        default -> console.say("Type 1, 2, or q to leave.");
      }
      answer = console.ask("> ");
    }
    return false;
  }
}
