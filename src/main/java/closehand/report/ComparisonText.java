package closehand.report;

import closehand.measure.statistics.Sample;
import closehand.measure.statistics.Verdict;
import closehand.measure.statistics.VerdictWords;
import closehand.measure.trial.SideBySide;
import closehand.measure.trial.Trial;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;

/** Two set-ups side by side in plain text, and what follows. */
public final class ComparisonText {
  private static final String METHODS =
      "Wobble: from your own repeats (after Jacobson and Truax 1991). Chance: every way of dealing the trials out is"
          + " counted (Fisher 1935), or about where there are too many; by ranks: Mann and Whitney 1947. Pairs and overlap less trend: Parker and"
          + " others 2009 and 2011; a trend of A alone can bring the last below -1.";
  private static final List<Integer> WIDTHS = List.of(22, 23, 23);

  private final SideBySide both;
  private final String first;
  private final String second;

  private ComparisonText(SideBySide both) {
    this.both = both;
    this.first = both.first().setUp().name();
    this.second = both.second().setUp().name();
  }

  /**
   * The text.
   *
   * @param trials all trials of the case, in order
   */
  public static String of(SideBySide both, List<Trial> trials, Glyphs glyphs) {
    ComparisonText text = new ComparisonText(both);
    List<Piece> pieces = new ArrayList<>();
    pieces.add(new Heading("Two set-ups side by side"));
    pieces.add(Paragraph.of(text.choice()));
    both.warnings().forEach(w -> pieces.add(Paragraph.item(warning(w))));
    pieces.add(new Gap());
    pieces.add(new Table(WIDTHS, text.rows()));
    pieces.add(new Gap());
    text.verdicts()
        .forEach((name, verdict) -> pieces.add(Paragraph.item(text.words(name, verdict))));
    pieces.addAll(text.plot(trials));
    pieces.add(new Heading("The figures behind it"));
    text.verdicts().forEach((name, verdict) -> pieces.addAll(figures(name, verdict)));
    pieces.add(Paragraph.of(METHODS));
    pieces.add(new Gap());
    pieces.add(Paragraph.of(VerdictWords.GROUND));
    pieces.add(
        Paragraph.of(
            "Up by 2 in pain, tingling or numbness, or worse the next day: stop, rest, and ask your health team"
                + " before another trial."));
    return Sheet.text(pieces, glyphs);
  }

  /** What follows, in a line for a page. */
  public static String sentence(SideBySide both) {
    ComparisonText text = new ComparisonText(both);
    return "Side by side, " + text.first + " and " + text.second + ": " + text.choice();
  }

  private Map<String, Verdict> verdicts() {
    Map<String, Verdict> verdicts = new LinkedHashMap<>();
    verdicts.put("What worked", both.success());
    verdicts.put("Pain", both.pain());
    verdicts.put("How hard", both.effort());
    verdicts.put("Satisfied", both.satisfaction());
    return verdicts;
  }

