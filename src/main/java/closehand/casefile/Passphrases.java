package closehand.casefile;

import java.util.Optional;

/** Where the passphrase of a sealed case comes from: a person at a terminal, or nowhere. */
@FunctionalInterface
public interface Passphrases {
  /** Nobody can be asked. */
  Passphrases NONE = attempt -> Optional.empty();

  /**
   * Asks for the passphrase.
   *
   * @param attempt 1 for the first time, more after a wrong one
   * @return the passphrase, which is overwritten after use; nothing to give up
   */
  Optional<char[]> ask(int attempt);
}
