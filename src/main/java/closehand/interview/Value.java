package closehand.interview;

import java.util.List;

/** What somebody answered, already matched with the kind of its question. */
public sealed interface Value {
  /** Yes or no. */
  record Flag(boolean value) implements Value {}

  /** A number, in the unit the question states. */
  record Number(double value) implements Value {}

  /** One option. */
  record Code(String code) implements Value {}

  /** The options picked, in the order of the question; none of them is an answer too. */
  record Codes(List<String> codes) implements Value {
    public Codes {
      codes = List.copyOf(codes);
    }
  }

  /** Free words. */
  record Text(String words) implements Value {}

  /** A list of free words. */
  record Texts(List<String> words) implements Value {
    public Texts {
      words = List.copyOf(words);
    }
  }
}
