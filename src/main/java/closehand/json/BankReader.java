package closehand.json;

import closehand.bank.Bank;
import closehand.bank.Caution;
import closehand.bank.GameProfile;
import closehand.bank.Problem;
import closehand.bank.Questionnaire;
import closehand.bank.Rule;
import closehand.bank.Source;
import closehand.bank.Term;
import closehand.bank.Where;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.zip.CRC32;

/**
 * Reads a whole bank. {@code bank.json} names the rule themes and games; the other files have fixed
 * names.
 *
 * <p>Everything that is wrong with the form of any file is collected. What is wrong with the
 * meaning, such as a rule that speaks of an unknown fact, is for the bank check to find.
 */
public final class BankReader {
  private final BankFiles files;
  private final List<Problem> problems = new ArrayList<>();
  private final CRC32 hash = new CRC32();
  private final Extent extent;

  private BankReader(BankFiles files, Extent extent) {
    this.files = files;
    this.extent = extent;
  }

  /** How much of a bank is wanted. */
  public enum Extent {
    /** Everything, with the examples of the rules. */
    WHOLE,
    /** What an interview needs: the rules without their examples. */
    FOR_USE
  }

  /**
   * What came of reading.
   *
   * @param bank the bank; empty if a file that everything needs is missing or unreadable
   * @param problems all that is wrong, in file order, each once
   */
  public record Result(Optional<Bank> bank, List<Problem> problems) {}

  /**
   * Reads the bank.
   *
   * @throws IOException if a file is there but cannot be read
   */
  public static Result read(BankFiles files, Extent extent) throws IOException {
    BankReader reader = new BankReader(files, extent);
    Optional<Bank> bank = reader.bank();
    return new Result(bank, reader.problems.stream().distinct().toList());
  }

  private Optional<Bank> bank() throws IOException {
    Optional<ObjectReading> index =
        document("bank.json").flatMap(d -> ObjectReading.of(d, problems));
    if (index.isEmpty()) {
      return Optional.empty();
    }
    ObjectReading in = index.get();
    if (!in.text("format").equals("closehand-bank")) {
      problems.add(
          Problem.error(
              in.where(),
              "wrong-type",
              "This is not a question bank.",
              "\"format\" must be \"closehand-bank\"."));
      return Optional.empty();
    }
    if (in.whole("schema", 1, Integer.MAX_VALUE) > 1) {
      problems.add(
          Problem.error(
              in.where(),
              "newer-version",
              "This bank was made for a newer version of the program.",
              "Update the program."));
      return Optional.empty();
    }
    in.optionalText("title");
    List<String> themeFiles = in.texts("rules");
    List<String> gameFiles = in.texts("games");
    in.finish();

    Optional<Questionnaire> questionnaire =
        document("questionnaire.json").flatMap(d -> QuestionnaireReader.read(d, problems));
    List<Term> terms = new ArrayList<>();
    document("terms.json").ifPresent(d -> terms.addAll(termsOf(d)));
    Themes themes = new Themes();
    for (String file : themeFiles) {
      document("rules/" + file + ".json").ifPresent(d -> theme(d, terms, themes));
    }
    ApproachesReader approaches = new ApproachesReader(problems);
    document("approaches.json").ifPresent(approaches::read);
    List<GameProfile> games = new ArrayList<>();
    for (String file : gameFiles) {
      document("games/" + file + ".json")
          .flatMap(new GamesReader(problems)::read)
          .ifPresent(games::add);
    }
    CautionsReader texts = new CautionsReader(problems);
    List<Caution> cautions = document("cautions.json").map(texts::cautions).orElse(List.of());
    List<Source> sources = document("sources.json").map(texts::sources).orElse(List.of());
    String fingerprint = Long.toHexString(hash.getValue());
    return questionnaire.map(
        q ->
            new Bank(
                q,
                terms,
                themes.rules,
                themes.titles,
                approaches.approaches(),
                approaches.costClasses(),
                approaches.mixes(),
                games,
                cautions,
                sources,
                fingerprint));
  }

  private static final class Themes {
    private final List<Rule> rules = new ArrayList<>();
    private final Map<String, String> titles = new LinkedHashMap<>();
  }

  private List<Term> termsOf(JsonValue document) {
    Optional<ObjectReading> in = ObjectReading.of(document, problems);
    if (in.isEmpty()) {
      return List.of();
    }
    List<Term> terms = new TermsReader(problems).read(in.get().list("terms"));
    in.get().finish();
    return terms;
  }

  private void theme(JsonValue document, List<Term> terms, Themes themes) {
    Optional<ObjectReading> reading = ObjectReading.of(document, problems);
    if (reading.isEmpty()) {
      return;
    }
    ObjectReading in = reading.get();
    String theme = in.text("theme");
    themes.titles.put(theme, in.text("title"));
    terms.addAll(new TermsReader(problems).read(in.optionalList("terms")));
    themes.rules.addAll(
        new RulesReader(theme, extent == Extent.WHOLE, problems).read(in.list("rules")));
    in.finish();
  }

  private Optional<JsonValue> document(String name) throws IOException {
    Optional<byte[]> bytes = files.bytes(name);
    if (bytes.isEmpty()) {
      problems.add(
          Problem.error(
              Where.file(files.displayName(name)),
              "missing-file",
              "This file of the bank is missing.",
              ""));
      return Optional.empty();
    }
    hash.update(bytes.get());
    return JsonReader.read(files.displayName(name), bytes.get(), problems);
  }
}
