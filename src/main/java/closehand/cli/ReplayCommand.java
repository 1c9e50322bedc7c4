package closehand.cli;

import closehand.bank.Bank;
import closehand.bank.Problem;
import closehand.bank.Where;
import closehand.casefile.CaseName;
import closehand.interview.Answers;
import closehand.json.AnyAnswers;
import closehand.json.JsonReader;
import closehand.json.MoveWriter;
import closehand.report.Glyphs;
import closehand.report.MoveText;
import closehand.rules.RuleBook;
import closehand.rules.proof.Move;
import closehand.rules.proof.Standpoint;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Judges many cases by two banks and tells what moves. Keeps a handful of cases at a time. */
final class ReplayCommand {
  private static final int PROGRESS_EVERY = 1_000;
  private static final int AT_ONCE = 64;

  private final Surroundings surroundings;
  private final Cases store;
  private final Glyphs glyphs;
  private final List<String> skipped = new ArrayList<>();
  private final int[] counts = new int[Move.In.values().length];
  private int compared;
  private int moved;

  ReplayCommand(Surroundings surroundings, Cases store, boolean ascii) {
    this.surroundings = surroundings;
    this.store = store;
    this.glyphs = ascii || surroundings.plainAscii() ? Glyphs.ASCII : Glyphs.UNICODE;
  }

  /**
   * Compares.
   *
   * @return 65 where a bank or any case could not be read
   */
  int run(List<String> cases, Optional<Path> oldBank, Optional<Path> newBank, boolean json)
      throws IOException {
    Optional<Bank> old = bank(oldBank);
    Optional<Bank> now = old.isEmpty() ? old : bank(newBank);
    if (old.isEmpty() || now.isEmpty()) {
      return ExitCode.BAD_DATA;
    }
    RuleBook before = RuleBook.of(old.get());
    RuleBook after = RuleBook.of(now.get());
    List<Path> files = files(cases);
    if (json) {
      try (MoveWriter writer = new MoveWriter(surroundings.output())) {
        each(files, before, after, writer::write);
        writer.end(compared, moved, skipped);
      }
    } else {
      each(
          files,
          before,
          after,
          (name, move) -> surroundings.output().print(MoveText.of(name, move, glyphs)));
      surroundings.output().print(MoveText.summary(compared, moved, skipped.size(), counts));
    }
    surroundings.output().flush();
    return skipped.isEmpty() ? ExitCode.DONE : ExitCode.BAD_DATA;
  }

  private Optional<Bank> bank(Optional<Path> folder) throws IOException {
    BankSource.Loaded loaded = BankSource.load(folder);
    if (loaded.bank().isEmpty()) {
      Commands.report(loaded.problems(), surroundings);
    }
    return loaded.bank();
  }

  /** Files as they are, saved cases by name, and every JSON file of a folder. */
  private List<Path> files(List<String> cases) throws IOException {
    List<Path> files = new ArrayList<>();
    for (String one : cases) {
      Path path = Path.of(one);
      if (Files.isDirectory(path)) {
        try (Stream<Path> inside = Files.walk(path)) {
          inside
              .filter(f -> f.toString().endsWith(".json") && Files.isRegularFile(f))
              .sorted()
              .forEach(files::add);
        }
      } else {
        boolean named = CaseName.isLawful(one) && !Files.exists(path);
        files.add(named ? store.store().path(one) : path);
      }
    }
    return files;
  }

  /** What is done with a case that moved. */
  @FunctionalInterface
  private interface Told {
    void tell(String name, Move move) throws IOException;
  }

  /** What came of one case: how it stands under both banks, or what is wrong with it. */
  private record Came(Path file, Optional<Move> move, List<Problem> problems) {}

  /** A handful of cases at a time on all processors, told in order; no more are kept. */
  private void each(List<Path> files, RuleBook before, RuleBook after, Told told)
      throws IOException {
    for (int from = 0; from < files.size(); from += AT_ONCE) {
      List<Path> some = files.subList(from, Math.min(files.size(), from + AT_ONCE));
      List<Came> came = some.parallelStream().map(f -> came(f, before, after)).toList();
      for (Came one : came) {
        count(one, told);
      }
      int done = from + some.size();
      if (done / PROGRESS_EVERY > from / PROGRESS_EVERY) {
        surroundings.error().println(done + " cases ...");
      }
    }
  }

  private void count(Came one, Told told) throws IOException {
    String name = one.file().toString();
    if (one.move().isEmpty()) {
      Commands.report(one.problems(), surroundings);
      skipped.add(name);
      return;
    }
    compared++;
    Move move = one.move().get();
    move.in().forEach(in -> counts[in.ordinal()]++);
    if (!move.in().isEmpty()) {
      moved++;
      told.tell(name, move);
    }
  }

  private static Came came(Path file, RuleBook before, RuleBook after) {
    List<Problem> problems = new ArrayList<>();
    Optional<AnyAnswers> read = read(file, problems);
    Optional<Answers> old = read.flatMap(r -> r.matching(before.bank(), problems));
    // What the new bank no longer asks is left out; that is part of what is compared.
    Optional<Answers> now = read.flatMap(r -> r.matching(after.bank(), new ArrayList<>()));
    if (old.isEmpty() || now.isEmpty() || Problem.anyError(problems)) {
      return new Came(file, Optional.empty(), problems);
    }
    Move move = new Move(Standpoint.of(before, old.get()), Standpoint.of(after, now.get()));
    return new Came(file, Optional.of(move), List.of());
  }

  private static Optional<AnyAnswers> read(Path file, List<Problem> problems) {
    if (Files.exists(file) && !Files.isRegularFile(file)) {
      // Reading a pipe could wait for ever.
      problems.add(
          Problem.error(Where.file(file.toString()), "not-a-file", "This is not a file.", ""));
      return Optional.empty();
    }
    try (InputStream in = Files.newInputStream(file)) {
      byte[] bytes = in.readNBytes(JsonReader.MAXIMUM_BYTES + 1);
      return AnyAnswers.read(file.toString(), bytes, problems);
    } catch (IOException e) {
      problems.add(
          Problem.error(
              Where.file(file.toString()), "unreadable", "This file cannot be read.", ""));
      return Optional.empty();
    }
  }
}
