package closehand.report;

import closehand.bank.Caution;
import closehand.bank.Effectors;
import closehand.interview.Wording;
import closehand.strain.Band;
import closehand.strain.BodyPart;
import closehand.strain.DayLoad;
import closehand.strain.Driver;
import closehand.strain.EffectorReading;
import closehand.strain.Flag;
import closehand.strain.HandReading;
import closehand.strain.Load;
import closehand.strain.LoadCaution;
import closehand.strain.LoadWords;
import closehand.strain.Method;
import closehand.strain.PlanLoad;
import closehand.strain.Use;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** What a plan asks of the body, as bars with numbers and words. */
public final class LoadLines {
  private LoadLines() {}

  /**
   * The load of a plan for the player: a bar a body part, the hands, the heaviest part and what
   * would lighten it, cautions with their figures.
   *
   * @param cautions the bank's cautions by code
   */
  public static String player(
      PlanLoad load, Function<String, Optional<Caution>> cautions, Glyphs glyphs) {
    List<Piece> pieces = new ArrayList<>();
    pieces.add(new Heading("What this plan asks of your body: " + load.title()));
    load.effectors().forEach(e -> pieces.add(new LoadBar(e)));
    load.hands().forEach(h -> pieces.add(Paragraph.item(hand(h))));
    heaviest(load).ifPresent(s -> pieces.add(Paragraph.of(s)));
    pieces.addAll(cautions(load, cautions));
    if (load.flags().contains(Flag.EFFORT_NOT_RATED)) {
      pieces.add(Paragraph.of(LoadWords.flag(Flag.EFFORT_NOT_RATED)));
    }
    pieces.add(Paragraph.of(LoadWords.MADE_FOR_WORK + " " + LoadWords.YOUR_OWN_SIGNS));
    return Sheet.text(pieces, glyphs);
  }

  /** The same for the clinician, with drivers, holds, limits of the methods and sources. */
  public static String clinician(
      PlanLoad load, Function<String, Optional<Caution>> cautions, Glyphs glyphs) {
    List<Piece> pieces = new ArrayList<>();
    pieces.add(new Heading("Load of the plan: " + load.title()));
    pieces.add(
        Paragraph.of(
            "For "
                + Wording.number(Math.round(100 * load.time().hoursPerDay()) / 100.0)
                + (load.time().hoursPerDay() == 1 ? " hour" : " hours")
                + " a day on "
                + load.time().daysPerWeek()
                + " days a week."));
    load.effectors().forEach(e -> pieces.add(new LoadBar(e)));
    Set<Method> methods = new LinkedHashSet<>();
    methods.add(Method.LOAD_LIGHT);
    for (EffectorReading part : load.effectors()) {
      figure(part.index(), methods)
          .ifPresent(f -> pieces.add(Paragraph.item(Effectors.words(part.effector()) + ": " + f)));
      figure(part.hold(), methods)
          .ifPresent(f -> pieces.add(Paragraph.item(Effectors.words(part.effector()) + ": " + f)));
    }
    for (HandReading hand : load.hands()) {
      List<Load> all = new ArrayList<>(hand.activity());
      all.add(0, hand.composite());
      for (Load one : all) {
        figure(one, methods)
            .ifPresent(f -> pieces.add(Paragraph.item(hand.hand().words() + ": " + f)));
      }
    }
    heaviest(load).ifPresent(s -> pieces.add(Paragraph.of(s)));
    pieces.addAll(cautions(load, cautions));
    load.flags().forEach(f -> pieces.add(Paragraph.item(LoadWords.flag(f))));
    pieces.add(Paragraph.of(LoadWords.MADE_FOR_WORK + " " + LoadWords.YOUR_OWN_SIGNS));
    methods.forEach(m -> pieces.add(Paragraph.item(LoadWords.source(m))));
    return Sheet.text(pieces, glyphs);
  }

