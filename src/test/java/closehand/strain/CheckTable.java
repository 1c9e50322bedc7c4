package closehand.strain;

import closehand.json.JsonReader;
import closehand.json.JsonValue;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Check values kept beside the tests. */
final class CheckTable {
  private CheckTable() {}

  /** One row by its column names. */
  record Row(Map<String, JsonValue> cells) {
    double number(String column) {
      return cells.get(column) instanceof JsonValue.Num number ? number.value() : Double.NaN;
    }

    String text(String column) {
      return cells.get(column) instanceof JsonValue.Str text ? text.value() : "";
    }

    boolean has(String column) {
      return cells.containsKey(column);
    }

    /** The row as a test is called, its basis first. */
    String name(String table) {
      StringBuilder name = new StringBuilder(text("basis")).append(": ").append(table);
      cells.forEach(
          (column, cell) -> {
            if (cell instanceof JsonValue.Num number) {
              name.append(' ').append(column).append('=').append(number.text());
            } else if (cell instanceof JsonValue.Str text && !column.equals("basis")) {
              name.append(' ').append(text.value());
            }
          });
      return name.toString();
    }
  }

  static JsonValue.Obj document() throws IOException {
    try (InputStream in = CheckTable.class.getResourceAsStream("/strain/strain-checks.json")) {
      List<closehand.bank.Problem> problems = new ArrayList<>();
      JsonValue value =
          JsonReader.read("strain-checks.json", in.readAllBytes(), problems).orElseThrow();
      return (JsonValue.Obj) value;
    }
  }

  /** The rows of a table with columns. */
  static List<Row> rows(String table) throws IOException {
    JsonValue.Obj object = (JsonValue.Obj) document().member(table).orElseThrow();
    List<JsonValue> columns = items(object.member("cols").orElseThrow());
    List<Row> rows = new ArrayList<>();
    for (JsonValue row : items(object.member("rows").orElseThrow())) {
      Map<String, JsonValue> cells = new TreeMap<>();
      List<JsonValue> values = items(row);
      for (int i = 0; i < columns.size(); i++) {
        cells.put(((JsonValue.Str) columns.get(i)).value(), values.get(i));
      }
      rows.add(new Row(cells));
    }
    return rows;
  }

  static List<JsonValue> items(JsonValue list) {
    return ((JsonValue.Arr) list).items();
  }

  static double number(JsonValue value) {
    return ((JsonValue.Num) value).value();
  }

  static double number(JsonValue object, String member) {
    return number(((JsonValue.Obj) object).member(member).orElseThrow());
  }

  static String text(JsonValue object, String member) {
    return ((JsonValue.Str) ((JsonValue.Obj) object).member(member).orElseThrow()).value();
  }

  /** Presses written as effort, presses a minute, seconds, wrist degrees. */
  static List<Exertion> presses(JsonValue list) {
    List<Exertion> presses = new ArrayList<>();
    for (JsonValue one : items(list)) {
      List<JsonValue> values = items(one);
      presses.add(
          new Exertion(
              "R.I",
              number(values.get(0)),
              number(values.get(1)),
              number(values.get(2)),
              number(values.get(3))));
    }
    return presses;
  }
}
