package closehand.report;

import closehand.bank.Bank;
import closehand.bank.Caution;
import closehand.interview.Wording;
import closehand.strain.Accepted;
import closehand.strain.Band;
import closehand.strain.BodyPart;
import closehand.strain.DayLoad;
import closehand.strain.Driver;
import closehand.strain.EffectorReading;
import closehand.strain.Flag;
import closehand.strain.HandReading;
import closehand.strain.Load;
import closehand.strain.LoadWords;
import closehand.strain.Method;
import closehand.strain.PlanLoad;
import closehand.strain.Use;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a plan asks of the body, for the player: bars with numbers and words. */
final class LoadLines {
  private static final double PERCENT = 100;

  private LoadLines() {}

  /** A bar a body part, the hands, the heaviest part and what lightens it, cautions. */
  static List<Piece> of(Bank bank, PlanLoad load) {
    if (load.effectors().isEmpty()) {
      return List.of();
    }
    List<Piece> pieces = new ArrayList<>();
    pieces.add(new Gap());
    pieces.add(Paragraph.of("What this plan asks of your body in a minute of play:"));
    load.effectors().forEach(e -> pieces.add(new LoadBar(e)));
    load.hands().forEach(h -> pieces.add(Paragraph.item(hand(h))));
    heaviest(bank, load).ifPresent(s -> pieces.add(Paragraph.item(s)));
    pieces.addAll(cautions(bank, load));
    return pieces;
  }

  /** That a plan waits for a clinician because of red parts; nothing where none blocks. */
  static List<Piece> blocked(PlanLoad load, List<Accepted> accepted) {
    List<Piece> pieces = new ArrayList<>();
    for (EffectorReading part : load.blocking(accepted)) {
      pieces.add(
          Paragraph.of(
              "This plan waits: it asks too much of "
                  + LoadWords.yours(part.effector())
                  + ". Move a job away from there, or a clinician accepts it by name and reason: "
                  + "--accept \""
                  + part.effector()
                  + "=NAME: REASON\"."));
    }
    return pieces;
  }

  /** Who accepted red parts, and why. */
  static List<Piece> accepted(PlanLoad load, List<Accepted> accepted) {
    List<Piece> pieces = new ArrayList<>();
    for (Accepted one : accepted) {
      boolean red =
          load.effectors().stream().anyMatch(e -> e.isRed() && e.effector().equals(one.effector()));
      if (red) {
        pieces.add(
            new OwnWords(
                Phrases.upper(LoadWords.yours(one.effector()))
                    + " is above the red line; accepted by "
                    + one.by()
                    + ":",
                one.reason()));
      }
    }
    return pieces;
  }

  /** Each hand over all games of a day; nothing for a single game. */
  static List<Piece> together(DayLoad day) {
    List<Piece> pieces = new ArrayList<>();
    if (day.games().size() > 1 && !day.hands().isEmpty()) {
      pieces.add(new Gap());
      pieces.add(Paragraph.of("All games of a day together, each for the same time:"));
      for (Map.Entry<BodyPart.Hand, Load> one : day.hands().entrySet()) {
        String mostly =
            one.getValue()
                .figure()
                .filter(f -> !f.drivers().isEmpty())
                .map(f -> " Most of it: " + drivers(f) + ".")
                .orElse("");
        pieces.add(
            Paragraph.item(
                "Your "
                    + one.getKey().words()
                    + " as a whole, by a method for paid work: "
                    + said(one.getValue())
                    + "."
                    + mostly));
      }
    }
    return pieces;
  }

  /** What must stand beside every figure. */
  static List<Piece> standing(List<PlanLoad> loads) {
    if (loads.stream().allMatch(l -> l.effectors().isEmpty())) {
      return List.of();
    }
    List<Piece> pieces = new ArrayList<>();
    pieces.add(new Gap());
    if (loads.stream().anyMatch(l -> l.flags().contains(Flag.EFFORT_NOT_RATED))) {
      pieces.add(Paragraph.of(LoadWords.flag(Flag.EFFORT_NOT_RATED)));
    }
    pieces.add(Paragraph.of(LoadWords.MADE_FOR_WORK + " " + LoadWords.YOUR_OWN_SIGNS));
    return pieces;
  }

  private static String hand(HandReading hand) {
    String text =
        "Your "
            + hand.hand().words()
            + " as a whole, by a method for paid work: "
            + said(hand.composite())
            + ".";
    return hand.composite()
        .figure()
        .filter(f -> !f.drivers().isEmpty())
        .map(f -> text + " Most of it: " + drivers(f) + ".")
        .orElse(text);
  }

