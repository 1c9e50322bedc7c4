package closehand.report;

import closehand.interview.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** How long to play and when to pause, and which answers that comes from. */
final class PaceLines {
  /**
   * A third to a half less for pain that takes long, two thirds for tiredness: the cautions say.
   */
  private static final double TWO_THIRDS = 2.0 / 3;

  private static final double HALF = 0.5;
  private static final double STEP_MINUTES = 5;

  /** Breaks: HSE guidance on display-screen work; the 30 seconds are common practice. */
  private static final String BREAKS =
      "Pause for 30 seconds every 10 to 15 minutes. After 50 to 60 minutes at most, take 5 to 10"
          + " minutes off.";

  private final boolean costsDays;
  private final boolean settlesLate;
  private final boolean tires;

  private PaceLines(PageInput input) {
    this.costsDays = input.warns("C-PEM");
    this.settlesLate = input.warns("C-PAIN2H");
    this.tires = input.warns("C-FATIGUE");
  }

  /** The length of a block of play with its reasons, the breaks, what else to mind. */
  static List<Piece> of(PageInput input, Room room) {
    List<String> sentences = new ArrayList<>();
    sentences.addAll(new PaceLines(input).block(input.facts()));
    sentences.add(BREAKS);
    Sayings.tellingFirst(input.together(), "pace").stream()
        .limit(Math.max(0, room.sayings() - 1))
        .forEach(sentences::add);
    return List.of(
        new Gap(), Paragraph.headed("How long, and when to pause.", String.join(" ", sentences)));
  }

  private List<String> block(Facts facts) {
    OptionalDouble comfortable = facts.number("end.minutes");
    List<String> because = because();
    if (comfortable.isEmpty() || comfortable.getAsDouble() <= 0) {
      String start = because.isEmpty() ? "" : sentence(String.join(", and ", because)) + " ";
      return List.of(start + "Begin with 10 to 15 minutes or less, then rest.");
    }
    double minutes = comfortable.getAsDouble();
    because.add(0, "you can play about " + minutes(minutes) + " before you want a rest");
    List<String> sentences = new ArrayList<>();
    sentences.add(sentence(String.join(", and ", because)) + " " + advice(minutes));
    OptionalDouble wish = facts.number("goal.sessionMin");
    if (wish.isPresent() && wish.getAsDouble() > minutes && !costsDays) {
      sentences.add(
          "Your good session of " + minutes(wish.getAsDouble()) + " then needs rests in between.");
    }
    return sentences;
  }

  private List<String> because() {
    List<String> because = new ArrayList<>();
    if (tires) {
      because.add("you tire within a session");
    }
    if (settlesLate) {
      because.add("your pain takes long to settle");
    }
    if (costsDays) {
      because.add("overdoing it costs you days");
    }
    return because;
  }

  private String advice(double minutes) {
    String shorter = minutes(rounded(minutes * TWO_THIRDS));
    if (costsDays) {
      String limit = tires || settlesLate ? shorter : minutes(minutes);
      return "So stop well before " + limit + ", also on a better day.";
    }
    if (settlesLate) {
      return "So for now play " + range(minutes) + " (a third to a half less), then rest.";
    }
    return tires
        ? "So play " + shorter + " (two thirds), then rest for as long."
        : "So stop by then, or sooner if it hurts.";
  }

  private static String range(double minutes) {
    double least = rounded(minutes * HALF);
    double most = rounded(minutes * TWO_THIRDS);
    return least < most ? Wording.number(least) + " to " + minutes(most) : minutes(most);
  }

  /** Down to whole steps of 5, and below that to whole minutes; never nothing. */
  private static double rounded(double minutes) {
    double step = minutes < STEP_MINUTES ? 1 : STEP_MINUTES;
    // Two thirds of 15 is 10, whatever the last binary digit says.
    return Math.max(1, Math.floor(minutes / step + 1e-9) * step);
  }

  private static String minutes(double number) {
    return Wording.number(number) + (number == 1 ? " minute" : " minutes");
  }

  private static String sentence(String words) {
    return Phrases.upper(words) + ".";
  }
}
