package closehand.screen;

import closehand.interview.Interview;
import closehand.interview.Provenance;
import closehand.screen.view.Block;
import java.util.Optional;

/**
 * Asks how a case is to be kept.
 *
 * @param fresh the new interview it is asked for; nothing for a case that was not sealed until now
 */
record SealScreen(Optional<Fresh> fresh) implements Screen {
  /** A new interview: who asks, and how long it may take. */
  record Fresh(Provenance.By by, Interview.Route route) {}

  static SealScreen of(Provenance.By by, Interview.Route route) {
    return new SealScreen(Optional.of(new Fresh(by, route)));
  }

  @Override
  public Shown shown(ScreenModel model) {
    Shown.Builder seal = new Shown.Builder(fresh.isPresent() ? "A new interview" : "Seal the case");
    seal.add(Block.strong("These will be health facts. Shall the case be sealed?"));
    seal.say("A sealed case opens with its passphrase only. Lost words mean a lost case.");
    seal.say("Sealing takes a few seconds; the words come up after it.").gap();
    seal.offer(1, "Sealed, with six words drawn now", new Act.Run(kept(Sealing.DRAWN)));
    seal.offer(2, "Sealed, with a passphrase of your own", new Act.Show(SecretScreen.first(this)));
    if (fresh.isPresent()) {
      seal.offer(
          3,
          "Not sealed: whoever can use this account can read it",
          new Act.Run(kept(Sealing.NONE)));
    }
    return seal.offer(0, "Back", new Act.Close()).build();
  }

  /** What keeps the case in this way. */
  Effect kept(Sealing sealing) {
    return fresh
        .<Effect>map(f -> new Effect.Begin(f.by(), f.route(), sealing))
        .orElseGet(() -> new Effect.Seal(sealing));
  }
}
