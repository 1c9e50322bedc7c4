package closehand.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Problem;
import closehand.bank.StopSign;
import closehand.measure.trial.Felt;
import closehand.measure.trial.SetUp;
import closehand.measure.trial.Trial;
import closehand.measure.trial.Tries;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Trials in a case, written and read; every bad value is a problem with its place. */
class TrialFormatTest {
  private static JsonValue.Obj object(String json) {
    return (JsonValue.Obj)
        JsonReader.read("case", json.getBytes(StandardCharsets.UTF_8), new ArrayList<>())
            .orElseThrow();
  }

  private static OptionalInt maybe(Random random, int most) {
    return random.nextBoolean() ? OptionalInt.of(random.nextInt(most + 1)) : OptionalInt.empty();
  }

  private static Felt felt(Random random) {
    return new Felt(maybe(random, 10), maybe(random, 10), maybe(random, 10));
  }

  private static Trial random(Random random) {
    List<Tries> actions = new ArrayList<>();
    for (int i = 0; i < random.nextInt(6); i++) {
      actions.add(new Tries("action \"" + i + "\" \u00e9", maybe(random, 10)));
    }
    return new Trial(
        "2026-11-" + (10 + random.nextInt(20)),
        new SetUp(
            random.nextBoolean() ? "" : "pad",
            maybe(random, 600),
            random.nextBoolean() ? Optional.empty() : Optional.of(SetUp.Cost.MUCH),
            random.nextBoolean() ? Optional.empty() : Optional.of(SetUp.Weight.NONE)),
        new Trial.Scene(random.nextBoolean() ? "" : "race", random.nextBoolean() ? "" : "lap"),
        new Trial.Place(
            random.nextBoolean() ? Optional.empty() : Optional.of(Trial.Where.HOME),
            random.nextBoolean() ? Optional.empty() : Optional.of("2026-12-31")),
        actions,
        felt(random),
        maybe(random, 10),
        felt(random),
        maybe(random, 600),
        maybe(random, 10),
        random.nextBoolean() ? "" : "a note",
        random.nextBoolean()
            ? Optional.empty()
            : Optional.of(StopSign.values()[random.nextInt(StopSign.values().length)]),
        random.nextBoolean());
  }

  @Test
  void whatIsWrittenIsReadAgain() {
    Random random = new Random(12);
    for (int i = 0; i < 500; i++) {
      Trial trial = random(random);
      List<Problem> problems = new ArrayList<>();
      assertEquals(List.of(trial), TrialReader.read(List.of(TrialWriter.object(trial)), problems));
      assertEquals(List.of(), problems);
    }
  }

  @Test
  void everyBadValueIsAProblemWithItsPlace() {
    String[][] bad = {
      {"\"day\": \"2026-02-30\"", "\"day\" is no date"},
      {"\"place\": \"moon\"", "home or together"},
      {"\"backOn\": \"soon\"", "\"backOn\" is no date"},
      {"\"minutes\": -1", "must be from 0 to 600"},
      {"\"minutes\": 1.5", "must be a whole number"},
      {"\"satisfaction\": 11", "must be from 0 to 10"},
      {"\"before\": {\"pain\": \"bad\"}", "not text"},
      {"\"before\": {\"joy\": 3}", "means nothing here"},
      {"\"actions\": [{\"action\": \"jump\", \"workedOfTen\": 12}]", "must be from 0 to 10"},
      {"\"actions\": [{\"workedOfTen\": 2}]", "is missing here"},
      {"\"actions\": [{\"action\": \"a\"}, {\"action\": \"a\"}]", "twice"},
      {"\"setUp\": {\"cost\": \"gold\"}", "cost is not known"},
      {"\"setUp\": {\"weight\": \"gold\"}", "weight is not known"},
      {"\"stopped\": \"boredom\"", "no stop sign"},
      {"\"version\": 2", "newer version"},
      {"\"surprise\": 1", "means nothing here"}
    };
    for (String[] one : bad) {
      String name = one[0].substring(0, one[0].indexOf(':'));
      StringBuilder text = new StringBuilder("{\"format\": \"closehand-trial\"");
      for (String member : List.of("\"version\": 1", "\"day\": \"2026-11-25\"")) {
        text.append(member.startsWith(name) ? "" : ", " + member);
      }
      text.append(", ").append(one[0]).append('}');
      List<Problem> problems = new ArrayList<>();
      assertTrue(TrialReader.read(List.of(object(text.toString())), problems).isEmpty(), one[0]);
      assertTrue(problems.toString().contains(one[1]), one[0] + problems);
      assertTrue(problems.get(0).where().line() == 1 && problems.get(0).where().column() > 1);
    }
  }

  @Test
  void aBadTrialDoesNotHideTheGoodOnes() {
    List<Problem> problems = new ArrayList<>();
    JsonValue.Obj good = TrialWriter.object(Trial.begun("2026-11-25"));
    assertEquals(
        2, TrialReader.read(List.of(good, object("{\"what\": 1}"), good), problems).size());
    assertFalse(problems.isEmpty());
  }

  @Test
  void thingsOfAnotherFormatInTheRoomArePassedOver() {
    List<Problem> problems = new ArrayList<>();
    JsonValue.Obj trial = TrialWriter.object(Trial.begun("2026-11-25"));
    JsonValue.Obj other = object("{\"format\": \"something-else\"}");
    JsonValue.Obj practice = object("{\"kind\": \"practice\"}");
    List<JsonValue.Obj> room = List.of(other, trial, practice);
    assertEquals(1, TrialReader.read(room, problems).size());
    assertEquals(List.of(), problems);
    assertEquals(OptionalInt.of(1), TrialReader.lastPlace(room));
    assertEquals(OptionalInt.empty(), TrialReader.lastPlace(List.of(other)));
  }
}
