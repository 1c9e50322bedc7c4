package closehand.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class LaidTest {
  @Test
  void aWideParagraphComesBackWholeOnANarrowScreen() {
    String words =
        "Change position slowly and rest whenever you like, for this is no race at all "
            .repeat(3)
            .strip();
    List<String> wide = Wrap.lines("- ", "  ", words);
    assertEquals(Wrap.lines(40, "- ", "  ", words), narrow(wide));
  }

  @Test
  void everyItemBeginsALineOfItsOwnHoweverFullTheOneBefore() {
    String full = "1. " + "x".repeat(69);
    List<String> page =
        List.of(full.replace("xxxxxx", "xxxxx "), "2. Second.", "", "HEADING", "Text.");
    assertEquals(
        List.of("2. Second.", "", "HEADING", "Text."),
        narrow(page).subList(narrow(page).size() - 4, narrow(page).size()));
  }

  @Test
  void shortLinesStayAsTheyAre() {
    List<String> page = List.of("Whom to ask", "  a nurse", "", "  a clinician");
    assertEquals(page, narrow(page));
  }

  @Test
  void aDeepIndentTakesAQuarterOfANarrowScreenAtMost() {
    assertEquals(
        List.of("     deep down"), Laid.of(List.of(" ".repeat(30) + "deep down")).get(0).lines(20));
  }

  private static List<String> narrow(List<String> page) {
    return Laid.of(page).stream().flatMap(paragraph -> paragraph.lines(40).stream()).toList();
  }
}
