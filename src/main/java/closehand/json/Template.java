package closehand.json;

import closehand.bank.Hint;
import closehand.bank.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One side or digit a rule template is made out for: a rule that speaks of "your {x} hand" is
 * written once and read twice, one of "your {x} {d}" ten times.
 *
 * @param name the instance's name, such as {@code L} or {@code L.T}; empty for a plain rule
 * @param words placeholder and replacement, in pairs
 */
record Template(String name, List<String> words) {
  private static final Template PLAIN = new Template("", List.of());
  private static final List<String> KINDS = List.of("side", "digit");
  private static final List<String> SIDES = List.of("{X}", "{x}", "{Y}", "{y}");
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

  /** The instances of a rule or term; one plain instance when its {@code for} is not known. */
  static List<Template> of(JsonValue.Obj object, List<Problem> problems) {
    Optional<JsonValue> over = object.member("for");
    String used = used(object);
    if (over.isEmpty() && used.isEmpty()) {
      return List.of(PLAIN);
    }
    if (over.isEmpty()) {
      problems.add(
          Problem.error(
              object.where(),
              "placeholder",
              "There are placeholders in braces, but no \"for\".",
              "Add \"for\": \"" + used + "\"."));
      return instances(used);
    }
    String word = over.get() instanceof JsonValue.Str text ? text.value() : "";
    if (!KINDS.contains(word)) {
      problems.add(
          Problem.error(
              over.get().where(),
              "unknown-value",
              "\"for\" is \"side\" or \"digit\".",
              Hint.didYouMean(word, KINDS)));
      return instances(Hint.nearest(word, KINDS).orElse("digit"));
    }
    if (word.equals("side") && used.equals("digit")) {
      problems.add(
          Problem.error(
              over.get().where(),
              "placeholder",
              "{D} and {d} are only filled in for a digit.",
              "Write \"for\": \"digit\"."));
      return instances("digit");
    }
    return instances(word);
  }

  /** What the placeholders in the texts and names call for; empty if there are none. */
  private static String used(JsonValue value) {
    if (value instanceof JsonValue.Str text) {
      return used(text.value());
    }
    String used = "";
    if (value instanceof JsonValue.Arr array) {
      for (JsonValue item : array.items()) {
        used = wider(used, used(item));
      }
    } else if (value instanceof JsonValue.Obj object) {
      for (JsonValue.Member member : object.members()) {
        used = wider(used, wider(used(member.name()), used(member.value())));
      }
    }
    return used;
  }

  private static String used(String text) {
    if (text.indexOf('{') < 0) {
      return "";
    }
    if (text.contains("{D}") || text.contains("{d}")) {
      return "digit";
    }
    boolean side = SIDES.stream().anyMatch(text::contains);
    return side ? "side" : "";
  }

  private static String wider(String one, String other) {
    return one.equals("digit") || other.isEmpty() ? one : other;
  }

  private static List<Template> instances(String over) {
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
      default -> throw new IllegalArgumentException("no such template");
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
    if (words.isEmpty()) {
      return object;
    }
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
