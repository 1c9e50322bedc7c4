package closehand.interview;

import closehand.bank.FactType;
import closehand.bank.Field;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What a person typed, read as an answer.
 *
 * <p>Options can be named by their number as shown (from 1), by their words, by the beginning of
 * their words where only one option begins so, or by their code. A number that could be both the
 * number of an option and the code of another is the number as shown.
 */
public sealed interface Entry {
  /** It is this value. */
  record Read(Value value) implements Entry {}

  /** It cannot be read; a plain sentence says what would be. */
  record Refused(String sentence) implements Entry {}

  /** Reads what was typed for one field. */
  static Entry read(FactType type, String typed) {
    String clean = PlainText.of(typed);
    if (clean.isEmpty()) {
      return new Refused("Nothing was typed. " + Wording.accepted(type));
    }
    Optional<Value> value = value(type, clean);
    if (value.isEmpty()) {
      return new Refused(refusal(type, clean));
    }
    Optional<String> refused = Validity.refusal(type, value.get());
    return refused.isPresent()
        ? new Refused(refused.get())
        : new Read(Validity.kept(type, value.get()));
  }

  private static String refusal(FactType type, String clean) {
    return Choice.ambiguous(type, clean)
        ? "\"" + clean + "\" fits more than one answer. " + Wording.accepted(type)
        : Wording.accepted(type);
  }

  private static Optional<Value> value(FactType type, String clean) {
    if (type instanceof FactType.YesNo) {
      return Choice.yesOrNo(clean).map(Value.Flag::new);
    }
    if (type instanceof FactType.Amount amount) {
      return number(withoutUnit(clean, amount.unit())).map(Value.Number::new);
    }
    if (type instanceof FactType.OneOf) {
      return Choice.one(type, clean).map(o -> new Value.Code(o.code()));
    }
    if (type instanceof FactType.SeveralOf) {
      return Choice.several(type, clean).map(Value.Codes::new);
    }
    return type instanceof FactType.Words
        ? Optional.of(new Value.Text(clean))
        : Optional.of(new Value.Texts(split(clean)));
  }

  private static List<String> split(String words) {
    List<String> list = new ArrayList<>();
    for (String word : words.split(",", -1)) {
      if (!word.isBlank()) {
        list.add(word.strip());
      }
    }
    return list;
  }

  private static String withoutUnit(String typed, String unit) {
    String lower = typed.toLowerCase(Locale.ROOT);
    for (String word : List.of(Wording.unit(unit, false), Wording.unit(unit, true), unit)) {
      boolean isWord = !word.isEmpty() && (Character.isLetter(word.charAt(0)) || word.equals("%"));
      if (isWord && lower.endsWith(word.toLowerCase(Locale.ROOT))) {
        return typed.substring(0, typed.length() - word.length()).strip();
      }
    }
    return typed;
  }

  /** A number with a decimal point or comma, and nothing else. */
  private static Optional<Double> number(String typed) {
    boolean negative = typed.startsWith("-");
    String digits = (negative ? typed.substring(1) : typed).replace(',', '.');
    int points = 0;
    int figures = 0;
    for (int i = 0; i < digits.length(); i++) {
      char c = digits.charAt(i);
      if (c == '.') {
        points++;
      } else if (c >= '0' && c <= '9') {
        figures++;
      } else {
        return Optional.empty();
      }
    }
    boolean sound = points <= 1 && figures >= 1 && figures <= 15 && !digits.endsWith(".");
    return sound
        ? Optional.of(Double.parseDouble(negative ? "-" + digits : digits))
        : Optional.empty();
  }

  /** What one line filled. */
  sealed interface Line {
    /** These fields get these values, in order; a field left out with a dash stays open. */
    record Filled(List<For> values) implements Line {
      public Filled {
        values = List.copyOf(values);
      }
    }

    /** One field and its value. */
    record For(String fact, Value value) {}

    /** The line cannot be read; nothing of it counts. */
    record NotRead(String sentence) implements Line {}
  }

  /**
   * Reads one line for several fields of the same kind in a row, one word or number for each; "-"
   * leaves a field open. A line that is the answer to the first field alone is read so.
   *
   * @param fields at least one
   */
  static Line readLine(List<Field> fields, String typed) {
    Field first = fields.get(0);
    Entry whole = read(first.type(), typed);
    List<String> words = words(first.type(), PlainText.of(typed));
    if (whole instanceof Read read) {
      return new Line.Filled(List.of(new Line.For(first.fact(), read.value())));
    }
    boolean single = first.type() instanceof FactType.SeveralOf || words.size() < 2;
    if (fields.size() == 1 || single) {
      return new Line.NotRead(((Refused) whole).sentence());
    }
    if (words.size() > fields.size()) {
      return new Line.NotRead(
          "There are " + words.size() + " answers for " + fields.size() + " places.");
    }
    return each(fields, words);
  }

  private static Line each(List<Field> fields, List<String> words) {
    List<Line.For> values = new ArrayList<>();
    for (int i = 0; i < words.size(); i++) {
      Field field = fields.get(i);
      if (words.get(i).equals("-")) {
        continue;
      }
      Entry entry = read(field.type(), words.get(i));
      if (entry instanceof Refused refused) {
        return new Line.NotRead(field.label() + ": " + refused.sentence());
      }
      values.add(new Line.For(field.fact(), ((Read) entry).value()));
    }
    return new Line.Filled(values);
  }

  /** The words of a line; a comma parts them too, but not inside a number such as 1,5. */
  private static List<String> words(FactType type, String clean) {
    boolean numbers = type instanceof FactType.Amount;
    List<String> words = new ArrayList<>();
    for (String word : clean.split(numbers ? "[\\s;]+" : "[\\s,;]+", -1)) {
      String bare = word.endsWith(",") ? word.substring(0, word.length() - 1) : word;
      if (!bare.isEmpty()) {
        words.add(bare);
      }
    }
    return words;
  }
}
