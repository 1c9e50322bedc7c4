package closehand.json;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Predicate;

/**
 * Every kind of value in a file, and the file with one value of that kind made another. Two values
 * are of one kind when they stand in the same place but for positions in lists and names of things.
 */
final class OneChange {
  private static final Set<String> NAMED =
      Set.of("support", "effectorTimes", "costPoints", "owned", "places", "given");
  private static final Set<String> NESTED = Set.of("all", "any", "not", "of", "item");
  private static final int INSTANCES = 3;
  private static final int OTHERS = 3;
  private static final int COMPARISON = 3;

  private final JsonValue document;
  private final Map<String, List<JsonValue>> byKind = new LinkedHashMap<>();

  OneChange(JsonValue document) {
    this.document = document;
    gather(document, "");
  }

  /** Every kind in the file. */
  Set<String> kinds() {
    return Collections.unmodifiableSet(byKind.keySet());
  }

  private void gather(JsonValue value, String kind) {
    if (value instanceof JsonValue.Obj object) {
      boolean named = NAMED.stream().anyMatch(n -> kind.endsWith("/" + n));
      for (JsonValue.Member member : object.members()) {
        String name = named ? "*" : member.name();
        gather(member.value(), nested(kind, name) ? kind : kind + "/" + name);
      }
      return;
    }
    byKind.computeIfAbsent(kind, k -> new ArrayList<>()).add(value);
    if (value instanceof JsonValue.Arr array) {
      for (int i = 0; i < array.items().size(); i++) {
        gather(array.items().get(i), kind + place(array, i));
      }
    }
  }

  private static boolean nested(String kind, String name) {
    return NESTED.contains(name) && kind.contains("/" + name + "[");
  }

  /** The parts of a comparison, items by their type and extensions by their name are told apart. */
  private static String place(JsonValue.Arr array, int i) {
    JsonValue item = array.items().get(i);
    if (item instanceof JsonValue.Obj object) {
      return "["
          + object.member("type").map(OneChange::tail).orElse("")
          + object.member("url").map(OneChange::tail).orElse("")
          + "]";
    }
    boolean comparison =
        array.items().size() == COMPARISON
            && array.items().get(0) instanceof JsonValue.Str fact
            && array.items().get(1) instanceof JsonValue.Str
            && fact.value().contains(".");
    return comparison ? "[" + i + "]" : "[]";
  }

  private static String tail(JsonValue value) {
    return value instanceof JsonValue.Str text
        ? text.value().substring(text.value().lastIndexOf('/') + 1)
        : "";
  }

  /**
   * The first lawful file in which one value of this kind is another; an empty one where none of
   * those tried is.
   */
  byte[] firstLawful(String kind, Predicate<byte[]> lawful) {
    List<JsonValue> all = byKind.getOrDefault(kind, List.of());
    byte[] same = with(document, document);
    for (JsonValue one : all.subList(0, Math.min(INSTANCES, all.size()))) {
      for (JsonValue other : others(one, all)) {
        byte[] bytes = with(one, other);
        if (!Arrays.equals(bytes, same) && lawful.test(bytes)) {
          return bytes;
        }
      }
    }
    return new byte[0];
  }

  private byte[] with(JsonValue one, JsonValue other) {
    StringBuilder text = new StringBuilder();
    write(document, one, other, text);
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }

  /** Other values in the place of one. */
  private static List<JsonValue> others(JsonValue one, List<JsonValue> all) {
    List<JsonValue> others = new ArrayList<>();
    if (one instanceof JsonValue.Bool flag) {
      others.add(new JsonValue.Bool(!flag.value(), one.where()));
    } else if (one instanceof JsonValue.Num number) {
      for (double other : new double[] {number.value() + 1, number.value() - 1}) {
        others.add(number(other, one));
      }
      others.add(number(number.value() / 2, one));
    } else if (one instanceof JsonValue.Arr array && array.items().size() > 1) {
      List<JsonValue> swapped = new ArrayList<>(array.items());
      Collections.swap(swapped, 0, 1);
      others.add(new JsonValue.Arr(swapped, one.where()));
      others.add(new JsonValue.Arr(array.items().subList(1, array.items().size()), one.where()));
    } else if (one instanceof JsonValue.Arr array) {
      others.add(new JsonValue.Arr(List.of(), array.where()));
    } else if (one instanceof JsonValue.Str text) {
      if (text.value().contains(" ")) {
        others.add(new JsonValue.Str(text.value() + " Anew.", one.where()));
      }
      Set<String> seen = new LinkedHashSet<>();
      all.forEach(o -> seen.add(o instanceof JsonValue.Str word ? word.value() : text.value()));
      seen.remove(text.value());
      seen.stream().limit(OTHERS).forEach(w -> others.add(new JsonValue.Str(w, one.where())));
      if (!text.value().contains(" ")) {
        others.add(new JsonValue.Str(text.value() + "Anew", one.where()));
      }
    }
    return others;
  }

  private static JsonValue number(double value, JsonValue instead) {
    String text = value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
    return new JsonValue.Num(value, text, instead.where());
  }

  /** Writes a value with another in the place of one part of it. */
  private static void write(JsonValue value, JsonValue one, JsonValue other, StringBuilder text) {
    JsonValue written = value == one ? other : value;
    write(written, text, inner -> write(inner, one, other, text));
  }

  private static void write(JsonValue value, StringBuilder text, Consumer<JsonValue> inner) {
    String comma = "";
    if (value instanceof JsonValue.Obj object) {
      text.append('{');
      for (JsonValue.Member member : object.members()) {
        quoted(member.name(), text.append(comma));
        text.append(':');
        inner.accept(member.value());
        comma = ",";
      }
      text.append('}');
    } else if (value instanceof JsonValue.Arr array) {
      text.append('[');
      for (JsonValue item : array.items()) {
        text.append(comma);
        inner.accept(item);
        comma = ",";
      }
      text.append(']');
    } else if (value instanceof JsonValue.Str word) {
      quoted(word.value(), text);
    } else if (value instanceof JsonValue.Num number) {
      text.append(number.text());
    } else {
      text.append(value instanceof JsonValue.Bool flag ? String.valueOf(flag.value()) : "null");
    }
  }

  private static void quoted(String words, StringBuilder text) {
    text.append('"');
    for (char c : words.toCharArray()) {
      if (c == '"' || c == '\\') {
        text.append('\\').append(c);
      } else if (c < ' ') {
        text.append(String.format(java.util.Locale.ROOT, "\\u%04x", (int) c));
      } else {
        text.append(c);
      }
    }
    text.append('"');
  }
}