  /** "7.4, middle band" or why there is no figure. */
  static String said(Load load) {
    return load.figure()
        .map(f -> value(f) + ", " + LoadWords.band(f.method(), f.band()))
        .orElseGet(() -> LoadWords.OUTSIDE + " (" + why(load) + ")");
  }

  private static String why(Load load) {
    List<String> whys =
        load.flags().stream().map(f -> Phrases.bare(Phrases.lower(LoadWords.flag(f)))).toList();
    return String.join("; ", whys);
  }

  private static String value(Load.Figure figure) {
    return figure.method() == Method.ENDURANCE
        ? percent(figure.value()) + " of a careful limit"
        : oneDecimal(figure.value());
  }

  private static String oneDecimal(double value) {
    return Wording.number(Math.round(10 * value) / 10.0);
  }

  static String drivers(Load.Figure figure) {
    return Phrases.and(figure.drivers().stream().map(LoadWords::driver).toList());
  }

  /** The heaviest part with what would lighten it most; nothing for a plan without presses. */
  static Optional<String> heaviest(Bank bank, PlanLoad load) {
    return load.heaviest()
        .map(
            part -> {
              StringBuilder text =
                  new StringBuilder(Phrases.upper(LoadWords.yours(part.effector())))
                      .append(" has the most to do");
              if (part.band() == Band.LOWER && !load.isOfAHeavyHand(part.effector())) {
                return text.append(", and it has room.").toString();
              }
              text.append('.');
              part.heavier()
                  .figure()
                  .flatMap(f -> f.drivers().stream().findFirst())
                  .map(Driver::factor)
                  .ifPresent(
                      f -> text.append(" What helps: ").append(LoadWords.lighten(f)).append('.'));
              part.heaviestUse(load.body(), load.time().hoursPerDay())
                  .ifPresent(u -> text.append(lighter(bank, part, u, load)));
              return text.toString();
            });
  }

  private static String lighter(Bank bank, EffectorReading part, Use use, PlanLoad load) {
    StringBuilder text =
        new StringBuilder(" What would lighten it most: another place for \"")
            .append(use.name())
            .append('"');
    double now = part.heaviness();
    double then = part.without(use, load.body(), load.time().hoursPerDay());
    if (now > 0 && now < Double.POSITIVE_INFINITY) {
      text.append(", which is ").append(percent(Math.max(0, 1 - then / now))).append(" of it");
    }
    text.append('.');
    use.elsewhere().stream()
        .findFirst()
        .ifPresent(
            e ->
                text.append(" Its next place is ")
                    .append(place(bank, e.input()))
                    .append(
                        e.extraPoints() > 0
                            ? "; there it costs " + e.extraPoints() + " points more."
                            : "; there it costs no more."));
    return text.toString();
  }

  /** An input of a plan, such as {@code MOUSE_SIDE_R/B3}, in plain words. */
  private static String place(Bank bank, String path) {
    int slash = path.indexOf('/');
    String input = path.substring(slash + 1);
    return slash < 0
        ? path
        : bank.approach(path.substring(0, slash))
            .map(
                a ->
                    a.inputs().stream()
                            .filter(i -> i.id().equals(input))
                            .map(i -> i.name())
                            .findFirst()
                            .orElse(input)
                        + " ("
                        + Phrases.lower(a.words().brief())
                        + ")")
            .orElse(path);
  }

  /** Each caution once, by its title, with the figures behind it and the first thing to do. */
  static List<Piece> cautions(Bank bank, PlanLoad load) {
    Map<String, List<String>> because = new LinkedHashMap<>();
    load.cautions()
        .forEach(c -> because.computeIfAbsent(c.code(), k -> new ArrayList<>()).add(c.because()));
    List<Piece> pieces = new ArrayList<>();
    because.forEach(
        (code, figures) -> {
          Optional<Caution> caution = bank.caution(code);
          String title = caution.map(c -> Phrases.bare(c.title())).orElse(code);
          String first =
              caution.flatMap(c -> c.actions().stream().findFirst()).map(a -> " " + a).orElse("");
          pieces.add(Paragraph.item(title + ": " + String.join("; ", figures) + "." + first));
        });
    return pieces;
  }

  static String percent(double share) {
    return Math.round(PERCENT * share) + " %";
  }
}
