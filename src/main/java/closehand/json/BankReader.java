package closehand.json;

import closehand.bank.Approach;
import closehand.bank.Bank;
import closehand.bank.Catalogue;
import closehand.bank.Caution;
import closehand.bank.Field;
import closehand.bank.GameProfile;
import closehand.bank.PlanFigures;
import closehand.bank.Problem;
import closehand.bank.Questionnaire;
import closehand.bank.Rule;
import closehand.bank.Source;
import closehand.bank.TaskBook;
import closehand.bank.Term;
import closehand.bank.Where;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import java.util.zip.CRC32;

/**
 * Reads a whole bank. {@code bank.json} names the rule themes and games; the other files have fixed
 * names.
 *
 * <p>Everything that is wrong with the form of any file is collected. What is wrong with the
 * meaning, such as a rule that speaks of an unknown fact, is for the bank check to find.
 */
public final class BankReader {
  private static final String QUESTIONNAIRE = "questionnaire.json";
  private static final String PLAN_FIGURES = "control-plan.json";
  private static final String TASKS = "tasks.json";
  private static final Questionnaire NO_QUESTIONS =
      new Questionnaire("", "", "", List.of(), Map.of());

  private final BankFiles files;
  private final Extent extent;
  private final List<Problem> problems = new ArrayList<>();
  private final Map<String, Optional<JsonValue>> documents = new LinkedHashMap<>();
  private final Losses losses = new Losses(problems);
  private final List<Term> terms = new ArrayList<>();
  private final List<Rule> rules = new ArrayList<>();
  private final Map<String, String> themes = new LinkedHashMap<>();
  private final List<GameProfile> games = new ArrayList<>();
  private final CRC32 hash = new CRC32();

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
   * @param bank the bank; empty if anything is wrong with the form of its files
   * @param problems all that is wrong with the form, in file order, each once
   * @param draft what could be read all the same, to find more mistakes in the same pass
   */
  public record Result(Optional<Bank> bank, List<Problem> problems, BankDraft draft) {}

  /**
   * Reads the whole bank.
   *
   * @throws IOException if a file is there but cannot be read
   */
  public static Result read(BankFiles files) throws IOException {
    return read(files, Extent.WHOLE);
  }

  /**
   * Reads as much of the bank as is wanted.
   *
   * @throws IOException if a file is there but cannot be read
   */
  public static Result read(BankFiles files, Extent extent) throws IOException {
    BankReader reader = new BankReader(files, extent);
    Optional<BankIndex> index =
        reader
            .document("bank.json", "Every bank has this file.")
            .flatMap(d -> BankIndex.read(d, reader.problems));
    Optional<Bank> read =
        index.isPresent() ? Optional.of(reader.bank(index.get())) : Optional.empty();
    BankDraft draft =
        new BankDraft(read, reader.losses.catalogues(), reader.problems, reader.documents);
    boolean sound = !Problem.anyError(reader.problems);
    return new Result(sound ? read : Optional.empty(), draft.form(), draft);
  }

  private Bank bank(BankIndex index) throws IOException {
    String questions = display(QUESTIONNAIRE);
    Optional<byte[]> bytes = bytes(QUESTIONNAIRE, "Every bank has this file.");
    Optional<QuestionnaireAhead> ahead = bytes.map(q -> QuestionnaireAhead.begin(questions, q));
    documents.put(questions, Optional.empty());
    fixed("terms").ifPresent(this::terms);
    for (BankIndex.Part part : index.themes()) {
      document("rules/" + part.name() + ".json", named(part)).ifPresent(d -> theme(d, part));
      losses.of(Catalogue.TERMS, display("rules/" + part.name() + ".json"), Stream.empty());
    }
    losses.of(Catalogue.TERMS, display("terms.json"), terms.stream().map(Term::id));
    ApproachesReader approaches = new ApproachesReader(problems);
    fixed("approaches").ifPresent(approaches::read);
    losses.of(
        Catalogue.APPROACHES,
        display("approaches.json"),
        Stream.concat(
            approaches.approaches().stream().map(Approach::id),
            approaches.costClasses().stream().map(Approach.CostClass::code)));
    for (BankIndex.Part part : index.games()) {
      document("games/" + part.name() + ".json", named(part)).ifPresent(d -> game(d, part));
      losses.of(Catalogue.GAMES, display("games/" + part.name() + ".json"), names(games).stream());
    }
    losses.of(Catalogue.GAMES, display("bank.json"), Stream.empty());
    losses.of(Catalogue.TERMS, display("bank.json"), Stream.empty());
    CautionsReader texts = new CautionsReader(problems);
    List<Caution> cautions = fixed("cautions").map(texts::cautions).orElse(List.of());
    losses.of(Catalogue.CAUTIONS, display("cautions.json"), cautions.stream().map(Caution::code));
    List<Source> sources = fixed("sources").map(texts::sources).orElse(List.of());
    losses.of(Catalogue.SOURCES, display("sources.json"), sources.stream().map(Source::id));
    Optional<PlanFigures> figures = planFigures();
    Optional<TaskBook> tasks = tasks();
    return new Bank(
        questionnaire(ahead.map(QuestionnaireAhead::join)),
        terms,
        rules,
        themes,
        approaches.approaches(),
        approaches.costClasses(),
        approaches.mixes(),
        games,
        cautions,
        sources,
        figures,
        tasks,
        Long.toHexString(hash.getValue()));
  }

