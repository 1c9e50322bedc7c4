package closehand.json;

import closehand.bank.Path;
import closehand.bank.Problem;
import closehand.bank.Where;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Reads a JSON document into values that know their line, column and pointer.
 *
 * <p>Whatever arrives, nothing is thrown: a document that is no JSON, too large or too deep gives a
 * problem and no value. Messages never quote the document, which may hold health facts.
 */
public final class JsonReader {
  /** Largest document read, in bytes. */
  public static final int MAXIMUM_BYTES = 2_000_000;

  private static final int MAXIMUM_DEPTH = 40;
  private static final int MAXIMUM_TEXT = 16_384;
  private static final int MAXIMUM_NAME = 128;
  private static final int MAXIMUM_NUMBER = 40;
  private static final int MAXIMUM_TOKENS = 400_000;

  /** The parser's own limits lie wide, so that this reader finds the place of what is too much. */
  private static final JsonFactory FACTORY =
      JsonFactory.builder()
          .streamReadConstraints(
              StreamReadConstraints.builder()
                  .maxNestingDepth(2 * MAXIMUM_DEPTH)
                  .maxStringLength(MAXIMUM_BYTES)
                  .maxNameLength(MAXIMUM_BYTES)
                  .maxNumberLength(MAXIMUM_BYTES)
                  .maxDocumentLength(MAXIMUM_BYTES)
                  .maxTokenCount(MAXIMUM_TOKENS)
                  .build())
          .disable(StreamReadFeature.INCLUDE_SOURCE_IN_LOCATION)
          .build();

  private final String file;
  private final PassedOver passedOver;
  private final String text;
  private final JsonParser parser;
  private final List<Problem> problems;

  private JsonReader(
      String file, PassedOver passedOver, String text, JsonParser parser, List<Problem> problems) {
    this.file = file;
    this.passedOver = passedOver;
    this.text = text;
    this.parser = parser;
    this.problems = problems;
  }

  /** Tells which members of the whole document nobody wants to look at. */
  @FunctionalInterface
  interface PassedOver {
    /**
     * Whether a member is passed over: it must be sound JSON, and stands there as null.
     *
     * @param before the members before it
     */
    boolean passes(List<JsonValue.Member> before, String name);
  }

  /** Something is too large to go on reading; its problem has been noted. */
  private static final class TooLarge extends IOException {
    private static final long serialVersionUID = 1L;
  }

  /**
   * Reads one document.
   *
   * @param file the name used in messages
   * @param bytes the document in UTF-8
   * @param problems receives whatever is wrong
   * @return the document, or empty if it could not be read to its end
   */
  public static Optional<JsonValue> read(String file, byte[] bytes, List<Problem> problems) {
    return read(file, bytes, (before, name) -> false, problems);
  }

  /** The same, passing over some members of the whole document. */
  static Optional<JsonValue> read(
      String file, byte[] bytes, PassedOver passedOver, List<Problem> problems) {
    if (bytes.length > MAXIMUM_BYTES) {
      problems.add(
          Problem.error(
              Where.file(file),
              "too-large",
              "The file is larger than " + MAXIMUM_BYTES / 1_000_000 + " million bytes.",
              "Closehand's files are much smaller; is this the right one?"));
      return Optional.empty();
    }
    return Utf8.read(file, bytes, problems).flatMap(t -> readText(file, passedOver, t, problems));
  }

  private static Optional<JsonValue> readText(
      String file, PassedOver passedOver, String text, List<Problem> problems) {
    try (JsonParser parser = FACTORY.createParser(text)) {
      JsonReader reader = new JsonReader(file, passedOver, text, parser, problems);
      try {
        return reader.document();
      } catch (JsonProcessingException e) {
        problems.add(reader.problemOf(e));
        return Optional.empty();
      } catch (TooLarge e) {
        return Optional.empty();
      }
    } catch (IOException e) {
      throw new IllegalStateException("reading from memory cannot fail", e);
    }
  }

  private Optional<JsonValue> document() throws IOException {
    if (parser.nextToken() == null) {
      problems.add(
          Problem.error(
              Where.file(file), "not-json", "The file is empty.", "A JSON object is needed."));
      return Optional.empty();
    }
    JsonValue value = value(Path.ROOT);
    if (parser.nextToken() != null) {
      problems.add(
          Problem.error(
              here(Path.ROOT),
              "not-json",
              "There is more after the end of the JSON value.",
              "Remove it."));
    }
    return Optional.of(value);
  }

