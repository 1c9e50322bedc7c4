package closehand.interview;

import closehand.bank.FactType;
import closehand.bank.Option;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;

/** Whether a value can be the answer to a field, and the form in which it is kept. */
public final class Validity {
  /** Longest entry of a list of words, in characters. */
  public static final int LONGEST_WORD = 200;

  /** Most entries in a list of words. */
  public static final int MOST_WORDS = 100;

  /** Longest note beside an answer, in characters. */
  public static final int LONGEST_NOTE = 1000;

  private Validity() {}

  /** Why this value cannot be the answer: one plain sentence. Empty when it can. */
  public static Optional<String> refusal(FactType type, Value value) {
    if (type instanceof FactType.YesNo) {
      return value instanceof Value.Flag ? Optional.empty() : refused(type);
    }
    if (type instanceof FactType.Amount amount) {
      return value instanceof Value.Number number && fits(amount, number.value())
          ? Optional.empty()
          : refused(type);
    }
    if (type instanceof FactType.OneOf) {
      return value instanceof Value.Code code && type.option(code.code()).isPresent()
          ? Optional.empty()
          : refused(type);
    }
    if (type instanceof FactType.SeveralOf) {
      return value instanceof Value.Codes codes ? picks(type, codes.codes()) : refused(type);
    }
    if (type instanceof FactType.Words words) {
      return value instanceof Value.Text text && fits(text.words(), words.maximumLength())
          ? Optional.empty()
          : refused(type);
    }
    return value instanceof Value.Texts texts ? list(type, texts.words()) : refused(type);
  }

  /**
   * The same value as it is kept: picks in the order of the question, words without spaces around
   * them, no negative zero.
   */
  public static Value kept(FactType type, Value value) {
    if (value instanceof Value.Number number) {
      return new Value.Number(number.value() + 0.0);
    }
    if (value instanceof Value.Codes codes) {
      List<String> inOrder = new ArrayList<>();
      for (Option option : type.choices()) {
        if (codes.codes().contains(option.code())) {
          inOrder.add(option.code());
        }
      }
      return new Value.Codes(inOrder);
    }
    if (value instanceof Value.Text text) {
      return new Value.Text(text.words().strip());
    }
    return value instanceof Value.Texts texts
        ? new Value.Texts(texts.words().stream().map(String::strip).toList())
        : value;
  }

  private static boolean fits(String words, int longest) {
    return !words.isBlank() && words.length() <= longest && PlainText.isPlain(words);
  }

  private static boolean fits(FactType.Amount amount, double value) {
    if (!(value >= amount.minimum() && value <= amount.maximum())) {
      return false;
    }
    // Doubles carry 15 digits; what is left over after scaling is noise or a digit too many.
    double scaled = value * Math.pow(10, amount.decimals());
    return Math.abs(scaled - Math.rint(scaled)) < 1e-6;
  }

  private static Optional<String> picks(FactType type, List<String> codes) {
    for (String code : codes) {
      Optional<Option> option = type.option(code);
      if (option.isEmpty()) {
        return refused(type);
      }
      if (option.get().exclusive() && codes.size() > 1) {
        return Optional.of(
            "\"" + option.get().display() + "\" cannot go together with another answer.");
      }
    }
    return new HashSet<>(codes).size() == codes.size()
        ? Optional.empty()
        : Optional.of("The same answer is there twice.");
  }

  private static Optional<String> list(FactType type, List<String> words) {
    if (words.isEmpty() || words.size() > MOST_WORDS) {
      return refused(type);
    }
    if (!words.stream().allMatch(w -> fits(w, LONGEST_WORD))) {
      return refused(type);
    }
    return words.stream().map(String::strip).distinct().count() == words.size()
        ? Optional.empty()
        : Optional.of("The same entry is there twice.");
  }

  private static Optional<String> refused(FactType type) {
    return Optional.of(Wording.accepted(type));
  }
}
