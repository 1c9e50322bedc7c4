package closehand.json;

import closehand.bank.Problem;
import closehand.bank.Questionnaire;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The core questionnaire, as text and as read. */
public final class CoreForm {
  private CoreForm() {}

  public static String text() {
    try {
      return Files.readString(Path.of("question-banks/core/questionnaire.json"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  public static Questionnaire questionnaire() {
    return read(text());
  }

  static Questionnaire read(String text) {
    List<Problem> problems = new ArrayList<>();
    Questionnaire form =
        json(text, problems).flatMap(v -> QuestionnaireReader.read(v, problems)).orElseThrow();
    if (!problems.isEmpty()) {
      throw new AssertionError(problems.toString());
    }
    return form;
  }

  static java.util.Optional<JsonValue> json(String text, List<Problem> problems) {
    return JsonReader.read("test.json", text.getBytes(StandardCharsets.UTF_8), problems);
  }
}
