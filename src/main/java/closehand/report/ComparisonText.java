package closehand.report;

import closehand.measure.statistics.Sample;
import closehand.measure.statistics.Verdict;
import closehand.measure.statistics.VerdictWords;
import closehand.measure.trial.SideBySide;
import closehand.measure.trial.Trial;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;

/** Two set-ups side by side in plain text, and what follows. */
public final class ComparisonText {
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
    pieces.add(new Table(WIDTHS, text.rows()));
    pieces.add(new Gap());
    pieces.add(Paragraph.headed("What worked.", text.words(both.success())));
    pieces.add(Paragraph.of(figures(both.success(), "of ten")));
    pieces.add(new Gap());
    pieces.add(Paragraph.headed("Pain in a trial.", text.words(both.pain())));
    pieces.add(Paragraph.of(figures(both.pain(), "points")));
    pieces.add(new Gap());
    pieces.add(Paragraph.headed("How hard.", text.words(both.effort())));
    pieces.add(Paragraph.headed("Satisfied.", text.words(both.satisfaction())));
    pieces.add(new Gap());
    pieces.add(Paragraph.headed("What follows.", text.choice()));
    both.warnings().forEach(w -> pieces.add(Paragraph.item(warning(w))));
    pieces.addAll(text.plot(trials));
    pieces.add(new Gap());
    pieces.add(Paragraph.of(VerdictWords.GROUND));
    pieces.add(
        Paragraph.of(
            "Up by 2 in pain, tingling or numbness, or worse the next day: stop, rest, and ask your health team"
                + " before another trial."));
    return Sheet.text(pieces.stream().filter(p -> !isEmpty(p)).toList(), glyphs);
  }

  private static boolean isEmpty(Piece piece) {
    return piece instanceof Paragraph paragraph && paragraph.text().isEmpty();
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

  private String words(Verdict verdict) {
    return VerdictWords.of(verdict, first, second);
  }

  private static String figures(Verdict verdict, String unit) {
    return verdict
        .figures()
        .map(
            d ->
                "The means are "
                    + number(d.size())
                    + " "
                    + unit
                    + " apart; your own wobble allows for "
                    + number(d.wobble())
                    + ". Chance alone would do this in "
                    + percent(d.chance().twoSided())
                    + " % of all ways to deal the trials out"
                    + (d.chance().exact() ? "" : " (about)")
                    + ". "
                    + percent(d.overlap().wonShare())
                    + " % of pairs speak for B; less what A was gaining by itself, "
                    + number(d.overlap().tauLessTrend())
                    + " on a scale from -1 to 1.")
        .orElse("");
  }

  private static String percent(double share) {
    double percent = 100 * share;
    return percent > 0 && percent < 1 ? number(percent) : Long.toString(Math.round(percent));
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
            .filter(Trial::done)
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
      pieces.add(Paragraph.item(line(i + 1, shown.get(i))));
    }
    return pieces;
  }

  private String line(int place, Trial trial) {
    OptionalDouble worked = trial.worked(both.actions());
    return place
        + ". "
        + PlainDate.of(trial.day())
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
