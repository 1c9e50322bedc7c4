package closehand.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;

import closehand.bank.Bank;
import closehand.bank.Problem;
import closehand.interview.FlatAnswers;
import closehand.json.BankReader;
import closehand.json.EmbeddedBank;
import closehand.json.FlatReader;
import closehand.json.JsonReader;
import closehand.json.JsonValue;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Eight invented players, each worked through by hand, come out as expected: what leads, what is
 * suggested besides, what must not be, which cautions stand.
 */
class GoldCasesTest {
  private static Bank bank;
  private static RuleBook book;

  @BeforeAll
  static void readTheBank() throws IOException {
    bank = BankReader.read(new EmbeddedBank(), BankReader.Extent.WHOLE).bank().orElseThrow();
    book = RuleBook.of(bank);
  }

  /** A case with a name for the test report. */
  record Case(String name, JsonValue.Obj facts, JsonValue.Obj expected) {
    @Override
    public String toString() {
      return name;
    }

    List<String> names(String member) {
      return texts((JsonValue.Arr) expected.member(member).orElseThrow());
    }
  }

  static Stream<Case> cases() throws IOException {
    try (InputStream in = GoldCasesTest.class.getResourceAsStream("/gold-cases.json")) {
      byte[] bytes = Objects.requireNonNull(in).readAllBytes();
      JsonValue.Obj file =
          (JsonValue.Obj)
              JsonReader.read("gold-cases.json", bytes, new ArrayList<>()).orElseThrow();
      JsonValue.Arr list = (JsonValue.Arr) file.member("cases").orElseThrow();
      return list.items().stream().map(c -> (JsonValue.Obj) c).map(GoldCasesTest::toCase);
    }
  }

  private static Case toCase(JsonValue.Obj one) {
    return new Case(
        text(one, "id") + " " + text(one, "title"),
        (JsonValue.Obj) one.member("facts").orElseThrow(),
        (JsonValue.Obj) one.member("expected").orElseThrow());
  }

  private static String text(JsonValue.Obj object, String member) {
    return ((JsonValue.Str) object.member(member).orElseThrow()).value();
  }

  private static List<String> texts(JsonValue.Arr list) {
    return list.items().stream().map(v -> ((JsonValue.Str) v).value()).toList();
  }

  private static Advice advise(Case one) {
    List<Problem> problems = new ArrayList<>();
    FlatAnswers flat = FlatAnswers.of(bank, FlatReader.read(one.facts(), problems));
    assertEquals(List.of(), problems);
    assertEquals(List.of(), flat.problems());
    return book.advise(flat.answers());
  }

  @ParameterizedTest
  @MethodSource("cases")
  void comesOutAsExpected(Case one) {
    Advice advice = advise(one);
    List<String> wrong = new ArrayList<>();
    leads(one, advice, wrong);
    suggests(one, advice, wrong);
    warns(one, advice, wrong);
    assertEquals(List.of(), wrong);
  }

  /** Every primary one is strong, and one of them holds the most points apart from settings. */
  private static void leads(Case one, Advice advice, List<String> wrong) {
    int most = 0;
    int mostOfPrimary = 0;
    for (Standing standing : advice.suggestions()) {
      boolean primary = one.names("primary").contains(standing.approach().id());
      if (primary && standing.status() == Standing.Status.STRONG) {
        mostOfPrimary = Math.max(mostOfPrimary, standing.points());
      }
      if (!standing.approach().id().equals("SET")) {
        most = Math.max(most, standing.points());
      }
    }
    for (String primary : one.names("primary")) {
      if (find(advice, primary).map(s -> s.status() != Standing.Status.STRONG).orElse(true)) {
        wrong.add("not strong: " + describe(advice, primary));
      }
    }
    if (mostOfPrimary < most) {
      wrong.add("another leads with " + most + " points");
    }
  }

  private static void suggests(Case one, Advice advice, List<String> wrong) {
    List<String> suggested = advice.suggestions().stream().map(s -> s.approach().id()).toList();
    for (String also : one.names("also")) {
      if (!suggested.contains(also)) {
        wrong.add("not suggested: " + describe(advice, also));
      }
    }
    List<String> lawful = new ArrayList<>(one.names("primary"));
    lawful.addAll(one.names("also"));
    lawful.addAll(one.names("optional"));
    for (String id : suggested) {
      if (!lawful.contains(id)) {
        wrong.add("suggested beyond the list: " + describe(advice, id));
      }
      if (one.names("avoid").contains(id) || one.names("mustNot").contains(id)) {
        wrong.add("suggested though to be avoided: " + describe(advice, id));
      }
    }
  }

  private static void warns(Case one, Advice advice, List<String> wrong) {
    List<String> raised =
        Stream.concat(advice.stops().stream(), advice.cautions().stream())
            .map(w -> w.caution().code() + " " + w.cautionClass().code())
            .toList();
    for (JsonValue caution : ((JsonValue.Arr) one.expected().member("cautions").get()).items()) {
      JsonValue.Obj wanted = (JsonValue.Obj) caution;
      String name = text(wanted, "code") + " " + text(wanted, "severity");
      if (!raised.contains(name)) {
        wrong.add("no caution: " + name);
      }
    }
    List<String> stops = advice.stops().stream().map(w -> w.caution().code()).sorted().toList();
    if (!stops.equals(one.names("stop").stream().sorted().toList())) {
      wrong.add("stops: " + stops);
    }
  }

  private static Optional<Standing> find(Advice advice, String approach) {
    return advice.standings().stream().filter(s -> s.approach().id().equals(approach)).findFirst();
  }

  private static String describe(Advice advice, String approach) {
    return find(advice, approach)
        .map(
            s ->
                approach
                    + " "
                    + s.status()
                    + " "
                    + s.points()
                    + s.inFavour().stream().map(f -> " +" + f.rule().key()).toList()
                    + s.against().stream().map(f -> " -" + f.rule().key()).toList()
                    + s.ruledOutBy().stream().map(f -> " out " + f.rule().key()).toList())
        .orElse(approach);
  }
}
