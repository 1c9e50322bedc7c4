package closehand.cli;

import closehand.casefile.Passphrases;
import java.util.Arrays;
import java.util.Optional;

/** Remembers a passphrase while one case is looked at twice, so that it is typed once. */
final class OnceAsked implements Passphrases {
  private final Passphrases asked;
  private Optional<char[]> last = Optional.empty();

  OnceAsked(Passphrases asked) {
    this.asked = asked;
  }

  @Override
  public Optional<char[]> ask(int attempt) {
    if (attempt > 1 || last.isEmpty()) {
      forget();
      last = asked.ask(attempt);
    }
    return last.map(char[]::clone);
  }

  /** Overwrites what is remembered. */
  void forget() {
    last.ifPresent(l -> Arrays.fill(l, ' '));
    last = Optional.empty();
  }
}
