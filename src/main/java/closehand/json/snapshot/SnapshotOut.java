package closehand.json.snapshot;

import closehand.bank.Path;
import closehand.bank.Where;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.Consumer;

/** Writes a snapshot: tables of texts and places first, then the body that points into them. */
final class SnapshotOut {
  private final ByteArrayOutputStream body = new ByteArrayOutputStream(1 << 16);
  private final Map<String, Integer> texts = new LinkedHashMap<>();
  private final Map<Path, Integer> paths = new LinkedHashMap<>();
  private final Map<Where, Integer> places = new LinkedHashMap<>();

  /** A whole number; small ones take one byte. */
  void number(int value) {
    number(body, value);
  }

  private static void number(ByteArrayOutputStream out, int value) {
    int rest = value;
    while ((rest & ~0x7f) != 0) {
      out.write((rest & 0x7f) | 0x80);
      rest >>>= 7;
    }
    out.write(rest);
  }

  void fraction(double value) {
    long bits = Double.doubleToLongBits(value);
    for (int shift = 56; shift >= 0; shift -= 8) {
      body.write((int) (bits >>> shift) & 0xff);
    }
  }

  void fraction(OptionalDouble value) {
    flag(value.isPresent());
    value.ifPresent(this::fraction);
  }

  void flag(boolean value) {
    body.write(value ? 1 : 0);
  }

  void text(String value) {
    number(textNumber(value));
  }

  private int textNumber(String value) {
    return texts.computeIfAbsent(value, v -> texts.size());
  }

  void texts(Collection<String> values) {
    list(values, this::text);
  }

  void name(Enum<?> value) {
    number(value.ordinal());
  }

  void where(Where where) {
    Integer known = places.get(where);
    if (known == null) {
      textNumber(where.file());
      pathNumber(where.path());
      known = places.size();
      places.put(where, known);
    }
    number(known);
  }

  /** Parents come before their children, so that one pass reads them all. */
  private int pathNumber(Path path) {
    Integer known = paths.get(path);
    if (known != null) {
      return known;
    }
    Path parent = path.parent();
    if (parent != null) {
      pathNumber(parent);
    }
    textNumber(path.step());
    paths.put(path, paths.size());
    return paths.size() - 1;
  }

  <T> void list(Collection<T> values, Consumer<T> each) {
    number(values.size());
    values.forEach(each);
  }

  <T> void maybe(Optional<T> value, Consumer<T> each) {
    flag(value.isPresent());
    value.ifPresent(each);
  }

  /** A map in the order of its keys, so that the same bank always gives the same bytes. */
  <T> void map(Map<String, T> values, Consumer<T> each) {
    number(values.size());
    for (Map.Entry<String, T> entry : new TreeMap<>(values).entrySet()) {
      text(entry.getKey());
      each.accept(entry.getValue());
    }
  }

  /** The whole snapshot. */
  byte[] bytes() {
    ByteArrayOutputStream whole = new ByteArrayOutputStream(1 << 17);
    number(whole, texts.size());
    for (String text : texts.keySet()) {
      byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
      number(whole, bytes.length);
      whole.writeBytes(bytes);
    }
    number(whole, paths.size());
    for (Path path : paths.keySet()) {
      Path parent = path.parent();
      number(whole, parent == null ? 0 : paths.getOrDefault(parent, 0) + 1);
      number(whole, texts.getOrDefault(path.step(), 0));
    }
    number(whole, places.size());
    for (Where place : places.keySet()) {
      number(whole, texts.getOrDefault(place.file(), 0));
      number(whole, place.line());
      number(whole, place.column());
      number(whole, paths.getOrDefault(place.path(), 0));
    }
    whole.writeBytes(body.toByteArray());
    return whole.toByteArray();
  }
}
