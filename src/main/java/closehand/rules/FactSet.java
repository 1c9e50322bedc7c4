package closehand.rules;

import java.util.List;

/** A set of asked facts, kept by their place in the questionnaire. */
final class FactSet {
  private final long[] words;

  /** An empty set that can hold the first {@code size} facts. */
  FactSet(int size) {
    words = new long[(size + 63) >> 6];
  }

  void add(int order) {
    words[order >> 6] |= 1L << order;
  }

  void addAll(FactSet other) {
    for (int i = 0; i < words.length; i++) {
      words[i] |= other.words[i];
    }
  }

  /** Their names out of {@code facts}, in order. */
  List<String> names(List<String> facts) {
    int size = 0;
    for (long word : words) {
      size += Long.bitCount(word);
    }
    if (size == 0) {
      return List.of();
    }
    String[] names = new String[size];
    int next = 0;
    for (int i = 0; i < words.length; i++) {
      for (long rest = words[i]; rest != 0; rest &= rest - 1) {
        names[next++] = facts.get((i << 6) + Long.numberOfTrailingZeros(rest));
      }
    }
    return List.of(names);
  }
}
