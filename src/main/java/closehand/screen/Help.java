package closehand.screen;

import closehand.bank.Question;
import closehand.interview.Prompt;
import closehand.screen.frame.Role;
import closehand.screen.view.Block;
import java.util.Optional;

/** Why a question is asked, how to see it for yourself, and what the keys do. */
final class Help {
  private Help() {}

  static Shown of(ScreenModel model) {
    Shown.Builder help = new Shown.Builder("Help");
    Optional<Prompt> prompt = model.talk().flatMap(Talk::prompt);
    prompt.ifPresent(
        p -> {
          help.add(Block.strong("Why we ask this"));
          why(help, p, model.settings().shared());
          help.gap();
        });
    keys(help, model.settings());
    return help.gap().offer(0, "Back", new Act.Close()).build();
  }

  private static void why(Shown.Builder help, Prompt prompt, boolean shared) {
    help.say(prompt.question().why());
    if (shared) {
      return;
    }
    if (!prompt.howToSee().isEmpty()) {
      help.gap().add(Block.strong("How to see it for yourself"));
      prompt.howToSee().forEach(help::say);
    }
    if (prompt.question().askedBy() == Question.AskedBy.VOLUNTEER_REFER) {
      help.say("Any answer here other than the all-clear goes to a health professional too.");
    }
  }

  /** What may stand beside a question where the screen is wide. */
  static void beside(Shown.Builder screen, Prompt prompt) {
    screen.beside(Block.strong("Why we ask this"));
    screen.beside(Block.plain(prompt.question().why()));
    if (!prompt.howToSee().isEmpty()) {
      screen.beside(Block.gap());
      screen.beside(Block.strong("How to see it for yourself"));
      prompt.howToSee().forEach(how -> screen.beside(Block.plain(how)));
    }
  }

  private static void keys(Shown.Builder help, Settings settings) {
    help.add(Block.strong("Keys"));
    help.say(
        "Space goes on to the next line and Enter takes it; these two are enough for everything."
            + " The digits are enough too: 8 reads on where more stands below and no line is numbered 8.");
    help.say(
        "A number takes a line that is in sight. A line out of sight comes into sight first; the same number"
            + " again takes it.");
    help.gap();
    key(help, "1 to 8", settings.needsEnter() ? "move to an answer" : "take an answer");
    key(help, "0", "skip, or more");
    key(help, "9", "stop: pain or feeling unwell; while you type words it is Escape");
    key(help, "Space", "the next line, or more text");
    key(help, "Enter", "takes the line with the mark >");
    key(help, "Arrows", "up and down; left and right to the finger beside");
    key(help, "Backspace", "back");
    key(help, "?", "this help, everywhere");
    if (!settings.letters()) {
      return;
    }
    help.gap().say("Letters, where no words are typed:");
    for (Command command : Command.values()) {
      key(help, String.valueOf(settings.letter(command)), command.meaning());
    }
  }

  private static void key(Shown.Builder help, String key, String does) {
    help.add(Block.laid("  " + key + ": " + does + ".", Role.PLAIN));
  }
}
