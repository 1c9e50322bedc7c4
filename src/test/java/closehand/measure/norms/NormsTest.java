package closehand.measure.norms;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.json.NormsReader;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Strength beside what is usual: checks G1 to G10, each named with what its figures rest on. */
class NormsTest {
  private static Comparison.Beside beside(
      String table, Strength strength, Group.Sex sex, Group.Hand hand, int age, double kilograms)
      throws IOException {
    return NormsReader.embedded().compare(strength, sex, hand, age, kilograms).stream()
        .map(c -> (Comparison.Beside) c)
        .filter(b -> b.origin().id().equals(table))
        .findFirst()
        .orElseThrow();
  }

  private static double pounds(double pounds) {
    return Unit.POUND.toKilograms(pounds);
  }

  @Test
  void g1_pub_poundsKilogramsAndNewtons() {
    assertEquals(55.248, pounds(121.8), 0.001);
    assertEquals(541.79, Unit.POUND.to(Unit.NEWTON, 121.8), 0.01);
    assertEquals(4.448222, Unit.POUND.to(Unit.NEWTON, 1), 1e-6);
  }

  @Test
  void g2_self_aManOf62Grips60Pounds() throws IOException {
    Comparison.Beside grip =
        beside("grip-usa-1985", Strength.GRIP, Group.Sex.MALE, Group.Hand.RIGHT, 62, pounds(60));
    assertEquals(-1.456, grip.deviations().orElseThrow(), 0.001);
    assertEquals(7.27, Bell.percentBelow(grip.deviations().orElseThrow()), 0.01);
    assertEquals(0.669, grip.share(), 0.001);
    assertEquals("7", grip.percent().orElseThrow());
    assertEquals(
        "Your grip is about 65 % of what is usual at this age (about 41 kg).",
        NormWords.sentence(grip));
  }

  @Test
  void g3_self_aWomanOf78GripsWithTheLeft() throws IOException {
    Comparison.Beside grip =
        beside("grip-usa-1985", Strength.GRIP, Group.Sex.FEMALE, Group.Hand.LEFT, 78, pounds(30));
    assertEquals(-0.854, grip.deviations().orElseThrow(), 0.001);
    assertEquals(19.66, Bell.percentBelow(grip.deviations().orElseThrow()), 0.01);
  }

  /** The spread of this table is from memory: it stands in the test, not in the program. */
  @Test
  void g4_mem_aWomanOf33PinchesAsWithAKey() throws IOException {
    double z = Bell.deviations(10, 18.7, 3.0);
    assertEquals(-2.900, z, 0.001);
    assertEquals(0.19, Bell.percentBelow(z), 0.01);
    assertEquals("less than 1", Bell.words(Bell.percentBelow(z)));
    Comparison.Beside pinch =
        beside(
            "key-pinch-usa-1985",
            Strength.KEY_PINCH,
            Group.Sex.FEMALE,
            Group.Hand.RIGHT,
            33,
            pounds(10));
    assertEquals(10 / 18.7, pinch.share(), 1e-9);
    assertTrue(pinch.deviations().isEmpty() && pinch.percent().isEmpty());
  }

  @Test
  void g5_self_farOutsideASampleIsOnlyContext() throws IOException {
    Comparison.Beside grip =
        beside("grip-usa-1985", Strength.GRIP, Group.Sex.MALE, Group.Hand.RIGHT, 27, pounds(20));
    assertEquals(-4.383, grip.deviations().orElseThrow(), 0.001);
    assertEquals(0.166, grip.share(), 0.001);
    assertEquals("less than 1", grip.percent().orElseThrow());
  }

  /** Standard errors of the paper from memory; that they give its 310 men speaks for the table. */
  @Test
  void g6_mem_theSpreadsGiveTheNumberOfMenMeasured() throws IOException {
    double[] errors = {3.8, 4.4, 4.3, 4.8, 4.1, 4.3, 3.6, 5.8, 4.2, 4.0, 4.2, 4.2};
    List<MeanTable.Row> men =
        NormsReader.embedded().means().get(0).rows().stream()
            .filter(r -> r.group().sex() == Group.Sex.MALE && r.group().hand() == Group.Hand.RIGHT)
            .toList();
    assertEquals(errors.length, men.size());
    double people = 0;
    double sum = 0;
    for (int i = 0; i < errors.length; i++) {
      double count = Math.pow(men.get(i).deviation().orElseThrow() / errors[i], 2);
      people += count;
      sum += count * men.get(i).mean();
    }
    assertEquals(310.7, people, 0.05);
    assertEquals(104.39, sum / people, 0.01);
  }

  @Test
  void g7_pub_palmarPinchByDecades() throws IOException {
    double[] decades = {26.30, 25.45, 24.25, 23.75, 21.60};
    Norms norms = NormsReader.embedded();
    MeanTable palmar =
        norms.means().stream()
            .filter(t -> t.origin().id().equals("palmar-pinch-usa-1985"))
            .findFirst()
            .orElseThrow();
    for (int i = 0; i < decades.length; i++) {
      int age = 20 + 10 * i;
      double younger = palmar.row(Group.Sex.MALE, Group.Hand.RIGHT, age).orElseThrow().mean();
      double older = palmar.row(Group.Sex.MALE, Group.Hand.RIGHT, age + 5).orElseThrow().mean();
      assertEquals(decades[i], (younger + older) / 2, 0.001);
    }
  }

