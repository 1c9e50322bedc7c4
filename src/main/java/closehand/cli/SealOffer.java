package closehand.cli;

import closehand.casefile.Passphrase;
import closehand.casefile.SealKey;
import closehand.interview.Event;
import closehand.line.Console;
import java.io.IOException;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.util.Arrays;
import java.util.Optional;

/** Offers to seal a new case, before anything of it is written. */
final class SealOffer {
  private final Console console;
  private final Secrets secrets;
  private boolean refused;

  SealOffer(Console console, Secrets secrets) {
    this.console = console;
    this.secrets = secrets;
  }

  /** Asks, seals or notes the refusal, and says how the case is kept. */
  void make(StoredCase kept, Path folder) {
    String where = Words.clean(folder.toString());
    if (console.scripted()) {
      console.say(
          "Everything is kept in "
              + where
              + " on this machine, readable by you alone, not sealed.");
      return;
    }
    Optional<char[]> passphrase = passphrase();
    if (passphrase.isPresent()) {
      kept.seal(SealKey.make(passphrase.get()));
      Arrays.fill(passphrase.get(), ' ');
      console.say(
          "Everything is kept sealed in "
              + where
              + ". Without the passphrase nobody can open it, us included. No pages are left beside it.");
    } else {
      if (refused) {
        kept.note(Event.What.SEALING_REFUSED, "");
      }
      console.say(
          "Everything is kept in "
              + where
              + ", not sealed: readable by you, and by whoever can use this account or take the disk out."
              + (refused ? " The case notes that sealing was refused." : ""));
    }
  }

  /** Seals a case that was kept in the clear until now, if somebody wants it after all. */
  void later(StoredCase kept) {
    Optional<char[]> passphrase = passphrase();
    if (passphrase.isEmpty()) {
      console.say("It stays as it is, not sealed.");
      return;
    }
    try {
      kept.sealNow(SealKey.make(passphrase.get()));
      console.say(
          "It is sealed from now on, and its pages in the clear are removed. A disk may keep parts of the clear files"
              + " until it writes over them.");
    } catch (IOException e) {
      console.say(kept.trouble(e) + " It stays as it is, not sealed.");
    } finally {
      Arrays.fill(passphrase.get(), ' ');
    }
  }

  private Optional<char[]> passphrase() {
    console.say(
        "These will be health facts. Shall the case be sealed, so that it opens with a passphrase only?");
    while (true) {
      console.item("1", "sealed, with six words drawn now (or press Enter)");
      console.item("2", "sealed, with a passphrase of your own");
      console.item("3", "not sealed");
      Optional<String> line = console.ask("Number: ").map(String::strip);
      if (line.isEmpty()) {
        // Nobody answered, which is no choice.
        return Optional.empty();
      }
      String typed = line.get();
      if (typed.isEmpty() || typed.equals("1")) {
        return Optional.of(drawn());
      }
      if (typed.equals("2")) {
        Optional<char[]> own = own();
        if (own.isPresent()) {
          return own;
        }
      } else if (typed.equals("3")) {
        refused = true;
        return Optional.empty();
      }
    }
  }

  private char[] drawn() {
    String words = Passphrase.draw(new SecureRandom());
    console.say("The passphrase of this case:");
    console.gap();
    console.say(words);
    console.gap();
    console.say(
        "Write it down now, and keep it apart from this machine. It is shown this once and kept nowhere."
            + " Lost words mean a lost case. Press Enter when they are written down.");
    console.ask("> ");
    return words.toCharArray();
  }

  /** Two times the same, long enough; nothing if it is given up. */
  private Optional<char[]> own() {
    while (true) {
      Optional<char[]> first =
          secrets
              .read(
                  "Your passphrase, at least "
                      + Passphrase.SHORTEST
                      + " characters (not shown; Enter alone goes back): ")
              .map(Passphrase::kept);
      if (first.isEmpty()) {
        console.say("Nothing was typed.");
        return Optional.empty();
      }
      if (!Passphrase.isLongEnough(first.get())) {
        console.say(
            "That is too short to hold against guessing. Four unrelated words are better than one with odd signs.");
        continue;
      }
      Optional<char[]> second = secrets.read("Once more: ").map(Passphrase::kept);
      boolean same = Arrays.equals(first.get(), second.orElse(new char[0]));
      second.ifPresent(s -> Arrays.fill(s, ' '));
      if (same) {
        return first;
      }
      console.say("The two are not the same.");
    }
  }
}
