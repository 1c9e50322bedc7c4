package closehand.cli;

import closehand.line.Console;
import closehand.screen.Command;
import closehand.screen.Setting;
import closehand.screen.Settings;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The settings of the full screen, changed line by line. */
final class LineSettings {
  private static final int LETTERS = 4;

  private final Console console;
  private final SettingsFile file;

  LineSettings(Console console, SettingsFile file) {
    this.console = console;
    this.file = file;
  }

  /** Lists them, changes those that are named by number, and keeps each change at once. */
  void change() {
    console.say(
        "These settings are for the full screen. A number changes a line, Enter goes back.");
    Settings now = file.read();
    while (true) {
      List<Optional<Setting>> lines = lines();
      for (int i = 0; i < lines.size(); i++) {
        Settings here = now;
        console.item(
            Integer.toString(i + 1),
            lines.get(i).map(s -> s.words(here)).orElse("Change the letters"));
      }
      String typed = console.ask("Number: ").map(String::strip).orElse("");
      if (typed.isEmpty() || typed.equalsIgnoreCase("q")) {
        return;
      }
      if (typed.matches("[1-9]") && Integer.parseInt(typed) <= lines.size()) {
        Settings before = now;
        now =
            lines
                .get(Integer.parseInt(typed) - 1)
                .map(s -> s.next(before))
                .orElseGet(() -> letters(before));
        file.write(now).forEach(console::say);
      } else {
        console.say("Please type a number from 1 to " + lines.size() + ", or press Enter.");
      }
    }
  }

  /** Every setting at its number; where the letters are changed, nothing. */
  private static List<Optional<Setting>> lines() {
    List<Optional<Setting>> lines = new ArrayList<>();
    for (Setting setting : Setting.values()) {
      lines.add(Optional.of(setting));
    }
    lines.add(LETTERS - 1, Optional.empty());
    return lines;
  }

  private Settings letters(Settings now) {
    for (Command command : Command.values()) {
      console.item(String.valueOf(now.letter(command)), command.meaning());
    }
    String old =
        console.ask("Which letter is to change? 1 puts all back. ").map(String::strip).orElse("");
    if (old.equals("1")) {
      return now.withUsualLetters();
    }
    Optional<Command> command = now.withLetters(true).command(old);
    if (command.isEmpty()) {
      console.say("No command has that letter. Nothing is changed.");
      return now;
    }
    String next = console.ask("Its new letter: ").map(String::strip).orElse("");
    boolean letter = next.matches("[!-~]") && !next.matches("[0-9]");
    if (!letter) {
      console.say("One letter or sign is needed, and no figure. Nothing is changed.");
    }
    return letter ? now.with(command.get(), Character.toLowerCase(next.charAt(0))) : now;
  }
}
