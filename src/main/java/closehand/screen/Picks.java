package closehand.screen;

import closehand.bank.FactType;
import closehand.bank.Option;
import closehand.interview.Answer;
import closehand.interview.Prompt;
import closehand.interview.Value;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Several answers being picked out of a list. */
final class Picks {
  private Picks() {}

  /** One entry of the list. */
  record Entry(String code, String words, boolean exclusive) {}

  /** What can be picked; nothing where the field takes no picks. */
  static List<Entry> entries(FactType type, Map<String, String> names) {
    List<Entry> entries = new ArrayList<>();
    if (type instanceof FactType.SeveralOf several) {
      for (Option option : several.options()) {
        entries.add(new Entry(option.code(), option.display(), option.exclusive()));
      }
    }
    names.forEach((code, words) -> entries.add(new Entry(code, words, false)));
    return entries;
  }

  /** What was picked before, unless it is asked again. */
  static List<String> earlier(Prompt prompt) {
    if (prompt.again() != Prompt.Again.NO) {
      return List.of();
    }
    Optional<Value> value = prompt.earlier().map(r -> r.answer()).flatMap(Answer::given);
    if (value.isPresent() && value.get() instanceof Value.Codes codes) {
      return codes.codes();
    }
    return value.isPresent() && value.get() instanceof Value.Texts texts
        ? texts.words()
        : List.of();
  }

  /** Picks one, or takes it back; "none of these" stands alone. */
  static List<String> toggled(List<Entry> entries, List<String> picks, String code) {
    List<String> next = new ArrayList<>(picks);
    if (next.remove(code)) {
      return next;
    }
    boolean alone = isExclusive(entries, code);
    next.removeIf(other -> alone || isExclusive(entries, other));
    next.add(code);
    return next;
  }

  private static boolean isExclusive(List<Entry> entries, String code) {
    return entries.stream().anyMatch(e -> e.code().equals(code) && e.exclusive());
  }

  /** Whether "none of these" can be said by picking nothing. */
  static boolean mayBeEmpty(FactType type, List<Entry> entries) {
    return type instanceof FactType.SeveralOf && entries.stream().noneMatch(Entry::exclusive);
  }

  static Value value(FactType type, List<String> picks) {
    return type instanceof FactType.SeveralOf ? new Value.Codes(picks) : new Value.Texts(picks);
  }
}
