package closehand.rules;

import java.util.ArrayList;
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

  boolean has(int order) {
    return (words[order >> 6] & 1L << order) != 0;
  }

  void addAll(FactSet other) {
    for (int i = 0; i < words.length; i++) {
      words[i] |= other.words[i];
    }
  }

  void clear() {
    java.util.Arrays.fill(words, 0);
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
    List<String> names = new ArrayList<>(size);
    for (int i = 0; i < words.length; i++) {
      for (long rest = words[i]; rest != 0; rest &= rest - 1) {
        names.add(facts.get((i << 6) + Long.numberOfTrailingZeros(rest)));
      }
    }
    return names.size() == 1 ? List.of(names.get(0)) : List.copyOf(names);
  }
}
