package closehand.json;

import closehand.bank.Problem;
import closehand.bank.Where;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What {@code bank.json} says: which rule themes and games the bank has.
 *
 * @param themes names of files in the folder {@code rules}
 * @param games names of files in the folder {@code games}
 */
record BankIndex(List<Part> themes, List<Part> games) {
  private static final String FORMAT = "closehand-bank";
  private static final int SCHEMA = 1;

  /**
   * One file of the bank.
   *
   * @param name without folder and ending
   * @param where where it is named
   */
  record Part(String name, Where where) {}

  /** Reads the index; empty if this is no bank, or one that only a newer program understands. */
  static Optional<BankIndex> read(JsonValue document, List<Problem> problems) {
    Optional<ObjectReading> reading = ObjectReading.of(document, problems);
    if (reading.isEmpty()) {
      return Optional.empty();
    }
    ObjectReading in = reading.get();
    Optional<JsonValue> format = in.optional("format");
    if (!(format.orElse(null) instanceof JsonValue.Str word) || !word.value().equals(FORMAT)) {
      problems.add(
          Problem.error(
              in.where("format"),
              "wrong-format",
              "This is not a question bank.",
              "\"format\" must be \"" + FORMAT + "\"."));
      return Optional.empty();
    }
    if (in.whole("schema", 1, Integer.MAX_VALUE) > SCHEMA) {
      problems.add(
          Problem.error(
              in.where("schema"),
              "newer-version",
              "This bank was made for a newer version of the program.",
              "Update the program."));
      return Optional.empty();
    }
    in.optionalText("title");
    List<Part> themes = parts(in.list("rules"), problems);
    List<Part> games = parts(in.list("games"), problems);
    in.finish();
    return Optional.of(new BankIndex(themes, games));
  }

  private static List<Part> parts(List<JsonValue> values, List<Problem> problems) {
    List<Part> parts = new ArrayList<>();
    Set<String> names = new HashSet<>();
    for (JsonValue value : values) {
      for (String name : ObjectReading.texts(List.of(value), problems)) {
        if (!isPlain(name)) {
          problems.add(
              Problem.error(
                  value.where(),
                  "wrong-name",
                  "This is not the name of a file of the bank.",
                  "Names are made of letters, digits, - and _, without folder and ending."));
        } else if (!names.add(name)) {
          problems.add(
              Problem.error(
                  value.where(),
                  "duplicate-id",
                  "The file \"" + name + "\" is named twice.",
                  "Keep it once."));
        } else {
          parts.add(new Part(name, value.where()));
        }
      }
    }
    return parts;
  }

  private static boolean isPlain(String name) {
    return name.chars()
        .allMatch(
            c ->
                (c >= 'a' && c <= 'z')
                    || (c >= 'A' && c <= 'Z')
                    || (c >= '0' && c <= '9')
                    || c == '-'
                    || c == '_');
  }
}
