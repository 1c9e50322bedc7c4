package closehand.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Bank;
import closehand.strain.Accepted;
import closehand.strain.Body;
import closehand.strain.DayLoad;
import closehand.strain.Exertion;
import closehand.strain.LoadWords;
import closehand.strain.Method;
import closehand.strain.PlanLoad;
import closehand.strain.PlayTime;
import closehand.strain.Use;
import java.util.ArrayList;
import java.util.List;
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

  private static String flat(String text) {
    return text.replaceAll("\\s+", " ");
  }

  private static final Bank BANK = SmallBank.bank();

  private static String player(PlanLoad load) {
    List<Piece> pieces = new ArrayList<>(LoadLines.of(BANK, load));
    pieces.addAll(LoadLines.standing(List.of(load)));
    return Sheet.text(pieces, Glyphs.ASCII);
  }

  private static String details(PlanLoad... loads) {
    return Sheet.text(LoadDetails.of(BANK, List.of(), DayLoad.of(List.of(loads))), Glyphs.ASCII);
  }

  @Test
  void everyPartHasABarANumberAndWords() {
    String text = player(load());
    assertTrue(
        text.contains("Right thumb         [#########-] 46 a minute, held 0 %; amber: busy"), text);
    assertTrue(
        text.contains("Voice               [##--------] 3 a minute, held 10 %; green: has room"),
        text);
    for (String line : text.split("\n", -1)) {
      assertTrue(line.length() <= Wrap.WIDTH, line);
    }
  }

  @Test
  void theHeaviestPartIsNamedWithWhatLightensItMost() {
    String text = flat(player(load()));
    assertTrue(text.contains("Your right thumb has the most to do."), text);
    assertTrue(text.contains("What helps: share these presses with another part"), text);
    assertTrue(
        text.contains(
            "another place for \"Fire\", which is 86 % of it. Its next place is the wheel, up; there"
                + " it costs 210 points more."),
        text);
  }

  @Test
  void whatTheFiguresAreNotIsAlwaysSaid() {
    for (String text : List.of(player(load()), details(load()))) {
      assertTrue(flat(text).contains(LoadWords.MADE_FOR_WORK), text);
      assertTrue(flat(text).contains(LoadWords.YOUR_OWN_SIGNS), text);
      assertTrue(flat(text).contains("Effort has not been rated for every part yet."), text);
    }
  }

  @Test
  void theClinicianSeesMethodsSourcesAndWhatIsOutside() {
    String text = flat(details(load()));
    assertTrue(text.contains(Method.COMPOSITE_STRAIN_INDEX.source()), text);
    assertTrue(
        text.contains("outside this method (the method speaks of 4 to 8 hours a day only)"), text);
    assertTrue(
        text.contains("Right index finger: Endurance of holding still: 4 % of a careful limit"),
        text);
    assertTrue(text.contains("outside this method (no published method covers this part)"), text);
    assertTrue(text.contains("For 1 hour a day on 3 days a week."), text);
  }

  /** Hard presses are no room, however few they are, and whoever is busier beside them. */
  @Test
  void hardPressesAreNamedAndNeverSaidToHaveRoom() {
    PlanLoad hard =
        PlanLoad.of(
            "An invented game",
            List.of(
                use("Throw", "L.T", 0.95, 12, 0.2, ""),
                use("Fire", "R.I", 0.1, 25, 0.2, ""),
                use("Map", "R.L", 0.1, 0.3, 0.2, "")),
            Body.UNKNOWN,
            new PlayTime(1, 3));
    String text = flat(player(hard));
    assertTrue(
        text.contains(
            "Left thumb [##########] 12 a minute, held 0 %; green by presses and time, but in the"
                + " upper band of its strain index"),
        text);
    assertTrue(
        text.contains("Your left thumb has the most to do. What helps: a lighter button"), text);
    assertTrue(text.contains("less than once a minute, held 0 %; green: has room"), text);
    assertFalse(text.contains(" 0 a minute"), text);
  }

  /** A finger or an arm used as one is not the hand that it belongs to. */
  @Test
  void aHandIsToldApartFromTheHandAsAWhole() {
    PlanLoad both =
        PlanLoad.of(
            "An invented game",
            List.of(use("Fire", "L.hand", 0.2, 20, 0.2, ""), use("Jump", "L.T", 0.2, 20, 0.2, "")),
            Body.UNKNOWN,
            new PlayTime(1, 3));
    List<String> rows =
        java.util.Arrays.stream(details(both).split("\n", -1))
            .filter(l -> l.startsWith("- Left hand"))
            .map(l -> l.substring(0, l.lastIndexOf(": ")))
            .toList();
    assertEquals(rows.size(), java.util.Set.copyOf(rows).size(), rows.toString());
  }

  @Test
  void severalGamesAreAddedUpForEachHand() {
    String text = flat(details(load(), load()));
    assertTrue(text.contains("ALL GAMES OF A DAY TOGETHER"), text);
    assertTrue(text.contains("Right hand as a whole: Cumulative Strain Index: 10.9"), text);
    assertFalse(text.contains("Left hand as a whole: Cumulative"), text);
    assertTrue(
        flat(details(load())).contains("Cumulative Strain Index"), "one game is its own day");
  }

  @Test
  void aRedPartWaitsForAClinicianWhoIsThenNamed() {
    PlanLoad red =
        PlanLoad.of(
            "An invented game",
            List.of(use("Fire", "R.T", 0.2, 80, 0.2, "")),
            Body.UNKNOWN,
            new PlayTime(1, 3));
    String waits = flat(Sheet.text(LoadLines.blocked(red, List.of()), Glyphs.ASCII));
    assertTrue(waits.startsWith("This plan waits: it asks too much of your right thumb."), waits);
    Accepted accepted = new Accepted("R.T", "A. Clinician", "short bursts only");
    assertEquals(List.of(), LoadLines.blocked(red, List.of(accepted)));
    String named = flat(Sheet.text(LoadLines.accepted(red, List.of(accepted)), Glyphs.ASCII));
    assertTrue(
        named.contains("above the red line; accepted by A. Clinician: \"short bursts only\""),
        named);
    assertEquals(List.of(), LoadLines.accepted(load(), List.of(accepted)), "nothing is red there");
  }
}
