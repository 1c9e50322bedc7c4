package closehand.json;

import closehand.bank.Bank;
import closehand.bank.FlatValue;
import closehand.bank.Problem;
import closehand.bank.Where;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Reads the flat form of answers: one object, fact id to value, nested objects joined with dots,
 * games as a list. Whether a fact exists and a value fits it is for {@link
 * closehand.interview.FlatAnswers} to say.
 */
public final class FlatReader {
  private static final String ABSENT = "absent";

  private final List<Problem> problems;
  private final Map<String, FlatValue> values = new LinkedHashMap<>();

  private FlatReader(List<Problem> problems) {
    this.problems = problems;
  }

  /**
   * The values by fact id, in the order written; {@code games[0]} becomes {@code games.1.*} and so
   * on.
   */
  public static Map<String, FlatValue> read(JsonValue value, List<Problem> problems) {
    FlatReader reader = new FlatReader(problems);
    if (value instanceof JsonValue.Obj object) {
      reader.members("", object);
    } else {
      ObjectReading.wrongType(value, "an object with one member a fact", problems);
    }
    return reader.values;
  }

  private void members(String prefix, JsonValue.Obj object) {
    if (object.members().isEmpty() && !prefix.isEmpty()) {
      problems.add(
          Problem.error(
              object.where(),
              "missing",
              "This object is empty.",
              "Answer something in it, or leave it out."));
    }
    for (JsonValue.Member member : object.members()) {
      member(prefix + member.name(), member);
    }
  }

  private void member(String fact, JsonValue.Member member) {
    JsonValue value = member.value();
    if (fact.isBlank() || fact.endsWith(".")) {
      problems.add(
          Problem.error(
              member.nameWhere(), "missing", "This name is empty.", "Write which fact it is."));
    } else if (fact.equals("games") && value instanceof JsonValue.Arr games) {
      games(games);
    } else if (fact.equals("games") && !(value instanceof JsonValue.Obj)) {
      ObjectReading.wrongType(value, "a list with an object for each game", problems);
    } else if (value instanceof JsonValue.Obj object && !isAbsent(object)) {
      members(fact + ".", object);
    } else {
      put(fact, member.nameWhere(), value);
    }
  }

  private void put(String fact, Where where, JsonValue value) {
    FlatValue flat = flat(value);
    if (flat != null) {
      add(fact, where, flat);
    }
  }

  private void add(String fact, Where where, FlatValue flat) {
    if (values.putIfAbsent(fact, flat) != null) {
      problems.add(
          Problem.error(
              where, "duplicate-key", "\"" + fact + "\" is answered twice here.", "Keep one."));
    }
  }

  private void games(JsonValue.Arr games) {
    int slot = 0;
    for (JsonValue game : games.items()) {
      slot++;
      if (slot > Bank.GAME_SLOTS) {
        problems.add(
            Problem.error(
                game.where(),
                "out-of-range",
                "At most " + Bank.GAME_SLOTS + " games fit in one interview.",
                "Keep the ones that matter most."));
        return;
      }
      if (game instanceof JsonValue.Obj object) {
        members("games." + slot + ".", object);
      } else {
        ObjectReading.wrongType(game, "an object that describes one game", problems);
      }
    }
    if (slot > 0 && slot < Bank.GAME_SLOTS) {
      add(
          "games." + (slot + 1) + ".genre",
          games.where(),
          new FlatValue.Text("none", games.where()));
    }
  }

  private static boolean isAbsent(JsonValue.Obj object) {
    return object.member(ABSENT).isPresent();
  }

  private @org.jspecify.annotations.Nullable FlatValue flat(JsonValue value) {
    if (value instanceof JsonValue.Bool flag) {
      return new FlatValue.Flag(flag.value(), flag.where());
    }
    if (value instanceof JsonValue.Num number) {
      return new FlatValue.Number(number.value(), number.where());
    }
    if (value instanceof JsonValue.Str text) {
      return new FlatValue.Text(text.value(), text.where());
    }
    if (value instanceof JsonValue.Arr list) {
      return new FlatValue.Texts(words(list), list.where());
    }
    if (value instanceof JsonValue.Obj object) {
      return absent(new ObjectReading(object, problems));
    }
    ObjectReading.wrongType(
        value, "a value, a list of words or {\"absent\": \"unknown\"}", problems);
    return null;
  }

  private FlatValue.@org.jspecify.annotations.Nullable Absent absent(ObjectReading in) {
    String reason = in.text(ABSENT);
    in.finish();
    return reason.isBlank() ? null : new FlatValue.Absent(reason, in.where(ABSENT));
  }

  private List<String> words(JsonValue.Arr list) {
    List<String> words = new ArrayList<>();
    for (JsonValue item : list.items()) {
      if (item instanceof JsonValue.Str text) {
        words.add(text.value());
      } else {
        ObjectReading.wrongType(item, "text", problems);
      }
    }
    return words;
  }
}
