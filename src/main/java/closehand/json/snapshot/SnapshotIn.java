package closehand.json.snapshot;

import closehand.bank.Path;
import closehand.bank.Where;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;

/**
 * Reads what {@link SnapshotOut} wrote.
 *
 * <p>Only snapshots that this very build made are ever read, so a damaged one is a broken program
 * and ends in an unchecked exception.
 */
final class SnapshotIn {
  private final byte[] bytes;
  private int at;
  private final String[] texts;
  private final Where[] places;

  SnapshotIn(byte[] bytes) {
    this.bytes = bytes;
    texts = new String[number()];
    for (int i = 0; i < texts.length; i++) {
      int length = number();
      texts[i] = new String(bytes, at, length, StandardCharsets.UTF_8);
      at += length;
    }
    Path[] paths = readPaths();
    places = new Where[number()];
    for (int i = 0; i < places.length; i++) {
      String file = text();
      int line = number();
      int column = number();
      places[i] = new Where(file, line, column, paths[number()]);
    }
  }

  private Path[] readPaths() {
    Path[] paths = new Path[number()];
    for (int i = 0; i < paths.length; i++) {
      int parent = number();
      String step = text();
      paths[i] = parent == 0 ? Path.ROOT : paths[parent - 1].child(step);
    }
    return paths;
  }

  int number() {
    int one = bytes[at++];
    if (one >= 0) {
      return one;
    }
    int value = one & 0x7f;
    for (int shift = 7; ; shift += 7) {
      int next = bytes[at++];
      value |= (next & 0x7f) << shift;
      if (next >= 0) {
        return value;
      }
    }
  }

  double fraction() {
    long bits = 0;
    for (int i = 0; i < 8; i++) {
      bits = bits << 8 | (bytes[at++] & 0xff);
    }
    return Double.longBitsToDouble(bits);
  }

  OptionalDouble maybeFraction() {
    return flag() ? OptionalDouble.of(fraction()) : OptionalDouble.empty();
  }

  boolean flag() {
    return bytes[at++] != 0;
  }

  String text() {
    return texts[number()];
  }

  List<String> texts() {
    int size = number();
    if (size == 0) {
      return List.of();
    }
    String[] values = new String[size];
    for (int i = 0; i < size; i++) {
      values[i] = text();
    }
    return List.of(values);
  }

  <E extends Enum<E>> E name(E[] values) {
    return values[number()];
  }

  Where where() {
    return places[number()];
  }

  <T> List<T> list(Supplier<T> each) {
    int size = number();
    if (size == 0) {
      return List.of();
    }
    List<T> values = new ArrayList<>(size);
    for (int i = 0; i < size; i++) {
      values.add(each.get());
    }
    return values;
  }

  <T> Optional<T> maybe(Supplier<T> each) {
    return flag() ? Optional.of(each.get()) : Optional.empty();
  }

  <T> Map<String, T> map(Supplier<T> each) {
    int size = number();
    Map<String, T> values = new HashMap<>();
    for (int i = 0; i < size; i++) {
      String key = text();
      values.put(key, each.get());
    }
    return values;
  }
}
