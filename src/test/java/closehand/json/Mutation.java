package closehand.json;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Damages a file at random, but the same way for the same seed: single bytes, whole lines, and
 * values swapped for values of another type.
 */
final class Mutation {
  private static final String[] STRANGE = {
    "null",
    "true",
    "false",
    "0",
    "-1",
    "1.5",
    "1e999",
    "1e-999",
    "99999999999",
    "\"\"",
    "\" \"",
    "\"none\"",
    "\"x\"",
    "\"{X}\"",
    "\"\\u001b[31m\"",
    "\"\\u0000\"",
    "\"\\ud800\"",
    "[]",
    "{}",
    "[[]]",
    "[null]",
    "{\"\": 1}",
    "{\"all\": []}",
    "[\"pain.now\", \">=\", 3]",
    "\"always\"",
    "{\"absent\": \"later\"}",
    "\"games.1.genre\"",
    "\"digit\"",
    "\"side\"",
    "\"cleared\"",
    "\"<\""
  };

  private long state;

  /** A stream of damage of its own for each seed. */
  Mutation(long seed) {
    state = seed * 0x9E3779B97F4A7C15L + 0x1234567L;
  }

  /** The next number from 0 to below {@code bound} (SplitMix64, Steele and others 2014). */
  int next(int bound) {
    state += 0x9E3779B97F4A7C15L;
    long z = state;
    z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
    z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
    return (int) Long.remainderUnsigned(z ^ (z >>> 31), bound);
  }

  /**
   * A damaged copy.
   *
   * @param donor another file, whose values may be put into this one
   */
  byte[] damage(byte[] file, byte[] donor) {
    byte[] damaged = file;
    boolean bytes = next(3) == 0;
    for (int times = 1 + next(3); times > 0; times--) {
      damaged = damaged.length == 0 ? damaged : once(damaged, donor, bytes);
    }
    return damaged;
  }

  private byte[] once(byte[] file, byte[] donor, boolean bytes) {
    int at = next(file.length);
    return switch (bytes ? next(5) : 5) {
      case 0 -> flip(file, at);
      case 1 -> splice(file, at, Math.min(file.length, at + 1 + next(4)), new byte[0]);
      case 2 -> splice(file, at, at, new byte[] {(byte) next(256)});
      case 3 -> Arrays.copyOf(file, at);
      case 4 -> line(file, at);
      default -> swap(file, next(3) == 0 ? donor : file);
    };
  }

  private byte[] flip(byte[] file, int at) {
    byte[] copy = file.clone();
    copy[at] ^= (byte) (1 << next(8));
    return copy;
  }

  /** Takes a line away or writes it twice. */
  private byte[] line(byte[] file, int at) {
    int from = at;
    while (from > 0 && file[from - 1] != '\n') {
      from--;
    }
    int to = at;
    while (to < file.length && file[to] != '\n') {
      to++;
    }
    byte[] line = Arrays.copyOfRange(file, from, to);
    return next(2) == 0 ? splice(file, from, to, new byte[0]) : splice(file, to, to, line);
  }

  /** Puts one value in the place of another. */
  private byte[] swap(byte[] file, byte[] donor) {
    List<int[]> values = values(file);
    List<int[]> others = values(donor);
    if (values.isEmpty() || others.isEmpty()) {
      return file;
    }
    int[] gone = values.get(next(values.size()));
    int[] other = others.get(next(others.size()));
    byte[] instead =
        next(3) != 0
            ? Arrays.copyOfRange(donor, other[0], other[1])
            : STRANGE[next(STRANGE.length)].getBytes(StandardCharsets.UTF_8);
    return splice(file, gone[0], gone[1], instead);
  }

  /** Where texts, words, numbers, lists and objects start and end, as far as can be told. */
  private static List<int[]> values(byte[] file) {
    List<int[]> values = new ArrayList<>();
    List<Integer> open = new ArrayList<>();
    for (int i = 0; i < file.length; i++) {
      int from = i;
      if (file[i] == '"') {
        for (i++; i < file.length && file[i] != '"'; i++) {
          i += file[i] == '\\' ? 1 : 0;
        }
        values.add(new int[] {from, Math.min(file.length, i + 1)});
      } else if (file[i] == '[' || file[i] == '{') {
        open.add(i);
      } else if ((file[i] == ']' || file[i] == '}') && !open.isEmpty()) {
        values.add(new int[] {open.remove(open.size() - 1), i + 1});
      } else if (Character.isLetterOrDigit(file[i])) {
        while (i + 1 < file.length && Character.isLetterOrDigit(file[i + 1])) {
          i++;
        }
        values.add(new int[] {from, i + 1});
      }
    }
    return values;
  }

  private static byte[] splice(byte[] file, int from, int to, byte[] instead) {
    byte[] copy = new byte[file.length - (to - from) + instead.length];
    System.arraycopy(file, 0, copy, 0, from);
    System.arraycopy(instead, 0, copy, from, instead.length);
    System.arraycopy(file, to, copy, from + instead.length, file.length - to);
    return copy;
  }
}
