package closehand.screen;

import closehand.interview.Interview;
import closehand.interview.Provenance;
import closehand.screen.view.Block;

/**
 * Asks how a new case is to be kept.
 *
 * @param by who asks
 * @param route how long it may take
 */
record SealScreen(Provenance.By by, Interview.Route route) implements Screen {
  @Override
  public Shown shown(ScreenModel model) {
    Shown.Builder seal = new Shown.Builder("A new interview");
    seal.add(Block.strong("These will be health facts. Shall the case be sealed?"));
    seal.say("A sealed case opens with its passphrase only. Lost words mean a lost case.");
    seal.say("Sealing takes a few seconds; the words come up after it.").gap();
    seal.offer(1, "Sealed, with six words drawn now", begin(true));
    seal.offer(2, "Not sealed: whoever can use this account can read it", begin(false));
    return seal.offer(0, "Back", new Act.Close()).build();
  }

  private Act begin(boolean sealed) {
    return new Act.Run(new Effect.Begin(by, route, sealed));
  }
}
