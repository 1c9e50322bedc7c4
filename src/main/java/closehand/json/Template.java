package closehand.json;

import java.util.ArrayList;
import java.util.List;

/**
 * One side or digit a rule template is made out for: a rule that speaks of "your {x} hand" is
 * written once and read twice, one of "your {x} {d}" ten times.
 *
 * @param name the instance's name, such as {@code L} or {@code L.T}; empty for a plain rule
 * @param words placeholder and replacement, in pairs
 */
record Template(String name, List<String> words) {
  private static final Template PLAIN = new Template("", List.of());
  private static final List<String> DIGITS =
      List.of(
          "T",
          "thumb",
          "I",
          "index finger",
          "M",
          "middle finger",
          "R",
          "ring finger",
          "L",
          "little finger");

  /**
   * The instances for a rule's {@code for}; one plain instance when there is none or it is unknown.
   */
  static List<Template> instances(String over) {
    return switch (over) {
      case "side" -> List.of(side("L", "left", "R", "right"), side("R", "right", "L", "left"));
      case "digit" -> {
        List<Template> all = new ArrayList<>();
        for (Template side : instances("side")) {
          for (int i = 0; i < DIGITS.size(); i += 2) {
            all.add(digit(side, DIGITS.get(i), DIGITS.get(i + 1)));
          }
        }
        yield all;
      }
      default -> List.of(PLAIN);
    };
  }

  private static Template side(String code, String word, String otherCode, String otherWord) {
    return new Template(
        code, List.of("{X}", code, "{x}", word, "{Y}", otherCode, "{y}", otherWord));
  }

  private static Template digit(Template side, String code, String word) {
    List<String> words = new ArrayList<>(side.words);
    words.addAll(List.of("{D}", code, "{d}", word));
    return new Template(side.name + "." + code, words);
  }

  /** The value with every placeholder in its texts and names filled in. */
  JsonValue fill(JsonValue value) {
    if (words.isEmpty()) {
      return value;
    }
    if (value instanceof JsonValue.Str text) {
      return new JsonValue.Str(fill(text.value()), text.where());
    }
    if (value instanceof JsonValue.Arr array) {
      return new JsonValue.Arr(array.items().stream().map(this::fill).toList(), array.where());
    }
    if (value instanceof JsonValue.Obj object) {
      return fill(object);
    }
    return value;
  }

  /** The object with every placeholder in its texts and names filled in. */
  JsonValue.Obj fill(JsonValue.Obj object) {
    List<JsonValue.Member> members = new ArrayList<>();
    for (JsonValue.Member member : object.members()) {
      members.add(
          new JsonValue.Member(fill(member.name()), member.nameWhere(), fill(member.value())));
    }
    return new JsonValue.Obj(members, object.where());
  }

  private String fill(String text) {
    if (text.indexOf('{') < 0) {
      return text;
    }
    String filled = text;
    for (int i = 0; i < words.size(); i += 2) {
      filled = filled.replace(words.get(i), words.get(i + 1));
    }
    return filled;
  }
}
