package closehand.cli;

import closehand.interview.Interview;
import closehand.line.Console;
import closehand.line.Narrator;
import closehand.report.Advisor;
import closehand.report.Glyphs;
import closehand.screen.Command;
import closehand.screen.Effect;
import closehand.screen.Follower;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Optional;

/** Writes down, in the words of the line face, what happens on the full screen. */
final class Transcript implements Follower {
  private static final FileAttribute<?> OWNER_ONLY =
      PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------"));

  private final Console console;
  private Optional<Narrator> narrator = Optional.empty();

  /** A transcript on this console. */
  Transcript(Console console) {
    this.console = console;
  }

  /**
   * A transcript at the end of this file, which only its owner may read where the system can say
   * so. Every line is there at once for whoever follows the file.
   */
  static Transcript in(Path file, Surroundings surroundings, Glyphs glyphs) throws IOException {
    if (!Files.exists(file)) {
      boolean owners = file.getFileSystem().supportedFileAttributeViews().contains("posix");
      Files.createFile(
          file, owners ? new FileAttribute<?>[] {OWNER_ONLY} : new FileAttribute<?>[0]);
    }
    PrintStream printer =
        new PrintStream(
            Files.newOutputStream(file, StandardOpenOption.APPEND), true, StandardCharsets.UTF_8);
    Surroundings there =
        new Surroundings(
            InputStream.nullInputStream(),
            printer,
            printer,
            surroundings.environment(),
            surroundings.clock(),
            false,
            StandardCharsets.UTF_8);
    return new Transcript(new PlainConsole(there, there.input(), glyphs, true));
  }

  @Override
  public void begun(Advisor advisor, Interview interview) {
    Narrator fresh = new Narrator(console, advisor);
    narrator = Optional.of(fresh);
    fresh.begin(interview);
  }

  @Override
  public void heard(Effect effect) {
    if (effect instanceof Effect.Came came) {
      console.gap();
      came.parts().forEach(this::tell);
    }
    narrator.ifPresent(n -> tell(n, effect));
  }

  private void tell(Effect.Came.Part part) {
    if (part.mark().isEmpty()) {
      console.say(part.text());
    } else {
      console.item(part.mark(), part.text());
    }
  }

  private static void tell(Narrator narrator, Effect effect) {
    if (effect instanceof Effect.Sent sent) {
      narrator.sent(sent.message(), sent.before(), sent.after(), sent.why());
    } else if (effect instanceof Effect.Undone undone) {
      narrator.undone(undone.now());
    } else if (effect instanceof Effect.Shown shown) {
      tell(narrator, shown);
    }
  }

  private static void tell(Narrator narrator, Effect.Shown shown) {
    if (shown.command() == Command.HELP) {
      narrator.helped(shown.interview());
    } else if (shown.command() == Command.OVERVIEW || shown.command() == Command.JUMP) {
      narrator.overview(shown.interview());
    } else {
      narrator.read(shown.interview(), shown.lines());
    }
  }
}
