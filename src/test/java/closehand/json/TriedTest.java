package closehand.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.StopSign;
import closehand.measure.practice.PointingFindings;
import closehand.measure.practice.PointingTask;
import closehand.measure.practice.StopReason;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Everything that was tried, each as what it says it is; what cannot be read is told too. */
class TriedTest {
  private static final String TRIAL =
      "{\"format\": \"closehand-trial\", \"version\": 1, \"day\": \"2026-11-25\"%s}";
  private static final String PRACTICE =
      "{\"kind\": \"practice\", \"at\": \"2026-11-25T10:00:00Z\", \"how\": \"measured\", \"game\": 0,"
          + " \"week\": 1, \"timed\": true, \"tries\": []%s}";
  private static final String POINTING =
      "{\"kind\": \"pointing\", \"at\": \"2026-11-25T10:00:00Z\", \"how\": \"measured\", \"ways\": []%s}";

  private static JsonValue.Obj object(String json) {
    return (JsonValue.Obj)
        JsonReader.read("case", json.getBytes(StandardCharsets.UTF_8), new ArrayList<>())
            .orElseThrow();
  }

  private static Tried tried(String... objects) {
    List<JsonValue.Obj> all = new ArrayList<>();
    for (String one : objects) {
      all.add(object(one));
    }
    return Tried.of(all);
  }

  private static String stopped(String code) {
    return ", \"stopped\": \"" + code + "\"";
  }

  @ParameterizedTest
  @CsvSource({
    "signal,WISH", "wish,WISH", "pain,PAIN", "tingling,NUMB", "numb,NUMB", "giddy,FAINT",
    "faint,FAINT", "chest,CHEST", "spasm,SPASM", "skin,SKIN", "balance,BALANCE", "seat,BALANCE",
    "distress,DISTRESS", "alone,ALONE"
  })
  void everyNameThatOlderCasesHaveIsTheSameSignInEveryActivity(String name, StopSign sign) {
    Tried all =
        tried(
            String.format(Locale.ROOT, TRIAL, stopped(name)),
            String.format(Locale.ROOT, PRACTICE, stopped(name)),
            String.format(Locale.ROOT, POINTING, stopped(name)));
    assertEquals(Optional.of(sign), all.trials().get(0).stopped());
    assertEquals(Optional.of(StopReason.of(sign)), all.practice().get(0).stop());
    assertEquals(Optional.of(StopReason.of(sign)), all.pointing().get(0).stop());
    assertEquals(List.of(), all.unread());
  }

  @Test
  void whatIsNoSignIsReadWhereItCanBe() {
    Tried all = tried(String.format(Locale.ROOT, PRACTICE, stopped("time")));
    assertEquals(Optional.of(StopReason.TIME), all.practice().get(0).stop());
    assertEquals(
        List.of("2026-11-25"), tried(String.format(Locale.ROOT, TRIAL, stopped("time"))).unread());
  }

  @ParameterizedTest
  @ValueSource(strings = {TRIAL, PRACTICE, POINTING})
  void aStopOfANameNobodyKnowsIsNeverTakenForNoStop(String format) {
    Tried all = tried(String.format(Locale.ROOT, format, stopped("boredom")));
    assertEquals(List.of("2026-11-25"), all.unread());
    assertTrue(all.trials().isEmpty() && all.practice().isEmpty() && all.pointing().isEmpty());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{}",
        "{\"format\": \"closehand-trial\", \"version\": 1, \"day\": \"2026-02-30\"}",
        "{\"kind\": \"practice\", \"at\": \"yesterday\", \"game\": 0, \"week\": 1, \"tries\": []}",
        "{\"kind\": \"practice\", \"game\": 0, \"week\": 1, \"tries\": []}",
        "{\"kind\": \"something new\", \"stopped\": \"pain\"}"
      })
  void whatHasNoDayThatCanBeReadIsToldWithoutOne(String json) {
    assertEquals(List.of(""), tried(json).unread());
  }

  @Test
  void aDamagedRecordDoesNotHideTheGoodOnes() {
    String bad = String.format(Locale.ROOT, TRIAL, ", \"minutes\": \"many\"");
    Tried all =
        tried(
            bad,
            String.format(Locale.ROOT, TRIAL, stopped("pain")),
            String.format(Locale.ROOT, PRACTICE, ""));
    assertEquals(1, all.trials().size());
    assertEquals(1, all.practice().size());
    assertEquals(List.of("2026-11-25"), all.unread());
  }

  @Test
  void pointingThatWasStoppedIsReadAgainWithItsTimedWork() {
    PointingTask task = PointingTask.of(List.of("mouse"), 80, 720).pain(1).begun();
    task = task.selected(20, 1_000).selected(60, 4_500).stopped(StopReason.of(StopSign.SKIN));
    String written = PointingWriter.write("2026-11-25T10:00:00Z", task, PointingFindings.of(task));
    Tried all = tried(written);
    assertEquals(Optional.of(StopReason.of(StopSign.SKIN)), all.pointing().get(0).stop());
    assertEquals(4, all.pointing().get(0).timedSeconds());
  }
}
