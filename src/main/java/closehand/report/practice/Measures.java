package closehand.report.practice;

import closehand.measure.practice.Findings;
import closehand.measure.practice.Findings.About;
import closehand.plan.supply.Measured;
import closehand.plan.supply.SuppliedInput;
import closehand.plan.supply.Supply;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/**
 * Turns what practice found into what a supply takes as measured.
 *
 * <p>Only differences are carried over. Prompts make everybody miss more and slow down more than a
 * known game does, so the player's own share over all inputs counts for every input, practised or
 * not, and no input looks worse for having been practised.
 */
public final class Measures {
  private static final double SURE = 1_000;

  private final Findings findings;
  private final Supply supply;
  private final double usualMisses;

  private Measures(Findings findings, Supply supply) {
    this.findings = findings;
    this.supply = supply;
    this.usualMisses =
        supply.inputs().stream()
            .filter(i -> findings.of(i.id()).isPresent())
            .mapToDouble(this::believedMisses)
            .average()
            .orElse(0);
  }

  /** What is measured of every input of a supply; nothing where no round counted. */
  public static Map<String, Measured> of(Findings findings, Supply supply) {
    return drawn(findings, supply, About::value);
  }

  /**
   * The same with other numbers that the findings leave possible.
   *
   * @param pick a number for each that is known about
   */
  public static Map<String, Measured> drawn(
      Findings findings, Supply supply, ToDoubleFunction<About> pick) {
    Measures measures = new Measures(findings, supply);
    Map<String, Measured> measured = new LinkedHashMap<>();
    if (!findings.inputs().isEmpty()) {
      supply.inputs().forEach(i -> measured.put(i.id(), measures.of(i, pick)));
    }
    return measured;
  }

  private double believedMisses(SuppliedInput input) {
    var part = supply.body().get(input.effector());
    return part == null ? 0 : 1 - part.reliabilityPerMille() / SURE;
  }

  private Measured of(SuppliedInput input, ToDoubleFunction<About> pick) {
    return findings
        .of(input.id())
        .map(
            f ->
                new Measured(
                    (int) Math.round(pick.applyAsDouble(f.difference())),
                    perMille(pick.applyAsDouble(f.missShare()) - believedMisses(input)),
                    times(pick.applyAsDouble(f.drop()))))
        .orElseGet(() -> unpractised(pick));
  }

  /** As uncertain as practised inputs are among themselves. */
  private Measured unpractised(ToDoubleFunction<About> pick) {
    return new Measured(
        (int) Math.round(pick.applyAsDouble(new About(0, spread(Findings.OfInput::difference)))),
        perMille(
            pick.applyAsDouble(new About(findings.missShare(), spread(Findings.OfInput::missShare)))
                - usualMisses),
        times(pick.applyAsDouble(new About(findings.dropShare(), spread(Findings.OfInput::drop)))));
  }

  private double spread(Function<Findings.OfInput, About> known) {
    List<About> all = findings.inputs().stream().map(known).toList();
    double mean = all.stream().mapToDouble(About::value).average().orElse(0);
    double squares = 0;
    for (About one : all) {
      squares += (one.value() - mean) * (one.value() - mean) + one.error() * one.error();
    }
    return Math.sqrt(squares / Math.max(1, all.size()));
  }

  private static int perMille(double share) {
    return (int) Math.round(SURE * Math.max(-1, Math.min(1, share)));
  }

  private static double times(double drop) {
    return Math.max(1, Math.min(Measured.MOST_TIMES, 1 + drop));
  }
}
