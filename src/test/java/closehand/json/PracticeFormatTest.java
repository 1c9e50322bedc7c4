package closehand.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Problem;
import closehand.bank.StopSign;
import closehand.measure.practice.PracticeRecord;
import closehand.measure.practice.Signal;
import closehand.measure.practice.StopReason;
import closehand.measure.practice.Try;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Practice runs as they stand in a case. */
class PracticeFormatTest {
  private static final PracticeRecord RECORD =
      new PracticeRecord(
          "2026-11-25T10:00:00Z",
          1,
          3,
          true,
          Map.of("SW_FOOT/Rtoe", new Signal(Signal.Kind.UNKNOWN, "Escape [ 3 4 ~")),
          List.of(
              new Try(
                  1,
                  "RTS08",
                  "SW_FOOT/Rtoe",
                  true,
                  OptionalLong.of(612),
                  Optional.empty(),
                  false,
                  new Try.Marks(true, false, true)),
              new Try(
                  2,
                  "RTS09",
                  "SW_FOOT/Rtoe",
                  false,
                  OptionalLong.empty(),
                  Optional.of("SW_FOOT/Rheel"),
                  true,
                  Try.Marks.NONE)),
          Optional.of(StopReason.of(StopSign.SPASM)),
          Map.of("RTS08", "SW_FOOT/Rheel"));

  private static JsonValue.Obj object(String json) {
    return (JsonValue.Obj)
        JsonReader.read("trial", json.getBytes(StandardCharsets.UTF_8), new ArrayList<>())
            .orElseThrow();
  }

  @Test
  void whatIsWrittenIsReadAgain() {
    List<Problem> problems = new ArrayList<>();
    assertEquals(
        List.of(RECORD),
        PracticeReader.read(List.of(object(PracticeWriter.write(RECORD))), problems));
    assertEquals(List.of(), problems);
  }

  @Test
  void otherThingsThatWereTriedArePassedOver() {
    List<Problem> problems = new ArrayList<>();
    List<JsonValue.Obj> trials = List.of(object("{\"kind\": \"pointing\"}"), object("{\"a\": 1}"));
    assertEquals(List.of(), PracticeReader.read(trials, problems));
    assertEquals(List.of(), problems);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{\"kind\": \"practice\"}",
        "{\"kind\": \"practice\", \"at\": \"2026-11-25\", \"game\": -1, \"week\": 1, \"tries\": []}",
        "{\"kind\": \"practice\", \"at\": \"2026-11-25\", \"game\": 0, \"week\": 1, \"tries\": [1]}",
        "{\"kind\": \"practice\", \"at\": \"x\", \"game\": 0, \"week\": 1, \"signals\": {\"a\": 7},"
            + " \"tries\": []}",
        "{\"kind\": \"practice\", \"at\": \"x\", \"game\": 0, \"week\": 1, \"tries\":"
            + " [{\"round\": 1, \"action\": \"a\", \"input\": \"b\", \"hit\": true, \"millis\": -5}]}"
      })
  void oneThatWasEditedIntoNonsenseIsToldAndLeftOut(String json) {
    List<Problem> problems = new ArrayList<>();
    assertEquals(List.of(), PracticeReader.read(List.of(object(json)), problems));
    assertTrue(Problem.anyError(problems));
  }
}