  /** Each hand over all games of a day. */
  public static String day(DayLoad day, Glyphs glyphs) {
    List<Piece> pieces = new ArrayList<>();
    pieces.add(new Heading("All games of a day together"));
    for (Map.Entry<BodyPart.Hand, Load> one : day.hands().entrySet()) {
      pieces.add(
          Paragraph.item("Your " + one.getKey().words() + ": " + said(one.getValue()) + "."));
    }
    pieces.add(Paragraph.of(LoadWords.MADE_FOR_WORK));
    return Sheet.text(pieces, glyphs);
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
  private static String said(Load load) {
    return load.figure()
        .map(f -> value(f) + ", " + LoadWords.band(f.method(), f.band()))
        .orElseGet(() -> LoadWords.OUTSIDE + " (" + why(load) + ")");
  }

  private static String why(Load load) {
    return String.join(
        " ",
        load.flags().stream().map(f -> Phrases.bare(Phrases.lower(LoadWords.flag(f)))).toList());
  }

  private static String value(Load.Figure figure) {
    return switch (figure.method()) {
      case ENDURANCE -> percent(figure.value()) + " of a careful limit";
      default -> String.format(Locale.ROOT, "%.1f", figure.value());
    };
  }

  private static String drivers(Load.Figure figure) {
    return Phrases.and(figure.drivers().stream().map(LoadWords::driver).toList());
  }

  /** A method's figure for the clinician; nothing where the part has no use for the method. */
  private static Optional<String> figure(Load load, Set<Method> methods) {
    boolean idle =
        load.flags().contains(Flag.NOT_A_HAND) || load.flags().contains(Flag.NOTHING_TO_DO);
    if (idle) {
      return Optional.empty();
    }
    methods.add(load.method());
    StringBuilder text =
        new StringBuilder(Phrases.lower(load.method().title())).append(' ').append(said(load));
    load.figure().ifPresent(f -> text.append("; mostly ").append(drivers(f)));
    if (load.figure().isPresent()) {
      load.flags().forEach(f -> text.append(". ").append(Phrases.bare(LoadWords.flag(f))));
    }
    return Optional.of(text.append('.').toString());
  }

  /** The heaviest part with what would lighten it most; nothing for a plan without presses. */
  private static Optional<String> heaviest(PlanLoad load) {
    return load.heaviest()
        .map(
            part -> {
              StringBuilder text = new StringBuilder("Most to do has ");
              text.append(LoadWords.yours(part.effector())).append('.');
              part.light()
                  .figure()
                  .flatMap(f -> f.drivers().stream().findFirst())
                  .map(Driver::factor)
                  .ifPresent(
                      f -> text.append(" What helps: ").append(LoadWords.lighten(f)).append('.'));
              part.heaviestUse(load.body()).ifPresent(u -> text.append(lighter(part, u, load)));
              return text.toString();
            });
  }

  private static String lighter(EffectorReading part, Use use, PlanLoad load) {
    String text = " What would lighten it most: another place for \"" + use.name() + "\"";
    double now = part.towardsRed();
    double then = part.without(use, load.body());
    if (now > 0 && now < Double.POSITIVE_INFINITY) {
      text += ", which is " + percent(Math.max(0, 1 - then / now)) + " of it";
    }
    text += ".";
    return use.elsewhere().isEmpty()
        ? text
        : text
            + " Its next place is "
            + use.elsewhere().get(0).input()
            + "; there it costs "
            + use.elsewhere().get(0).extraPoints()
            + " points more.";
  }

  private static List<Piece> cautions(PlanLoad load, Function<String, Optional<Caution>> cautions) {
    List<Piece> pieces = new ArrayList<>();
    for (LoadCaution raised : load.cautions()) {
      String title =
          cautions.apply(raised.code()).map(c -> Phrases.bare(c.title())).orElse(raised.code());
      String first =
          cautions
              .apply(raised.code())
              .flatMap(c -> c.actions().stream().findFirst())
              .map(a -> " " + a)
              .orElse("");
      pieces.add(Paragraph.item(title + ": " + raised.because() + "." + first));
    }
    return pieces;
  }

  private static String percent(double share) {
    return Math.round(100 * share) + " %";
  }

  /** The band's words for a light, where it can be told. */
  static String light(EffectorReading part) {
    return part.light()
        .figure()
        .map(f -> LoadWords.band(Method.LOAD_LIGHT, f.band()))
        .orElse(LoadWords.OUTSIDE + ": more than a minute holds");
  }

  /** Whether any part is above its green line. */
  public static boolean isWorthSaying(PlanLoad load) {
    return load.effectors().stream()
        .anyMatch(e -> e.light().figure().map(f -> f.band() != Band.LOWER).orElse(true));
  }
}
