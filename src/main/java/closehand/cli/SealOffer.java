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
  private final Optional<Printer> printer;
  private boolean refused;

  SealOffer(Console console, Surroundings surroundings) {
    this.console = console;
    this.secrets = surroundings.secrets();
    this.printer = surroundings.typed() ? Printer.in(surroundings.environment()) : Optional.empty();
  }

  /** Asks, seals or notes the refusal, and says how the case is kept. */
  void make(StoredCase kept, Path folder) {
    String where = Words.clean(folder.toString());
    if (console.scripted()) {
      inTheClear(where, "");
      return;
    }
    Optional<char[]> passphrase = passphrase(kept.name());
    if (passphrase.isPresent()) {
      kept.seal(SealKey.make(passphrase.get()));
      Arrays.fill(passphrase.get(), ' ');
      console.say("Everything is kept sealed in this folder:");
      console.path(where);
      console.say(
          "Without the passphrase nobody can open it, us included. No pages are left beside it.");
    } else {
      if (refused) {
        kept.note(Event.What.SEALING_REFUSED, "");
      }
      inTheClear(where, refused ? " The case notes that sealing was refused." : "");
    }
  }

  private void inTheClear(String where, String more) {
    console.say("Everything is kept in this folder:");
    console.path(where);
    console.say(
        "It is not sealed: readable by you, and by whoever can use this account or take the disk out."
            + more);
  }

  /** Seals a case that was kept in the clear until now, if somebody wants it after all. */
  void later(StoredCase kept) {
    Optional<char[]> passphrase = passphrase(kept.name());
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

  private Optional<char[]> passphrase(String name) {
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
        return Optional.of(drawn(name));
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

  private char[] drawn(String name) {
    String words = Passphrase.draw(new SecureRandom());
    console.say("The passphrase of this case:");
    console.gap();
    console.say(words);
    console.gap();
    console.say(
        "Write it down now, and keep it apart from this machine. It is shown this once and kept nowhere."
            + " Lost words mean a lost case. Press Enter when they are written down."
            + (printer.isPresent()
                ? " Or type p to print them; a printer may keep a copy for a while."
                : ""));
    while (console.ask("> ").filter(l -> l.strip().equalsIgnoreCase("p")).isPresent()) {
      console.say(
          printer.filter(p -> p.print(paper(name, words))).isPresent()
              ? "Sent to the printer. Look that the paper is there, then press Enter."
              : "They could not be printed. Please write them down, then press Enter.");
    }
    return words.toCharArray();
  }

  private static String paper(String name, String words) {
    return "The passphrase of the case "
        + name
        + ":\n\n    "
        + words
        + "\n\nWhoever has this paper and the file can read the case."
        + " Keep the two apart.\nWithout these words nobody can open it.\n";
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
