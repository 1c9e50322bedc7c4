package closehand.cli;

import closehand.screen.Command;
import closehand.screen.Settings;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * How somebody likes the screen, in a small text file: a name, an equals sign and a value a line.
 *
 * <p>A line that cannot be understood is passed over, so that a damaged file locks nobody out. The
 * file holds no answers.
 *
 * @param file where it is
 */
record SettingsFile(Path file) {
  private static final int LONGEST_MILLIS = 5000;

  /** In the folder for a user's settings (XDG base directory specification). */
  static SettingsFile in(Surroundings surroundings) {
    Path home = Path.of(System.getProperty("user.home", "."));
    String said = surroundings.environment().getOrDefault("XDG_CONFIG_HOME", "");
    Path folder = home.resolve(".config");
    try {
      // The specification wants a relative path to be ignored.
      folder = !said.isBlank() && Path.of(said).isAbsolute() ? Path.of(said) : folder;
    } catch (InvalidPathException e) {
      folder = home.resolve(".config");
    }
    return new SettingsFile(folder.resolve("closehand").resolve("screen.settings"));
  }

  /** The settings kept; the usual ones where there are none. */
  Settings read() {
    Settings settings = Settings.USUAL;
    try {
      if (!Files.isRegularFile(file)) {
        return settings;
      }
      for (String line : Files.readAllLines(file, StandardCharsets.UTF_8)) {
        int equals = line.indexOf('=');
        if (equals > 0) {
          settings =
              with(settings, line.substring(0, equals).strip(), line.substring(equals + 1).strip());
        }
      }
    } catch (IOException e) {
      return settings;
    }
    return settings;
  }

  private static Settings with(Settings now, String name, String value) {
    return switch (name) {
      case "needs-enter" -> now.withEnterNeeded(value.equals("on"));
      case "letters" -> now.withLetters(value.equals("on"));
      case "hold-milliseconds" ->
          now.withGuards(millis(value, now.holdMillis()), now.bounceMillis());
      case "bounce-milliseconds" ->
          now.withGuards(now.holdMillis(), millis(value, now.bounceMillis()));
      default -> letter(now, name, value);
    };
  }

  private static int millis(String value, int before) {
    boolean number = value.matches("[0-9]{1,4}");
    return number ? Math.min(LONGEST_MILLIS, Integer.parseInt(value)) : before;
  }

  private static Settings letter(Settings now, String name, String value) {
    boolean one = value.length() == 1 && value.charAt(0) > ' ' && value.charAt(0) < 0x7f;
    return Command.named(name.toUpperCase(Locale.ROOT).replace('-', '_'))
        .filter(c -> one)
        .map(c -> now.with(c, value.charAt(0)))
        .orElse(now);
  }

  /** Keeps the settings; tells what went wrong, if something did. The shared view is not kept. */
  List<String> write(Settings settings) {
    List<String> lines = new ArrayList<>();
    lines.add("needs-enter = " + (settings.needsEnter() ? "on" : "off"));
    lines.add("letters = " + (settings.letters() ? "on" : "off"));
    lines.add("hold-milliseconds = " + settings.holdMillis());
    lines.add("bounce-milliseconds = " + settings.bounceMillis());
    for (Map.Entry<Command, Character> one : settings.changed().entrySet()) {
      String name = one.getKey().name().toLowerCase(Locale.ROOT).replace('_', '-');
      lines.add(name + " = " + one.getValue());
    }
    try {
      Files.createDirectories(file.getParent());
      Files.write(file, lines, StandardCharsets.UTF_8);
      return List.of();
    } catch (IOException e) {
      return List.of("The settings hold for now, but they could not be kept for the next time.");
    }
  }
}
