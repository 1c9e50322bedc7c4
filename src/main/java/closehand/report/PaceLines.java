package closehand.report;

import closehand.strain.SessionPlan;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** How long to play and when to pause, and which answers that comes from. */
final class PaceLines {
  private final PlayLimit limit;

  private PaceLines(PlayLimit limit) {
    this.limit = limit;
  }

  /** The length of a block of play with its reasons, the breaks, what else to mind. */
  static List<Piece> of(PageInput input, Room room) {
    PaceLines pace = new PaceLines(PlayLimit.of(input));
    // What keeps tasks for another day comes first, however little room there is.
    List<String> sentences = new ArrayList<>(Sayings.holding(input.together(), "pace"));
    sentences.addAll(pace.block(input.facts(), room));
    sentences.add(
        pace.limit.minutes().isPresent()
            ? SessionLines.sentence(SessionPlan.of(SessionLines.pace(input)))
            : pace.breaks());
    Sayings.tellingFirst(input.together(), "pace").stream()
        .filter(s -> !isAboutLength(s) && !sentences.contains(s))
        .limit(Math.max(0, room.sayings() - 1))
        .forEach(sentences::add);
    return List.of(
        new Gap(), Paragraph.headed("How long, and when to pause.", String.join(" ", sentences)));
  }

  /** The limit in one line for the clinician; nothing where none is known. */
  static List<Piece> limit(PageInput input) {
    PlayLimit limit = PlayLimit.of(input);
    return limit.minutes().isEmpty()
        ? List.of()
        : List.of(
            Paragraph.item(
                "Limit on the player's page: "
                    + PlayLimit.words(limit.minutes().getAsDouble())
                    + (limit.costsDays() ? ", to stop well before" : "")
                    + ", from "
                    + PlayLimit.words(limit.comfortable().orElse(0))
                    + " of comfortable play. It stands above every time named below."));
  }

  /**
   * Breaks where no limit is known: HSE guidance on display-screen work; the 30 seconds are common
   * practice.
   */
  private String breaks() {
    boolean shorter = limit.costsDays() || limit.tires() || limit.settlesLate();
    String pause = "Pause for 30 seconds every 10 to 15 minutes.";
    return shorter ? pause : pause + " After 50 to 60 minutes at most, take 5 to 10 minutes off.";
  }

  /** Whether a sentence of the rules is about how long to play, which the one limit says. */
  static boolean isAboutLength(String sentence) {
    return sentence.contains("comfortable time")
        || sentence.contains("this interview")
        || sentence.startsWith("Make your next sessions")
        || sentence.startsWith("Play for ")
        || sentence.contains("pause of 30 seconds");
  }

  private List<String> block(Facts facts, Room room) {
    List<String> because = because();
    if (limit.comfortable().isEmpty()) {
      String start = because.isEmpty() ? "" : Phrases.upper(String.join(", and ", because)) + ". ";
      return List.of(start + begin());
    }
    double comfortable = limit.comfortable().getAsDouble();
    because.add(
        0, "you can play about " + PlayLimit.words(comfortable) + " before you want a rest");
    List<String> sentences = new ArrayList<>();
    sentences.add(Phrases.upper(String.join(", and ", because)) + ". " + advice());
    OptionalDouble wish = facts.number("goal.sessionMin");
    if (!room.tightest()
        && wish.isPresent()
        && !limit.allows(wish.getAsDouble())
        && !limit.costsDays()) {
      sentences.add(
          "Your good session of "
              + PlayLimit.words(wish.getAsDouble())
              + " then needs rests in between.");
    }
    return sentences;
  }

  private String begin() {
    return limit.costsDays()
        ? "Begin with a few minutes, well before your limit; then rest; never add time by plan."
        : "Begin with 10 to 15 minutes or less, then rest.";
  }

  private List<String> because() {
    List<String> because = new ArrayList<>();
    if (limit.tires()) {
      because.add("you tire within a session");
    }
    if (limit.settlesLate()) {
      because.add("your pain takes long to settle");
    }
    if (limit.costsDays()) {
      because.add("overdoing it costs you days");
    }
    return because;
  }

  private String advice() {
    String minutes = PlayLimit.words(limit.minutes().orElse(1));
    if (limit.costsDays()) {
      return "So stop before "
          + minutes
          + " (half), also on a better day; then rest; never add time by plan.";
    }
    if (limit.settlesLate()) {
      return "So for now play " + minutes + " at most (half), then rest.";
    }
    return limit.tires()
        ? "So play " + minutes + " at most (two thirds), then rest for as long."
        : "So stop by then, or sooner if it hurts.";
  }
}
