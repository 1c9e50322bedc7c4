package closehand.report;

import closehand.interview.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** How long to play and when to pause, and which answers that comes from. */
final class PaceLines {
  /** Source: cautions on tiredness (two thirds) and on pain that takes long (a third to a half). */
  private static final double TWO_THIRDS = 2.0 / 3;

  private static final double HALF = 0.5;

  /** At most an hour before a longer rest: HSE guidance on breaks in display-screen work. */
  private static final double LONGEST_BLOCK_MINUTES = 60;

  private static final double STEP_MINUTES = 5;

  private PaceLines() {}

  /** The length of a block of play with its reasons, then the breaks. */
  static List<Piece> of(PageInput input) {
    List<Piece> pieces = new ArrayList<>();
    pieces.add(new Heading("How long, and when to pause"));
    pieces.add(Paragraph.of(block(input)));
    pieces.add(
        Paragraph.of(
            "Pause for 30 seconds every 10 to 15 minutes. After 50 to 60 minutes at most, take 5"
                + " to 10 minutes off."));
    return pieces;
  }

  private static String block(PageInput input) {
    OptionalDouble comfortable = input.facts().number("end.minutes");
    if (comfortable.isEmpty() || comfortable.getAsDouble() <= 0) {
      return "Begin with 10 to 15 minutes, then rest. " + careful(input);
    }
    double minutes = comfortable.getAsDouble();
    String said = "You can play about " + minutes(minutes) + " before you want a rest.";
    return said + " " + shortened(input, minutes) + goal(input, minutes);
  }

  private static String shortened(PageInput input, double minutes) {
    if (input.warns("C-PEM")) {
      return "Overdoing it costs you days, so stop well before that.";
    }
    if (input.warns("C-PAIN2H")) {
      return "Your pain takes long to settle, so for now play "
          + range(minutes)
          + ": a third to a half less.";
    }
    if (input.warns("C-FATIGUE")) {
      return "You tire within a session, so play "
          + minutes(rounded(minutes * TWO_THIRDS))
          + " (two thirds of it) and rest for as long.";
    }
    return "Play no longer than "
        + minutes(Math.min(minutes, LONGEST_BLOCK_MINUTES))
        + " at a time, and stop before it hurts.";
  }

  private static String goal(PageInput input, double comfortable) {
    OptionalDouble wish = input.facts().number("goal.sessionMin");
    return wish.isPresent() && wish.getAsDouble() > comfortable && !input.warns("C-PEM")
        ? " A good session for you is " + minutes(wish.getAsDouble()) + ": split it into blocks."
        : "";
  }

  private static String careful(PageInput input) {
    return input.warns("C-PEM")
        ? "Overdoing it costs you days, so stop well before your limit."
        : "Stop before it hurts or tires you.";
  }

  private static String range(double minutes) {
    String least = Wording.number(rounded(minutes * HALF));
    String most = minutes(rounded(minutes * TWO_THIRDS));
    return most.startsWith(least + " ") ? most : least + " to " + most;
  }

  /** Down to whole steps, but never to nothing. */
  private static double rounded(double minutes) {
    return minutes < STEP_MINUTES
        ? Math.max(1, Math.floor(minutes))
        : Math.floor(minutes / STEP_MINUTES + 1e-9) * STEP_MINUTES;
  }

  private static String minutes(double number) {
    return Wording.number(number) + (number == 1 ? " minute" : " minutes");
  }
}
