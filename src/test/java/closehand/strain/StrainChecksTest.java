package closehand.strain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import closehand.json.JsonValue;
import closehand.strain.CheckTable.Row;
import closehand.strain.CumulativeStrain.GameTime;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Every row of the check values; each test's name begins with what the row is worth. */
class StrainChecksTest {
  /** For each table with columns, what our methods make of a row. */
  private static final Map<String, ToDoubleFunction<Row>> METHODS =
      Map.of(
          "duet_p_pct", StrainChecksTest::chancePercent,
          "hal", r -> HandActivity.level(r.number("F_per_s"), r.number("D_pct")),
          "si1995", r -> oldIndex(r).product(),
          "si1995_product", r -> product(r).product(),
          "endurance_s", r -> Endurance.seconds(region(r), r.number("f")),
          "rohmert_s", r -> Endurance.rohmertSeconds(r.number("f")),
          "rsi_mult", StrainChecksTest::multiplier,
          "rsi", r -> RevisedStrainIndex.index(press(r), r.number("h")),
          "mae_dc_max", r -> DutyCycle.largestShare(r.number("f")));

  private static final Set<String> OTHERS =
      Set.of("schema", "ha2018", "cosi", "cusi", "bounds", "invariants", "basis");

  @Test
  void noTableIsForgotten() throws IOException {
    Set<String> known = new TreeSet<>(METHODS.keySet());
    known.addAll(OTHERS);
    Set<String> there = new TreeSet<>();
    CheckTable.document().members().forEach(m -> there.add(m.name()));
    assertEquals(known, there);
  }

  @TestFactory
  Stream<DynamicTest> everyRowOfEveryTable() throws IOException {
    List<DynamicTest> tests = new ArrayList<>();
    for (Map.Entry<String, ToDoubleFunction<Row>> one : METHODS.entrySet()) {
      for (Row row : CheckTable.rows(one.getKey())) {
        double tolerance = row.has("tol") ? row.number("tol") : 0;
        tests.add(
            dynamicTest(
                row.name(one.getKey()),
                () ->
                    assertEquals(
                        row.number("out"),
                        one.getValue().applyAsDouble(row),
                        Math.max(tolerance, 1e-9))));
      }
    }
    return tests.stream();
  }

  @TestFactory
  Stream<DynamicTest> theLinesOf2018() throws IOException {
    return CheckTable.rows("ha2018").stream()
        .map(
            row ->
                dynamicTest(
                    row.name("ha2018"),
                    () -> {
                      HandActivity.Lines lines = HandActivity.lines2018(row.number("hal"));
                      assertEquals(row.number("al"), lines.action(), row.number("tol"));
                      assertEquals(row.number("tlv"), lines.limit(), row.number("tol"));
                    }));
  }

  @TestFactory
  Stream<DynamicTest> theSumOfAHandAndOfADay() throws IOException {
    List<DynamicTest> tests = new ArrayList<>();
    for (JsonValue one : CheckTable.items(CheckTable.document().member("cosi").orElseThrow())) {
      List<Exertion> presses = CheckTable.presses(member(one, "subs_i_e_d_p"));
      double hours = CheckTable.number(one, "h");
      double tolerance = CheckTable.number(one, "tol");
      tests.add(
          dynamicTest(
              CheckTable.text(one, "basis") + ": cosi",
              () -> {
                double out = CheckTable.number(one, "out");
                assertEquals(
                    out, CompositeStrain.of(presses, hours).amount().orElseThrow(), tolerance);
                assertEquals(out, CompositeStrain.published(presses, hours), tolerance);
              }));
    }
    for (JsonValue one : CheckTable.items(CheckTable.document().member("cusi").orElseThrow())) {
      List<GameTime> day = new ArrayList<>();
      for (JsonValue task : CheckTable.items(member(one, "tasks"))) {
        day.add(
            new GameTime(
                CheckTable.presses(member(task, "subs_i_e_d_p")), CheckTable.number(task, "h")));
      }
      tests.add(
          dynamicTest(
              CheckTable.text(one, "basis") + ": cusi",
              () ->
                  assertEquals(
                      CheckTable.number(one, "out"),
                      CumulativeStrain.of(day).amount().orElseThrow(),
                      CheckTable.number(one, "tol"))));
    }
    return tests.stream();
  }

