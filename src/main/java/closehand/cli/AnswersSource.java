package closehand.cli;

import closehand.bank.Bank;
import closehand.bank.FlatValue;
import closehand.bank.GameProfile;
import closehand.bank.Problem;
import closehand.interview.Answers;
import closehand.interview.FactWords;
import closehand.interview.FlatAnswers;
import closehand.json.AnyAnswers;
import closehand.json.FlatReader;
import closehand.json.GameChangesReader;
import closehand.json.JsonReader;
import closehand.json.JsonValue;
import closehand.json.OwnLimitsReader;
import closehand.rules.GameActions;
import closehand.strain.OwnLimits;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Reads a flat answers file. */
final class AnswersSource {
  private AnswersSource() {}

  /**
   * What came of reading.
   *
   * @param profiles profiles of games whose actions the file changes, by slot from 1
   * @param limits what the file says that no question asks
   */
  record Loaded(
      Optional<Answers> answers,
      Map<Integer, GameProfile> profiles,
      OwnLimits limits,
      List<Problem> problems) {}

  /**
   * What stands in a file, before anybody knows the questions.
   *
   * @param values fact id to value; nothing when the file is no JSON
   * @param games games whose actions the file changes; nothing when the file is no JSON
   * @param limits what the file says that no question asks
   */
  record Read(
      Optional<Map<String, FlatValue>> values,
      Optional<GameChangesReader.Written> games,
      OwnLimits limits,
      List<Problem> problems) {}

  /** Reads the file, or standard input for {@code -}. */
  static Read read(String file, InputStream input) throws IOException {
    boolean standard = file.equals("-");
    byte[] bytes = standard ? bounded(input) : bytes(Path.of(file));
    List<Problem> problems = new ArrayList<>();
    Optional<JsonValue> document =
        JsonReader.read(standard ? "standard input" : file, bytes, problems);
    if (document.filter(AnyAnswers::isCase).isPresent()) {
      problems.add(savedCase(document.get()));
      return new Read(Optional.empty(), Optional.empty(), OwnLimits.NONE, problems);
    }
    Optional<GameChangesReader.Written> games = document.map(GameChangesReader::split);
    OwnLimits limits = document.map(d -> OwnLimitsReader.read(d, problems)).orElse(OwnLimits.NONE);
    return new Read(
        games.map(g -> FlatReader.read(OwnLimitsReader.rest(g.rest()), problems)),
        games,
        limits,
        problems);
  }

  /** Matches what was read with the questions; no answers when anything in it is wrong. */
  static Loaded match(Bank bank, Read read) {
    List<Problem> problems = new ArrayList<>(read.problems());
    if (read.values().isEmpty()) {
      return new Loaded(Optional.empty(), Map.of(), OwnLimits.NONE, problems);
    }
    Map<String, FlatValue> values = new LinkedHashMap<>(read.values().get());
    Optional.ofNullable(values.remove(FlatAnswers.CLEARED))
        .ifPresent(v -> problems.add(lowering(v)));
    FlatAnswers flat = FlatAnswers.of(bank, values);
    problems.addAll(flat.problems());
    Map<Integer, GameProfile> profiles =
        read.games().map(g -> GameChangesReader.profiles(bank, g, problems)).orElse(Map.of());
    problems.addAll(actions(bank, flat.answers(), values, profiles));
    return new Loaded(
        Problem.anyError(problems) ? Optional.empty() : Optional.of(flat.answers()),
        profiles,
        read.limits(),
        Problem.inLineOrder(problems));
  }

  private static Problem savedCase(JsonValue document) {
    return Problem.error(
        document.where(),
        "not-here",
        "This is a saved case, not a file of answers.",
        "Give the case without --answers.");
  }

  /** Lists of actions may only name actions of their game. */
  private static List<Problem> actions(
      Bank bank,
      Answers answers,
      Map<String, FlatValue> values,
      Map<Integer, GameProfile> profiles) {
    List<Problem> problems = new ArrayList<>();
    values.forEach(
        (fact, value) -> {
          Map<String, String> known = new LinkedHashMap<>(GameActions.of(bank, answers, fact));
          if (!known.isEmpty()) {
            profiles.forEach(
                (slot, profile) -> {
                  if (fact.startsWith("games." + slot + ".")) {
                    profile.actions().forEach(a -> known.put(a.id(), a.name()));
                  }
                });
          }
          if (!known.isEmpty()
              && value instanceof FlatValue.Texts list
              && !known.keySet().containsAll(list.values())) {
            problems.add(
                Problem.error(
                    value.where(),
                    "unknown-value",
                    FactWords.of(fact) + " names an action that its game does not have.",
                    "The actions are "
                        + known.entrySet().stream()
                            .map(a -> a.getKey() + " (" + a.getValue() + ")")
                            .collect(Collectors.joining(", "))
                        + "."));
          }
        });
    return problems;
  }

  /** Stops are lowered by a person in an interview, never by a file. */
  private static Problem lowering(FlatValue value) {
    return Problem.error(
        value.where(),
        "not-here",
        "A file of answers cannot lower a stop.",
        "Only a clinician can, in the interview, with a name and a reason.");
  }

  private static byte[] bytes(Path file) throws IOException {
    if (Files.isDirectory(file)) {
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
