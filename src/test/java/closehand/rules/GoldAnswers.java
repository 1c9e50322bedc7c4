package closehand.rules;

import closehand.bank.Bank;
import closehand.bank.Problem;
import closehand.interview.Answers;
import closehand.interview.FlatAnswers;
import closehand.json.BankReader;
import closehand.json.EmbeddedBank;
import closehand.json.FlatReader;
import closehand.json.JsonReader;
import closehand.json.JsonValue;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** The answers of the eight invented players, and the core bank. */
public final class GoldAnswers {
  private GoldAnswers() {}

  /** The core bank, whole. */
  public static Bank bank() {
    try {
      return BankReader.read(new EmbeddedBank(), BankReader.Extent.WHOLE).bank().orElseThrow();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Every player's answers by name, matched with this bank. */
  public static Map<String, Answers> of(Bank bank) {
    try (InputStream in = GoldAnswers.class.getResourceAsStream("/gold-cases.json")) {
      byte[] bytes = Objects.requireNonNull(in).readAllBytes();
      List<Problem> problems = new ArrayList<>();
      JsonValue.Obj file = (JsonValue.Obj) JsonReader.read("gold", bytes, problems).orElseThrow();
      Map<String, Answers> all = new LinkedHashMap<>();
      for (JsonValue one : ((JsonValue.Arr) file.member("cases").orElseThrow()).items()) {
        JsonValue.Obj object = (JsonValue.Obj) one;
        String id = ((JsonValue.Str) object.member("id").orElseThrow()).value();
        JsonValue facts = object.member("facts").orElseThrow();
        all.put(id, FlatAnswers.of(bank, FlatReader.read(facts, problems)).answers());
      }
      return all;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
