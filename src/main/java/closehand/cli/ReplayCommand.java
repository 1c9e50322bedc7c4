package closehand.cli;

import closehand.bank.Bank;
import closehand.bank.Caution;
import closehand.bank.Problem;
import closehand.bank.Where;
import closehand.casefile.Seal;
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
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

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
   * @return 65 where a bank or any case could not be read, 66 where there is no case
   */
  int run(List<String> cases, Optional<Path> oldBank, Optional<Path> newBank, boolean json)
      throws IOException {
    Optional<Bank> old = bank(oldBank);
    Optional<Bank> now = old.isEmpty() ? old : bank(newBank);
    if (old.isEmpty() || now.isEmpty()) {
      return ExitCode.BAD_DATA;
    }
    Banks banks = Banks.of(old.get(), now.get());
    ReplayCases gathered = ReplayCases.of(cases, store.store());
    Commands.report(gathered.leftOut(), surroundings);
    gathered.leftOut().forEach(p -> skipped.add(p.where().file()));
    List<ReplayCases.One> files = gathered.files();
    if (files.isEmpty()) {
      surroundings
          .error()
          .println(
              "There is no case here to replay: a folder is searched for files that end in .json or"
                  + " .sealed.");
      return skipped.isEmpty() ? ExitCode.NO_INPUT : ExitCode.BAD_DATA;
    }
    if (json) {
      try (MoveWriter writer = new MoveWriter(surroundings.output())) {
        each(files, banks, writer::write);
        writer.end(compared, moved, skipped);
      }
    } else {
      each(
          files,
          banks,
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

  /** What is done with a case that moved. */
  @FunctionalInterface
  private interface Told {
    void tell(String name, Move move) throws IOException;
  }

  /** What came of one case: how it stands under both banks, or what is wrong with it. */
  private record Came(Path file, Optional<Move> move, List<Problem> problems) {}

  /** A handful of cases at a time on all processors, told in order; no more are kept. */
  private void each(List<ReplayCases.One> files, Banks banks, Told told) throws IOException {
    for (int from = 0; from < files.size(); from += AT_ONCE) {
      List<ReplayCases.One> some = files.subList(from, Math.min(files.size(), from + AT_ONCE));
      List<Came> came = some.parallelStream().map(banks::came).toList();
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

  /**
   * Two banks to judge by.
   *
   * @param same whether both take the same answers, so that answers are matched once for both
   */
  private record Banks(RuleBook before, RuleBook after, boolean same) {
    static Banks of(Bank old, Bank now) {
      return new Banks(
          RuleBook.of(old),
          RuleBook.of(now),
          old.questionnaire().takesTheSameAnswers(now.questionnaire())
              && codes(old).equals(codes(now)));
    }

    private static List<String> codes(Bank bank) {
      return bank.cautions().stream().map(Caution::code).sorted().toList();
    }

    Came came(ReplayCases.One one) {
      List<Problem> problems = new ArrayList<>();
      Optional<AnyAnswers> read = read(one, problems);
      Optional<Answers> old = read.flatMap(r -> r.matching(before.bank(), problems));
      // What the new bank no longer asks is left out; that is part of what is compared.
      Optional<Answers> now =
          same ? old : read.flatMap(r -> r.matching(after.bank(), new ArrayList<>()));
      if (old.isEmpty() || now.isEmpty() || Problem.anyError(problems)) {
        return new Came(one.file(), Optional.empty(), problems);
      }
      Move move = new Move(Standpoint.of(before, old.get()), Standpoint.of(after, now.get()));
      return new Came(one.file(), Optional.of(move), List.of());
    }
  }

  private static Optional<AnyAnswers> read(ReplayCases.One one, List<Problem> problems) {
    String name = one.file().toString();
    if (Files.exists(one.file(), LinkOption.NOFOLLOW_LINKS) && !one.isPlain()) {
      // Reading a pipe could wait for ever, and a link can lead anywhere.
      return refused(name, "not-a-file", "This is not a file.", "", problems);
    }
    try (InputStream in = Files.newInputStream(one.file(), one.options())) {
      byte[] bytes = in.readNBytes(JsonReader.MAXIMUM_BYTES + 1);
      return Seal.isSealed(bytes)
          ? refused(
              name,
              "sealed",
              "This case is sealed, so it is left out.",
              "closehand unlock makes a copy that opens.",
              problems)
          : AnyAnswers.read(name, bytes, problems);
    } catch (IOException e) {
      return refused(name, "unreadable", "This file cannot be read.", "", problems);
    }
  }

  private static Optional<AnyAnswers> refused(
      String file, String code, String what, String mend, List<Problem> problems) {
    problems.add(Problem.error(Where.file(file), code, what, mend));
    return Optional.empty();
  }
}