  private JsonValue value(Path path) throws IOException {
    Where where = here(path);
    JsonToken token = parser.currentToken();
    if (token.isStructStart() && path.depth() >= MAXIMUM_DEPTH) {
      throw tooLarge(where, "The file is nested too deeply here", MAXIMUM_DEPTH + " levels");
    }
    return switch (token) {
      case START_OBJECT -> object(path, where);
      case START_ARRAY -> array(path, where);
      case VALUE_STRING -> {
        if (parser.getTextLength() > MAXIMUM_TEXT) {
          throw tooLarge(where, "This text is too long", MAXIMUM_TEXT + " characters");
        }
        yield new JsonValue.Str(clean(parser.getText(), where), where);
      }
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> number(where);
      case VALUE_TRUE -> new JsonValue.Bool(true, where);
      case VALUE_FALSE -> new JsonValue.Bool(false, where);
      default -> new JsonValue.Null(where);
    };
  }

  private JsonValue object(Path path, Where where) throws IOException {
    List<JsonValue.Member> members = new ArrayList<>();
    Map<String, Where> seen = new HashMap<>();
    while (parser.nextToken() != JsonToken.END_OBJECT) {
      String rawName = parser.currentName();
      if (rawName.length() > MAXIMUM_NAME) {
        throw tooLarge(here(path), "This name is too long", MAXIMUM_NAME + " characters");
      }
      Path inner = path.child(UncleanText.replaced(rawName));
      Where nameWhere = here(inner);
      String name = clean(rawName, nameWhere);
      parser.nextToken();
      JsonValue value =
          path.equals(Path.ROOT) && passedOver.passes(members, name)
              ? skipped(inner)
              : value(inner);
      Where first = seen.putIfAbsent(name, nameWhere);
      if (first == null) {
        members.add(new JsonValue.Member(name, nameWhere, value));
      } else {
        problems.add(
            Problem.error(
                nameWhere,
                "duplicate-key",
                "This name is used twice in the same object; first on line " + first.line() + ".",
                "Keep one of the two."));
      }
    }
    return new JsonValue.Obj(members, where);
  }

  private JsonValue skipped(Path path) throws IOException {
    Where where = here(path);
    parser.skipChildren();
    return new JsonValue.Null(where);
  }

  private JsonValue array(Path path, Where where) throws IOException {
    List<JsonValue> items = new ArrayList<>();
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      items.add(value(path.child(items.size())));
    }
    return new JsonValue.Arr(items, where);
  }

  private JsonValue number(Where where) throws IOException {
    if (parser.getTextLength() > MAXIMUM_NUMBER) {
      throw tooLarge(where, "This number is too long", MAXIMUM_NUMBER + " characters");
    }
    String number = parser.getText();
    double value = Double.parseDouble(number);
    if (Double.isInfinite(value)) {
      problems.add(Problem.error(where, "out-of-range", "This number is too large.", "Check it."));
      return new JsonValue.Num(0, number, where);
    }
    return new JsonValue.Num(value, number, where);
  }

  private TooLarge tooLarge(Where where, String what, String limit) {
    problems.add(Problem.error(where, "too-large", what + ".", "At most " + limit + " are read."));
    return new TooLarge();
  }

  private String clean(String raw, Where where) {
    int bad = UncleanText.firstUnclean(raw);
    if (bad < 0) {
      return UncleanText.oneLine(raw);
    }
    problems.add(
        Problem.error(
            where,
            "unclean-text",
            "This text holds "
                + UncleanText.describe(raw.codePointAt(bad))
                + " at position "
                + (bad + 1)
                + ".",
            "Remove it: such characters can garble or take over a screen."));
    return UncleanText.replaced(raw);
  }

  private Where here(Path path) {
    JsonLocation at = parser.currentTokenLocation();
    return new Where(file, at.getLineNr(), at.getColumnNr(), path);
  }

  private Problem problemOf(JsonProcessingException e) {
    JsonLocation at = e.getLocation();
    Where where =
        at == null
            ? Where.file(file)
            : new Where(file, at.getLineNr(), at.getColumnNr(), Path.ROOT);
    if (e instanceof StreamConstraintsException) {
      return Problem.error(
          where,
          "too-large",
          "The file holds too much.",
          "At most " + MAXIMUM_TOKENS + " names and values are read.");
    }
    if (e instanceof JsonEOFException) {
      return Problem.error(
          where, "not-json", "The file ends in the middle.", "Was it saved or copied completely?");
    }
    return Problem.error(
        where,
        "not-json",
        "This is not valid JSON.",
        JsonMistake.mend(text, at == null ? -1 : at.getCharOffset()));
  }
}
