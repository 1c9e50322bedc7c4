package closehand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What stands on the set-up sheets of invented players, for a volunteer at a kitchen table. */
class SetUpSheetStoryTest {
  @TempDir private Path folder;

  private String sheet(String id) throws IOException {
    return flat(page(id, "setup"));
  }

  private String page(String id, String reader) throws IOException {
    Path file = folder.resolve(id + ".json");
    Files.writeString(file, facts(id));
    World world =
        World.run(
            "", "summary", "--answers", file.toString(), "--for", reader, "--date", "2026-11-25");
    assertEquals(0, world.code(), world.error());
    return world.output();
  }

  private static String flat(String page) {
    return page.replaceAll("\\s+", " ");
  }

  /** The answers of a gold case as a flat file. */
  static String facts(String id) throws IOException {
    JsonFactory json = new JsonFactory();
    StringWriter text = new StringWriter();
    try (InputStream in = SetUpSheetStoryTest.class.getResourceAsStream("/gold-cases.json");
        JsonParser parser = json.createParser(Objects.requireNonNull(in));
        JsonGenerator out = json.createGenerator(text)) {
      boolean found = false;
      while (parser.nextToken() != null) {
        boolean named = parser.currentToken() == JsonToken.FIELD_NAME;
        if (named && parser.currentName().equals("id")) {
          parser.nextToken();
          found = parser.getText().equals(id);
        } else if (named && found && parser.currentName().equals("facts")) {
          parser.nextToken();
          out.copyCurrentStructure(parser);
          out.flush();
          return text.toString();
        }
      }
    }
    throw new IllegalArgumentException("no case " + id);
  }

  @Test
  void whatTheGameNeedsAndThePlanCannotGiveIsSaidBeforeEverythingElse() throws IOException {
    String sheet = sheet("GC7");
    int missing = sheet.indexOf("NOT ENOUGH TO PLAY ALONE YET. The game also needs");
    int start = sheet.indexOf("START WITH.");
    assertTrue(missing > 0 && missing < start, sheet);
    assertTrue(sheet.contains("\"Accelerate\""), sheet);
    assertTrue(sheet.contains("shared control"), sheet);
  }

  @Test
  void aChairDrivenByTheHeadIsSwitchedOffAndTheVoiceAidWorksBeforeTheFirstUse() throws IOException {
    String sheet = sheet("GC7");
    assertTrue(sheet.contains("[ ] The drive of your chair is off"), sheet);
    assertTrue(sheet.contains("[ ] Your communication device works, in reach"), sheet);
    assertTrue(sheet.contains("needs a yes from the chair provider"), sheet);
    int left = sheet.indexOf("switch at the left side of the ] Steer: left");
    assertTrue(left > 0, "left lies left: " + sheet);
  }

  @Test
  void pressureReliefIsNotLeftToShortPauses() throws IOException {
    assertTrue(sheet("GC7").contains("These pauses do not take your weight off."));
  }

  @Test
  void nobodyLooksForAControlThatThePlanDoesNotUse() throws IOException {
    String sheet = sheet("GC2");
    assertFalse(sheet.contains("chin joystick"), sheet);
    assertFalse(sheet.contains("head switches"), sheet);
    assertTrue(sheet.contains("A cup or T-shaped handle suits this hold"), sheet);
    assertTrue(
        sheet.contains("[ ] No tight strap, clamp or pinch below your injury level."), sheet);
  }

  @Test
  void soreJointsGetALargeBallPauseAtOnceAndRoomToWritePhrases() throws IOException {
    String sheet = sheet("GC5");
    assertTrue(sheet.contains("choose a large ball and roll it with your palm"), sheet);
    assertTrue(sheet.contains("You said 5 minutes at most"), sheet);
    assertTrue(sheet.contains("On-screen panel, worked with the trackball"), sheet);
    assertFalse(sheet.contains("button 6, where there is one right hand press as it is"), sheet);
    for (String part : sheet.split("START WITH\\.")) {
      assertFalse(part.contains(".,"), part);
    }
    String start = sheet.substring(sheet.indexOf("START WITH."));
    assertTrue(start.substring(0, 250).contains("Pause"), start.substring(0, 250));
  }

  @Test
  void r120ThreeToSixActionsToBeginWithThenTwoAWeekAndOneChangeAtATime() throws IOException {
    String sheet = sheet("GC1");
    String[] games = sheet.split("START WITH\\. ");
    assertEquals(3, games.length, "two games");
    for (String game : List.of(games).subList(1, games.length)) {
      int names = game.substring(0, game.indexOf(". ")).split("; ").length;
      assertTrue(names >= 3 && names <= 6, names + " actions to begin with");
    }
    assertTrue(sheet.contains("Assign the keys and buttons of the first actions only."), sheet);
    assertTrue(sheet.contains("add about two actions a week"), sheet);
    assertTrue(sheet.contains("Change the settings of the game, one at a time."), sheet);
  }

  @Test
  void r120NobodyWhomOverdoingCostsDaysIsGivenATimetable() throws IOException {
    String sheet = sheet("GC6");
    assertFalse(sheet.contains("two actions a week"), sheet);
    assertTrue(sheet.contains("Add an action only when you feel ready"), sheet);
    assertTrue(sheet.contains("Start with less than 12 minutes."), "no first try beyond the limit");
    assertTrue(sheet.contains("Let a key count only after it is held"), "filters against slips");
  }

  @Test
  void thePlayersPageSaysInOneLineWhoHasMostToDo() throws IOException {
    String whole = page("GC4", "player");
    assertTrue(whole.lines().count() <= 80, "one sheet of paper");
    List<String> lines = whole.lines().filter(l -> l.startsWith("Most to do: ")).toList();
    assertEquals(1, lines.size(), whole);
    assertTrue(lines.get(0).matches("Most to do: your .*, .*: .*\\."), lines.get(0));
    assertFalse(whole.contains("Strain Index"), "no figure of a method without its words");
  }
}
