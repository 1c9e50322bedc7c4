package closehand.screen;

import closehand.screen.view.Block;
import java.util.Optional;

/**
 * Where a passphrase is typed. The model knows only that something was typed, not what.
 *
 * @param step which passphrase it is
 * @param of the case it opens, or empty
 * @param seal what is sealed with it, where something is
 * @param line one sign for each character that was typed
 * @param all whether every key is a character, also the first
 */
record SecretScreen(Step step, String of, Optional<SealScreen> seal, Draft line, boolean all)
    implements Screen {
  enum Step {
    OPEN,
    FIRST,
    AGAIN
  }

  static SecretScreen opening(String name) {
    return new SecretScreen(Step.OPEN, name, Optional.empty(), Draft.secret(), false);
  }

  static SecretScreen first(SealScreen seal) {
    return new SecretScreen(Step.FIRST, "", Optional.of(seal), Draft.secret(), false);
  }

  /** Whether every character that comes now belongs to the passphrase. */
  boolean spells() {
    return all || !line.isEmpty();
  }

  /** The same with nothing typed. */
  SecretScreen at(Step next) {
    return new SecretScreen(next, of, seal, Draft.secret(), false);
  }

  @Override
  public Shown shown(ScreenModel model) {
    Shown.Builder screen = new Shown.Builder(of.isEmpty() ? "The passphrase" : "Case " + of);
    screen.add(Block.strong(asked()));
    screen.say("It is not shown. Enter takes it. Enter alone goes back.").gap();
    screen.field("Passphrase: ", line.isEmpty() ? "" : "(typed, not shown) ").gap();
    boolean menu = line.isEmpty() && !all;
    if (line.isEmpty()) {
      screen.offer(
          menu ? 1 : -1, "Choose the letters from a list", new Act.Show(BoardScreen.letters(line)));
    }
    if (menu) {
      SecretScreen every = new SecretScreen(step, of, seal, line, true);
      screen.offer(2, "It begins with a figure or with ?", new Act.Turn(every));
    }
    return screen.offer(menu ? 0 : -1, "Back", back()).build();
  }

  private String asked() {
    return switch (step) {
      case OPEN -> "What is the passphrase of this case?";
      case FIRST -> "What is your passphrase to be? Four unrelated words are good.";
      case AGAIN -> "The same passphrase once more, please.";
    };
  }

  @Override
  public Optional<Draft> draft() {
    return Optional.of(line);
  }

  @Override
  public Screen typing(Draft draft) {
    return new SecretScreen(step, of, seal, draft, all);
  }

  @Override
  public Act accept(ScreenModel model) {
    return line.isEmpty() ? back() : new Act.Run(new Effect.SecretTaken());
  }

  @Override
  public Act back() {
    return new Act.Also(new Act.Close(), new Effect.SecretForgotten());
  }
}
