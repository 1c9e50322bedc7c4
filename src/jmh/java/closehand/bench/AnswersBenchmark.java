package closehand.bench;

import closehand.bank.Problem;
import closehand.interview.Answers;
import closehand.interview.FlatAnswers;
import closehand.json.AdviceWriter;
import closehand.json.FlatReader;
import closehand.json.JsonReader;
import closehand.rules.RuleBook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
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

/** From the bytes of one answers file to the JSON of its advice: ten thousand of these are a batch. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(2)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
public class AnswersBenchmark {
  /** An example player. */
  @Param({"quiet-heron", "paper-boat"})
  public String player = "quiet-heron";

  private RuleBook rules = RuleBook.of(RulesBenchmark.readBank());
  private byte[] bytes = new byte[0];

  /** Reads the file. */
  @Setup
  public void read() throws IOException {
    bytes = Files.readAllBytes(Path.of("examples", player, "answers.json"));
  }

  /** Reads, matches, judges and writes. */
  @Benchmark
  public String adviseOneFile() {
    List<Problem> problems = new ArrayList<>();
    Answers answers =
        FlatAnswers.of(
                rules.bank(), FlatReader.read(JsonReader.read(player, bytes, problems).orElseThrow(), problems))
            .answers();
    return AdviceWriter.write(rules.advise(answers), Map.of());
  }
}