  @Test
  void pub_aLightEffortSixtyPercentOfTheTimeAllowsLessThanOneASecond() {
    assertTrue(largestAllowedPerMinute(0.1, 60) < 60);
  }

  @Test
  void pub_aHardEffortAFifthOfTheTimeAllowsLessThanOneInTwoSeconds() {
    assertTrue(largestAllowedPerMinute(0.5, 20) < 30);
  }

  @Test
  void pub_aMeasuredGripHoldLiesInsideThePrintedSpread() {
    double model = Endurance.seconds(Region.HAND, 0.15);
    assertTrue(455.9 > 0.53 * model && 455.9 < 1.47 * model);
    assertTrue(Endurance.carefulSeconds(Region.HAND, 0.15) < 455.9, "the careful edge is careful");
  }

  /** The bounds file holds three rows; the three tests above are those rows. */
  @Test
  void thereAreThreeBoundsAndTenInvariants() throws IOException {
    assertEquals(3, CheckTable.items(CheckTable.document().member("bounds").orElseThrow()).size());
    assertEquals(
        10, CheckTable.items(CheckTable.document().member("invariants").orElseThrow()).size());
  }

  private static double largestAllowedPerMinute(double effort, double sharePercent) {
    double largest = 0;
    for (double perMinute = 0.5; perMinute <= 240; perMinute += 0.5) {
      double seconds = 60 * sharePercent / 100 / perMinute;
      Exertion press = new Exertion("R.I", effort, perMinute, seconds);
      if (RevisedStrainIndex.index(press, 8) <= RevisedStrainIndex.UPPER_LINE) {
        largest = perMinute;
      }
    }
    return largest;
  }

  private static JsonValue member(JsonValue object, String name) {
    return ((JsonValue.Obj) object).member(name).orElseThrow();
  }

  /** The published last step, which the program leaves out; it exists here to check the rest. */
  private static double chancePercent(Row row) {
    double damage = row.number("reps") * CumulativeDamage.ofOnePress(row.number("omni"));
    double y = 0.573 + 0.747 * Math.log10(damage);
    return 100 * Math.exp(y) / (1 + Math.exp(y));
  }

  private static StrainIndex1995.Multipliers oldIndex(Row row) {
    return StrainIndex1995.multipliers(
        row.number("borg"),
        row.number("duty_pct"),
        row.number("eff_per_min"),
        (int) row.number("posture1_5"),
        (int) row.number("speed1_5"),
        row.number("hours"));
  }

  private static StrainIndex1995.Multipliers product(Row row) {
    return new StrainIndex1995.Multipliers(
        row.number("IM"),
        row.number("DM"),
        row.number("EM"),
        row.number("PM"),
        row.number("SM"),
        row.number("HM"));
  }

  private static Region region(Row row) {
    String name = row.text("region");
    return name.equals("grip")
        ? Region.HAND
        : Region.valueOf(name.toUpperCase(java.util.Locale.ROOT));
  }

  private static Exertion press(Row row) {
    return new Exertion(
        "R.I", row.number("i"), row.number("e_per_min"), row.number("d_s"), row.number("p_deg"));
  }

  private static double multiplier(Row row) {
    double x = row.number("x");
    return switch (row.text("which")) {
      case "im" -> RevisedStrainIndex.effort(x);
      case "em" -> RevisedStrainIndex.frequency(x);
      case "dm" -> RevisedStrainIndex.duration(x);
      case "pm" -> RevisedStrainIndex.posture(x);
      case "hm" -> RevisedStrainIndex.hours(x);
      default -> throw new AssertionError(row.text("which"));
    };
  }
}
