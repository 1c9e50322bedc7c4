package closehand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Approach;
import closehand.bank.Bank;
import closehand.bank.Caution;
import closehand.bank.CautionClass;
import closehand.json.BankReader;
import closehand.json.EmbeddedBank;
import closehand.json.JsonReader;
import closehand.json.JsonValue;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The player's page is one sheet, and everything that belongs on it is there: for each invented
 * player of the gold cases and of the examples.
 */
class OneSheetTest {
  private static final int MOST_LINES = 80;
  private static final int COLUMNS = 72;
  private static final Pattern IDEA = Pattern.compile("(?m)^(\\d)\\. ");
  private static final Pattern WHOM =
      Pattern.compile(
          "(?i)clinician|doctor|nurse|health team|provider|organiser|emergency number|medical"
              + " (advice|help)|clinic|surgeon|whoever|helper");

  @TempDir static Path folder;
  private static Bank bank;

  @BeforeAll
  static void read() throws IOException {
    bank = BankReader.read(new EmbeddedBank(), BankReader.Extent.FOR_USE).bank().orElseThrow();
  }

  /** Every answers file, by the name of its player. */
  static Stream<String> players() throws IOException {
    List<String> files = new ArrayList<>();
    String gold = Files.readString(Path.of("src/test/resources/gold-cases.json"));
    JsonValue.Arr cases = (JsonValue.Arr) member(parsed(gold), "cases");
    for (int i = 0; i < cases.items().size(); i++) {
      Path file = folder.resolve("gold-" + (i + 1) + ".json");
      Files.writeString(file, written(member(cases.items().get(i), "facts")));
      files.add(file.toString());
    }
    for (String name : List.of("amber-otter", "paper-boat", "quiet-heron", "silver-birch")) {
      files.add("examples/" + name + "/answers.json");
    }
    return files.stream();
  }

  @ParameterizedTest
  @MethodSource("players")
  void thePageFitsOneSheet(String answers) {
    for (String page : List.of(page(answers), page(answers, "--ascii"))) {
      assertTrue(page.lines().count() <= MOST_LINES, page);
      assertTrue(page.lines().allMatch(l -> l.codePointCount(0, l.length()) <= COLUMNS), page);
    }
  }

  @ParameterizedTest
  @MethodSource("players")
  void thePageHoldsEveryPart(String answers) throws IOException {
    String page = page(answers);
    String flat = flat(page);
    JsonValue facts = parsed(Files.readString(Path.of(answers)));
    Map<String, Boolean> parts = new LinkedHashMap<>();
    parts.put("the goal in the player's words", flat.contains(flat(string(facts, "goal.main"))));
    parts.put("settings to try first", flat.contains("SETTINGS FIRST. "));
    parts.put("how to start", flat.contains("HOW TO START. "));
    parts.put("the length of a session", flat.contains("HOW LONG, AND WHEN TO PAUSE. "));
    parts.put("breaks", flat.contains("One session: ") && flat.contains("Then rest for "));
    parts.put("signs to ease off", flat.contains("EASE OFF WHEN YOU NOTICE. Pain up by 2"));
    parts.put("what to do then", flat.contains("anything sudden: get medical advice."));
    parts.put("whom to ask", flat.contains("WHOM TO ASK. "));
    parts.put("what it is not", flat.contains("not medical advice. Your health team's advice"));
    parts.put("bank and date", flat.contains(", version 1.0.0. 25 November 2026."));
    parts.put("the page says at most once that it may change", count(flat, "Provisional") <= 1);
    boolean ideas = !flat.contains("Nothing yet.");
    parts.put("what was found", !ideas || flat.contains("WHAT WE FOUND. What counts most"));
    parts.put("two ideas told", !ideas || IDEA.matcher(page).results().count() >= 2);
    parts.forEach((part, there) -> assertTrue(there, () -> part + " in\n" + page));
  }

  @ParameterizedTest
  @MethodSource("players")
  void everyIdeaHasItsReasonsAndWhatItTakes(String answers) throws IOException {
    String page = page(answers);
    JsonValue together = advice(answers);
    String clinician = flat(summary(answers, "clinician"));
    List<JsonValue> suggested = ((JsonValue.Arr) member(together, "suggestions")).items();
    for (String idea : told(page)) {
      Approach approach =
          bank.approaches().stream()
              .filter(a -> idea.startsWith(a.words().name() + "."))
              .findFirst()
              .orElseThrow(() -> new AssertionError(idea));
      assertTrue(idea.contains("Suggested because: "), idea);
      assertTrue(idea.contains(approach.words().borrow()), idea);
      assertTrue(idea.contains("Set-up: ") && idea.contains("Cost: "), idea);
      JsonValue standing =
          suggested.stream()
              .filter(s -> string(s, "approach").equals(approach.id()))
              .findFirst()
              .orElseThrow();
      boolean against = !((JsonValue.Arr) member(standing, "against")).items().isEmpty();
      assertEquals(against, idea.contains("Against it: "), idea);
      assertEquals(
          changeIsKnown(clinician, approach), idea.contains("This would change if "), idea);
    }
  }