  private List<List<String>> rows() {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("", "A: " + first, "B: " + second));
    rows.add(
        List.of(
            "Trials",
            Integer.toString(both.first().trials().size()),
            Integer.toString(both.second().trials().size())));
    rows.add(row("Worked, of ten", t -> stream(t.worked(both.actions()))));
    rows.add(row("Pain went up by", t -> t.painRise().stream().mapToObj(i -> (double) i)));
    rows.add(row("Tiredness up by", t -> t.tirednessRise().stream().mapToObj(i -> (double) i)));
    rows.add(row("How hard, 0 to 10", t -> t.after().effort().stream().mapToObj(i -> (double) i)));
    rows.add(row("Satisfied, 0 to 10", t -> t.satisfaction().stream().mapToObj(i -> (double) i)));
    rows.add(
        List.of(
            "Stopped",
            Integer.toString(both.first().stopped()),
            Integer.toString(both.second().stopped())));
    return rows;
  }

  private static Stream<Double> stream(OptionalDouble value) {
    return value.isPresent() ? Stream.of(value.getAsDouble()) : Stream.empty();
  }

  private List<String> row(String name, Function<Trial, Stream<Double>> measure) {
    return List.of(name, mean(both.first(), measure), mean(both.second(), measure));
  }

  private static String mean(SideBySide.Row row, Function<Trial, Stream<Double>> measure) {
    List<Double> values = row.trials().stream().flatMap(measure).toList();
    return values.isEmpty() ? "not said" : number(new Sample(values).mean());
  }

  private static String number(double value) {
    String text = String.format(Locale.ROOT, "%.1f", value);
    return text.equals("-0.0") ? "0.0" : text;
  }

  private String words(String name, Verdict verdict) {
    String words = VerdictWords.of(verdict, first, second);
    // A set-up's name stands as it was typed, also where it begins the sentence.
    boolean named = verdict instanceof Verdict.Better || verdict instanceof Verdict.LooksBetter;
    return name
        + ": "
        + (named ? words : words.substring(0, 1).toLowerCase(Locale.ROOT) + words.substring(1));
  }

  private static List<Piece> figures(String name, Verdict verdict) {
    return verdict.figures().stream()
        .<Piece>map(
            d ->
                Paragraph.item(
                    name
                        + ": the means are "
                        + number(d.size())
                        + " apart, your own wobble allows for "
                        + number(d.wobble())
                        + "; chance alone "
                        + percent(d.chance().twoSided())
                        + (d.chance().exact() ? "" : ", about")
                        + ", by ranks "
                        + percent(d.ranks().chance().twoSided())
                        + "; pairs in which B is better "
                        + percent(d.overlap().wonShare())
                        + "; overlap less trend "
                        + number(d.overlap().tauLessTrend())
                        + "."))
        .toList();
  }

  private static String percent(double share) {
    double percent = 100 * share;
    if (percent > 0 && percent < 0.1) {
      return "less than 0.1 %";
    }
    return (percent > 0 && percent < 1 ? number(percent) : Long.toString(Math.round(percent)))
        + " %";
  }

  private String choice() {
    String better =
        both.choice().side().map(s -> s == Verdict.Side.FIRST ? first : second).orElse("");
    return switch (both.choice().why()) {
      case SUCCESS -> "Start with " + better + ": more worked with it.";
      case PAIN ->
          "Start with " + better + ": they work equally well, and it hurt less or was not stopped.";
      case CHEAPER -> "Start with " + better + ": they do equally well, and it costs less.";
      case LIGHTER -> "Start with " + better + ": they do equally well, and it is lighter.";
      case QUICKER ->
          "Start with " + better + ": they do equally well, and it is quicker to set up.";
      case PAIN_AGAINST ->
          "Neither is put first: more works with one, and it hurts more or was stopped. Talk it over with your"
              + " health team before you go on with that one.";
      case NOTHING -> "Nothing tells them apart. Take the one you like better.";
      case TOO_FEW -> "Go on trying both in turn: A, B, B, A. Four of each at least, better five.";
    };
  }

  private static String warning(SideBySide.Warning warning) {
    return switch (warning) {
      case NOT_IN_TURN ->
          "The two were not tried in turn, so practice, the day or tiredness may speak for one of them. Next time: A,"
              + " B, B, A.";
      case OTHER_SCENE -> "Not all trials were in the same game and scene.";
      case OTHER_LENGTH -> "Some trials were more than twice as long as others.";
      case NO_COMMON_ACTION ->
          "No action was counted in all trials, so what worked cannot be set side by side.";
    };
  }

  private List<Piece> plot(List<Trial> trials) {
    List<Trial> shown =
        trials.stream()
            .filter(Trial::counts)
            .filter(t -> t.setUp().name().equals(first) || t.setUp().name().equals(second))
            .toList();
    List<Piece> pieces = new ArrayList<>();
    pieces.add(new Heading("Trial by trial"));
    if (!both.actions().isEmpty()) {
      List<String> drawn = TrialPlot.of(both, shown);
      pieces.add(glyphs -> drawn);
      pieces.add(new Gap());
    }
    for (int i = 0; i < shown.size(); i++) {
      pieces.add(Paragraph.numbered(i + 1, line(shown.get(i))));
    }
    return pieces;
  }

  private String line(Trial trial) {
    OptionalDouble worked = trial.worked(both.actions());
    return PlainDate.of(trial.day())
        + ", "
        + (trial.setUp().name().equals(first) ? "A" : "B")
        + ": "
        + (worked.isPresent() ? number(worked.getAsDouble()) + " of ten worked" : "not counted")
        + (trial.painRise().isPresent() ? ", pain " + signed(trial.painRise().getAsInt()) : "")
        + (trial.stopped().isPresent() ? ", stopped" : "")
        + ".";
  }

  private static String signed(int rise) {
    return rise > 0 ? "up by " + rise : rise < 0 ? "down by " + -rise : "as before";
  }
}