  @Test
  void g8_self_centilesOfMen() throws IOException {
    CentileTable table = NormsReader.embedded().centiles().get(0);
    CentileTable.Row row = table.row(Group.Sex.MALE, Group.Hand.LEFT, 32).orElseThrow();
    assertEquals(14.36, table.centile(row, 40).orElseThrow(), 0.01);
    assertEquals(72.0, table.centile(row, 55).orElseThrow(), 0.05);
    assertTrue(table.centile(row, 34.9).isEmpty() && table.centile(row, 65).isEmpty());
    assertEquals(5, table.centile(row, 35.0).orElseThrow(), 1e-9);
    assertEquals(95, table.centile(row, 64.9).orElseThrow(), 1e-9);
  }

  @Test
  void g9_self_centilesOfWomen() throws IOException {
    CentileTable table = NormsReader.embedded().centiles().get(0);
    CentileTable.Row row = table.row(Group.Sex.FEMALE, Group.Hand.RIGHT, 61).orElseThrow();
    assertEquals(26.67, table.centile(row, 22).orElseThrow(), 0.01);
    assertEquals(
        "less than 5",
        beside("grip-world-2025", Strength.GRIP, Group.Sex.FEMALE, Group.Hand.RIGHT, 61, 9)
            .percent()
            .orElseThrow());
    assertEquals(
        "more than 95",
        beside("grip-world-2025", Strength.GRIP, Group.Sex.FEMALE, Group.Hand.RIGHT, 61, 39)
            .percent()
            .orElseThrow());
  }

  @Test
  void g10_self_aSecondTableOfGrip() throws IOException {
    assertEquals(
        -2.882,
        beside("grip-germany-2016", Strength.GRIP, Group.Sex.MALE, Group.Hand.LEFT, 42, 27)
            .deviations()
            .orElseThrow(),
        0.001);
    assertEquals(
        -2.041,
        beside("grip-germany-2016", Strength.GRIP, Group.Sex.FEMALE, Group.Hand.LEFT, 72, 16)
            .deviations()
            .orElseThrow(),
        0.001);
  }

  @Test
  void nobodyYoungerIsCompared() throws IOException {
    Norms norms = NormsReader.embedded();
    for (int age = 0; age < 20; age++) {
      List<Comparison> all =
          norms.compare(Strength.GRIP, Group.Sex.MALE, Group.Hand.RIGHT, age, 20);
      assertEquals(List.of(new Comparison.NoNorm(Strength.GRIP)), all);
    }
    assertEquals(
        "For grip there is no norm that fits.",
        NormWords.sentence(new Comparison.NoNorm(Strength.GRIP)));
    assertEquals(3, norms.compare(Strength.GRIP, Group.Sex.MALE, Group.Hand.RIGHT, 40, 20).size());
  }

  @Test
  void percentagesKeepToWhatASampleCanTell() {
    assertEquals(50, Bell.percentBelow(0), 1e-12);
    assertEquals(97.5, Bell.percentBelow(1.959964), 1e-4);
    assertEquals("more than 99", Bell.words(Bell.percentBelow(2.5)));
    assertEquals(0, Bell.percentBelow(-50), 0);
    assertEquals(100, Bell.percentBelow(50), 0);
  }

  @Test
  void self_howFarAThumbMayReach() throws IOException {
    ThumbReach thumb = NormsReader.embedded().thumb();
    double[][] rows = {
      {165, 58.4, 44.9, 48.2, 99.8},
      {181.08, 64.1, 49.3, 52.8, 109.6},
      {193.28, 68.4, 52.6, 56.4, 116.9},
      {210, 74.3, 57.2, 61.3, 127.0}
    };
    for (double[] row : rows) {
      ThumbReach.Zone zone = thumb.of(row[0]);
      assertEquals(row[1], zone.farthest(), 0.06);
      assertEquals(row[2], zone.nearest(), 0.06);
      assertEquals(row[3], zone.sweep(), 0.06);
      assertEquals(row[4], zone.withShift(), 0.06);
    }
    assertTrue(thumb.status().contains("from memory"));
    assertTrue(
        NormWords.reach(thumb, 18.5).get(0).startsWith("For a hand of 18.5 cm, try buttons 5.0"));
    assertTrue(thumb.of(18, 40, 30).nearest() > thumb.of(18).nearest(), "less bend, less near");
  }

  @Test
  void wordsGiveContextAndNoVerdict() throws IOException {
    Comparison.Beside grip =
        beside("grip-germany-2016", Strength.GRIP, Group.Sex.FEMALE, Group.Hand.LEFT, 72, 13);
    assertEquals(
        "Your grip is about half of what is usual at this age (about 26 kg).",
        NormWords.sentence(grip));
    String figures = NormWords.figures(grip);
    assertTrue(figures.startsWith("50 % of 26.0 kg; z -2.7; less than 1 % of the sample below."));
    assertTrue(figures.contains("Steiber"));
    assertFalse(NormWords.CONTEXT.isBlank());
  }
}