  @ParameterizedTest
  @MethodSource("players")
  void everyIdeaThatIsRuledOutHasItsReason(String answers) throws IOException {
    String flat = flat(page(answers));
    int from = flat.indexOf("RULED OUT FOR NOW");
    String part = from < 0 ? "" : flat.substring(from, flat.indexOf("HOW TO START"));
    assertTrue(!part.contains("the reasons are on"), part);
    for (JsonValue out : ((JsonValue.Arr) member(advice(answers), "excluded")).items()) {
      String name = bank.approach(string(out, "approach")).orElseThrow().words().brief();
      String thing = name.replaceFirst(", (left|right)$", "");
      assertTrue(
          part.toLowerCase(Locale.ROOT).contains(thing.toLowerCase(Locale.ROOT)),
          name + " in " + part);
    }
  }

  @ParameterizedTest
  @MethodSource("players")
  void everyStopAndEveryCautionIsThere(String answers) throws IOException {
    String flat = flat(page(answers));
    JsonValue together = advice(answers);
    for (String list : List.of("stops", "cautions")) {
      for (JsonValue warning : ((JsonValue.Arr) member(together, list)).items()) {
        CautionClass kind = CautionClass.of(string(warning, "class")).orElseThrow();
        Caution caution = bank.caution(string(warning, "code")).orElseThrow().as(kind);
        if (kind == CautionClass.NOTE) {
          continue;
        }
        boolean brief = !caution.brief().isEmpty() && flat.contains(caution.brief());
        boolean full = flat.contains(caution.message()) && flat.contains(caution.contact());
        assertTrue(brief || full, caution.code() + " in\n" + flat);
      }
    }
  }

  /** The few words of a caution name somebody to turn to, and no fuller text is needed for that. */
  @Test
  void theFewWordsOfEveryCautionSayWhomToAsk() {
    for (Caution usual : bank.cautions()) {
      for (CautionClass kind : usual.classes()) {
        Caution caution = usual.as(kind);
        boolean shown = kind == CautionClass.CARE || kind == CautionClass.STOP_PART;
        if (shown) {
          assertTrue(!caution.brief().isEmpty(), caution.code());
          assertTrue(WHOM.matcher(caution.brief()).find(), caution.brief());
          assertTrue(caution.brief().length() < 420, caution.brief());
        }
      }
    }
  }

  private static boolean changeIsKnown(String clinician, Approach approach) {
    int start = clinician.indexOf(" [" + approach.id() + "]: ");
    int next = clinician.indexOf("]: ", start + approach.id().length() + 5);
    String entry = clinician.substring(start, next < 0 ? clinician.length() : next);
    return entry.contains("This would change if: ");
  }

  /** The ideas that are told, each as one line of text. */
  private static List<String> told(String page) {
    int from = page.indexOf("WHAT TO TRY, IN THIS ORDER");
    int to = page.indexOf("HOW TO START");
    String rest = page.substring(from, to);
    List<String> ideas = new ArrayList<>();
    Matcher number = IDEA.matcher(rest);
    List<Integer> starts = new ArrayList<>();
    while (number.find()) {
      starts.add(number.end());
    }
    for (int i = 0; i < starts.size(); i++) {
      String idea = rest.substring(starts.get(i)).split("\n(?=\\S|\n)", 2)[0];
      ideas.add(flat(idea));
    }
    assertTrue(!ideas.isEmpty() || page.contains("Nothing yet."), rest);
    return ideas;
  }

  private static String page(String answers, String... more) {
    return summary(answers, "player", more);
  }

  private static String summary(String answers, String reader, String... more) {
    List<String> words = new ArrayList<>(List.of("summary", "--answers", answers));
    words.addAll(List.of("--for", reader, "--date", "2026-11-25"));
    words.addAll(List.of(more));
    World world = World.run("", words.toArray(String[]::new));
    assertEquals(0, world.code(), world.error());
    return world.output();
  }

  private static JsonValue advice(String answers) {
    return parsed(World.run("", "advise", "--json", "--answers", answers).output());
  }

  private static JsonValue parsed(String json) {
    return JsonReader.read("test", json.getBytes(StandardCharsets.UTF_8), new ArrayList<>())
        .orElseThrow();
  }

  /** The value as JSON text; what these files hold needs no escapes but for quotation marks. */
  private static String written(JsonValue value) {
    if (value instanceof JsonValue.Obj object) {
      return object.members().stream()
          .map(m -> quoted(m.name()) + ":" + written(m.value()))
          .collect(Collectors.joining(",", "{", "}"));
    }
    if (value instanceof JsonValue.Arr list) {
      return list.items().stream()
          .map(OneSheetTest::written)
          .collect(Collectors.joining(",", "[", "]"));
    }
    if (value instanceof JsonValue.Str text) {
      return quoted(text.value());
    }
    if (value instanceof JsonValue.Num number) {
      return number.text();
    }
    return value instanceof JsonValue.Bool flag ? Boolean.toString(flag.value()) : "null";
  }

  private static String quoted(String words) {
    return "\"" + words.replace("\"", "\\\"") + "\"";
  }

  private static JsonValue member(JsonValue value, String name) {
    return ((JsonValue.Obj) value).member(name).orElseThrow();
  }

  private static String string(JsonValue value, String name) {
    return ((JsonValue.Str) member(value, name)).value();
  }

  private static String flat(String words) {
    return words.replaceAll("\\s+", " ").strip();
  }

  private static long count(String words, String word) {
    return Pattern.compile(word).matcher(words).results().count();
  }
}