  private Questionnaire questionnaire(Optional<QuestionnaireAhead> ahead) {
    String questions = display(QUESTIONNAIRE);
    ahead.ifPresent(a -> problems.addAll(a.problems()));
    documents.put(questions, ahead.flatMap(QuestionnaireAhead::document));
    if (ahead.flatMap(QuestionnaireAhead::document).isEmpty()) {
      losses.unread(questions);
    }
    Questionnaire questionnaire =
        ahead.flatMap(QuestionnaireAhead::questionnaire).orElse(NO_QUESTIONS);
    losses.ofQuestions(
        questions,
        questionnaire.questions().stream().flatMap(q -> q.fields().stream()).map(Field::fact));
    return questionnaire;
  }

  /** A bank may do without: it then makes no plans. */
  private Optional<PlanFigures> planFigures() throws IOException {
    if (files.bytes(PLAN_FIGURES).isEmpty()) {
      return Optional.empty();
    }
    return document(PLAN_FIGURES, "")
        .flatMap(d -> ObjectReading.of(d, problems))
        .map(new PlanFiguresReader(problems)::read);
  }

  /** A bank may do without: nothing is then measured. */
  private Optional<TaskBook> tasks() throws IOException {
    if (files.bytes(TASKS).isEmpty()) {
      return Optional.empty();
    }
    return document(TASKS, "")
        .flatMap(d -> ObjectReading.of(d, problems))
        .map(new TaskBookReader(problems)::read);
  }

  private static List<String> names(List<GameProfile> games) {
    List<String> names = new ArrayList<>();
    for (GameProfile game : games) {
      names.add(game.genre());
      game.actions().forEach(a -> names.add(a.id()));
    }
    return names;
  }

  private String named(BankIndex.Part part) {
    return "It is named in " + part.where() + ".";
  }

  private void terms(JsonValue document) {
    Optional<ObjectReading> in = ObjectReading.of(document, problems);
    if (in.isPresent()) {
      terms.addAll(new TermsReader(problems).read(in.get().list("terms")));
      in.get().finish();
    }
  }

  private void theme(JsonValue document, BankIndex.Part part) {
    Optional<ObjectReading> reading = ObjectReading.of(document, problems);
    if (reading.isEmpty()) {
      return;
    }
    ObjectReading in = reading.get();
    String theme = in.text("theme");
    sameName(in, "theme", theme, part);
    themes.put(theme, in.text("title"));
    terms.addAll(new TermsReader(problems).read(in.optionalList("terms")));
    boolean withExamples = extent == Extent.WHOLE;
    rules.addAll(new RulesReader(theme, withExamples, problems).read(in.list("rules")));
    in.finish();
  }

  private void game(JsonValue document, BankIndex.Part part) {
    Optional<ObjectReading> in = ObjectReading.of(document, problems);
    if (in.isPresent()) {
      GameProfile game = new GamesReader(problems).read(in.get());
      sameName(in.get(), "genre", game.genre(), part);
      games.add(game);
    }
  }

  private void sameName(ObjectReading in, String member, String name, BankIndex.Part part) {
    if (!name.isBlank() && !name.equals(part.name())) {
      problems.add(
          Problem.error(
              in.where(member),
              "wrong-name",
              "\"" + member + "\" is not the name of this file.",
              "Write \"" + part.name() + "\", or rename the file."));
    }
  }

  private Optional<JsonValue> fixed(String name) throws IOException {
    return document(name + ".json", "Every bank has this file.");
  }

  private String display(String name) {
    return files.displayName(name);
  }

  private Optional<byte[]> bytes(String name, String mendIfMissing) throws IOException {
    Optional<byte[]> bytes = files.bytes(name);
    if (bytes.isEmpty()) {
      problems.add(
          Problem.error(
              Where.file(display(name)),
              "missing-file",
              "This file of the bank is missing.",
              mendIfMissing));
    }
    bytes.ifPresent(hash::update);
    return bytes;
  }

  private Optional<JsonValue> document(String name, String mendIfMissing) throws IOException {
    Optional<JsonValue> document =
        bytes(name, mendIfMissing).flatMap(b -> JsonReader.read(display(name), b, problems));
    documents.put(display(name), document);
    if (document.isEmpty()) {
      losses.unread(display(name));
    }
    return document;
  }
}
