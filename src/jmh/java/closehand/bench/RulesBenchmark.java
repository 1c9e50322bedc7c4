package closehand.bench;

import closehand.bank.Bank;
import closehand.bank.Problem;
import closehand.interview.Answers;
import closehand.interview.FlatAnswers;
import closehand.json.BankReader;
import closehand.json.EmbeddedBank;
import closehand.json.FlatReader;
import closehand.json.JsonReader;
import closehand.rules.Advice;
import closehand.rules.RuleBook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** One judgement of a set of answers by all rules of the core bank, warm. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(2)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
public class RulesBenchmark {
  /** An example player, or {@code nothing} for an interview that has just begun. */
  @Param({"nothing", "quiet-heron"})
  public String player = "nothing";

  private RuleBook rules = RuleBook.of(readBank());
  private Answers answers = Answers.NONE;

  static Bank readBank() {
    try {
      return BankReader.read(new EmbeddedBank(), BankReader.Extent.FOR_USE).bank().orElseThrow();
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  /** Reads the player's answers. */
  @Setup
  public void read() throws IOException {
    if (!player.equals("nothing")) {
      List<Problem> problems = new ArrayList<>();
      byte[] bytes = Files.readAllBytes(Path.of("examples", player, "answers.json"));
      answers =
          FlatAnswers.of(
                  rules.bank(), FlatReader.read(JsonReader.read(player, bytes, problems).orElseThrow(), problems))
              .answers();
    }
  }

  /** Rules, points, cautions, standings, firmness. */
  @Benchmark
  public Advice adviseOnce() {
    return rules.advise(answers);
  }
}
