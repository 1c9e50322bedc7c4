package closehand.bench;

import closehand.bank.Bank;
import closehand.bank.BankCheck;
import closehand.bank.Problem;
import closehand.json.BankReader;
import closehand.json.EmbeddedBank;
import closehand.rules.Examples;
import java.io.IOException;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Reading and checking the core bank, warm. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(2)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
public class BankBenchmark {

  /** Reads what an interview needs. */
  @Benchmark
  public Bank readForUse() throws IOException {
    return BankReader.read(new EmbeddedBank(), BankReader.Extent.FOR_USE).bank().orElseThrow();
  }

  /** Reads everything and checks names, comparisons, values and effects. */
  @Benchmark
  public List<Problem> readAndCheck() throws IOException {
    return BankCheck.check(BankReader.read(new EmbeddedBank()).bank().orElseThrow());
  }

  /** The same, and every example of every rule. */
  @Benchmark
  public List<Problem> readCheckAndRunExamples() throws IOException {
    Bank bank = BankReader.read(new EmbeddedBank()).bank().orElseThrow();
    BankCheck.check(bank);
    return Examples.check(bank);
  }
}
