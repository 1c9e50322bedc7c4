package closehand.plan;

import closehand.bank.Bank;
import closehand.bank.FlatValue;
import closehand.bank.GameProfile;
import closehand.bank.Problem;
import closehand.interview.Answers;
import closehand.interview.FlatAnswers;
import closehand.interview.Interview;
import closehand.interview.Provenance;
import closehand.json.BankReader;
import closehand.json.EmbeddedBank;
import closehand.json.FlatReader;
import closehand.json.JsonReader;
import closehand.json.JsonValue;
import closehand.rules.Advice;
import closehand.rules.RuleBook;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;

/** An invented player of the gold cases, with what the rules make of the answers. */
final class Player {
  private static final Bank BANK = readBank();
  private static final RuleBook BOOK = RuleBook.of(BANK);

  private final Answers answers;

  private Player(Answers answers) {
    this.answers = answers;
  }

  static Bank bank() {
    return BANK;
  }

  static List<String> ids() {
    return cases().stream()
        .map(c -> ((JsonValue.Str) c.member("id").orElseThrow()).value())
        .toList();
  }

  /** The gold case with this id. */
  static Player gold(String id) {
    return gold(id, facts -> {});
  }

  /** The gold case with some answers changed. */
  static Player gold(String id, Consumer<Map<String, FlatValue>> change) {
    JsonValue.Obj one =
        cases().stream()
            .filter(c -> ((JsonValue.Str) c.member("id").orElseThrow()).value().equals(id))
            .findFirst()
            .orElseThrow();
    List<Problem> problems = new ArrayList<>();
    Map<String, FlatValue> values =
        new LinkedHashMap<>(FlatReader.read(one.member("facts").orElseThrow(), problems));
    change.accept(values);
    Answers told = FlatAnswers.of(BANK, values).answers();
    return new Player(
        Interview.reopen(
                BANK.questionnaire(),
                told,
                Interview.Route.CORE,
                Provenance.By.VOLUNTEER,
                Optional.empty())
            .effective());
  }

  Answers answers() {
    return answers;
  }

  Advice advice() {
    return BOOK.advise(answers);
  }

  Optional<Planning> maybePlanning(Map<Integer, GameProfile> changed) {
    Map<Integer, Advice> byGame = new TreeMap<>();
    BOOK.games(answers).forEach(g -> byGame.put(g, BOOK.advise(answers, g)));
    return Planning.of(BANK, answers, advice(), byGame, changed);
  }

  Planning planning() {
    return maybePlanning(Map.of()).orElseThrow();
  }

  private static List<JsonValue.Obj> cases() {
    try (InputStream in = Player.class.getResourceAsStream("/gold-cases.json")) {
      byte[] bytes = Objects.requireNonNull(in).readAllBytes();
      JsonValue.Obj file =
          (JsonValue.Obj)
              JsonReader.read("gold-cases.json", bytes, new ArrayList<>()).orElseThrow();
      return ((JsonValue.Arr) file.member("cases").orElseThrow())
          .items().stream().map(c -> (JsonValue.Obj) c).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Bank readBank() {
    try {
      return BankReader.read(new EmbeddedBank(), BankReader.Extent.FOR_USE).bank().orElseThrow();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
