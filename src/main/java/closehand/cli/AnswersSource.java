package closehand.cli;

import closehand.bank.Bank;
import closehand.bank.Problem;
import closehand.interview.Answers;
import closehand.interview.FlatAnswers;
import closehand.json.FlatReader;
import closehand.json.JsonReader;
import closehand.json.JsonValue;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads a flat answers file. */
final class AnswersSource {
  private AnswersSource() {}

  /** What came of reading. */
  record Loaded(Optional<Answers> answers, List<Problem> problems) {}

  /** Reads the file, or standard input for {@code -}; no answers when anything in it is wrong. */
  static Loaded flat(Bank bank, String file, InputStream input) throws IOException {
    boolean standard = file.equals("-");
    byte[] bytes = standard ? bounded(input) : bytes(Path.of(file));
    List<Problem> problems = new ArrayList<>();
    Optional<JsonValue> document =
        JsonReader.read(standard ? "standard input" : file, bytes, problems);
    if (document.isEmpty()) {
      return new Loaded(Optional.empty(), problems);
    }
    FlatAnswers flat = FlatAnswers.of(bank, FlatReader.read(document.get(), problems));
    problems.addAll(flat.problems());
    return new Loaded(
        Problem.anyError(problems) ? Optional.empty() : Optional.of(flat.answers()),
        Problem.inLineOrder(problems));
  }

  private static byte[] bytes(Path file) throws IOException {
    if (!Files.isRegularFile(file)) {
      throw new NoSuchFileException(file.toString());
    }
    try (InputStream in = Files.newInputStream(file)) {
      return bounded(in);
    }
  }

  /**
   * At most one byte more than is ever read, so that a huge file is told apart without being
   * loaded.
   */
  private static byte[] bounded(InputStream in) throws IOException {
    return in.readNBytes(JsonReader.MAXIMUM_BYTES + 1);
  }
}
