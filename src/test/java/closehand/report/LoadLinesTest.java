package closehand.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Caution;
import closehand.strain.Body;
import closehand.strain.DayLoad;
import closehand.strain.Exertion;
import closehand.strain.LoadWords;
import closehand.strain.Method;
import closehand.strain.PlanLoad;
import closehand.strain.PlayTime;
import closehand.strain.Use;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The load of an invented plan as people read it. */
class LoadLinesTest {
  private static Use use(
      String name, String part, double effort, double perMinute, double seconds, String next) {
    return new Use(
        name,
        name,
        seconds < 0.5 ? Use.Kind.TAP : Use.Kind.HOLD,
        new Exertion(part, effort, perMinute, seconds),
        next.isEmpty() ? List.of() : List.of(new Use.Elsewhere(next, 210)));
  }

  private static PlanLoad load() {
    return PlanLoad.of(
        "An invented game",
        List.of(
            use("Fire", "R.T", 0.2, 40, 0.2, "the wheel, up"),
            use("Jump", "R.T", 0.2, 6, 0.2, ""),
            use("Walk", "R.I", 0.2, 2, 10, ""),
            use("Talk", "voice", 0.1, 3, 2, "")),
        Body.UNKNOWN,
        new PlayTime(1, 3));
  }

  private static Optional<Caution> none(String code) {
    return Optional.empty();
  }

  private static String flat(String text) {
    return text.replaceAll("\\s+", " ");
  }

  @Test
  void everyPartHasABarANumberAndWords() {
    String text = LoadLines.player(load(), LoadLinesTest::none, Glyphs.ASCII);
    assertTrue(
        text.contains("Right thumb         [########--] 46 a minute, held 0 %; amber: busy"), text);
    assertTrue(
        text.contains("Voice               [##--------] 3 a minute, held 10 %; green: has room"),
        text);
    for (String line : text.split("\n")) {
      assertTrue(line.length() <= Wrap.WIDTH, line);
    }
  }

  @Test
  void theHeaviestPartIsNamedWithWhatLightensItMost() {
    String text = flat(LoadLines.player(load(), LoadLinesTest::none, Glyphs.ASCII));
    assertTrue(text.contains("Most to do has your right thumb."), text);
    assertTrue(text.contains("What helps: share these presses with another part"), text);
    assertTrue(
        text.contains(
            "another place for \"Fire\", which is 87 % of it. Its next place is the wheel, up; there"
                + " it costs 210 points more."),
        text);
  }

  @Test
  void whatTheFiguresAreNotIsAlwaysSaid() {
    for (String text :
        List.of(
            LoadLines.player(load(), LoadLinesTest::none, Glyphs.ASCII),
            LoadLines.clinician(load(), LoadLinesTest::none, Glyphs.ASCII))) {
      assertTrue(flat(text).contains(flat(LoadWords.MADE_FOR_WORK)), text);
      assertTrue(flat(text).contains(flat(LoadWords.YOUR_OWN_SIGNS)), text);
    }
  }

  @Test
  void theClinicianSeesMethodsSourcesAndWhatIsOutside() {
    String text = flat(LoadLines.clinician(load(), LoadLinesTest::none, Glyphs.ASCII));
    assertTrue(text.contains(Method.COMPOSITE_STRAIN_INDEX.source()), text);
    assertTrue(
        text.contains("outside this method (the method speaks of 4 to 8 hours a day only)"), text);
    assertTrue(text.contains("Effort has not been rated yet."), text);
    assertTrue(text.contains("endurance of holding still 4 % of a careful limit"), text);
    assertTrue(text.contains("outside this method (no published method covers this part)"), text);
  }

  @Test
  void aDayNamesEachHand() {
    String text = flat(LoadLines.day(DayLoad.of(List.of(load(), load())), Glyphs.ASCII));
    assertTrue(text.contains("Your right hand: "), text);
    assertEquals(-1, text.indexOf("left hand"));
  }
}
