package closehand.bench;

import closehand.bank.Problem;
import closehand.interview.Answers;
import closehand.interview.FlatAnswers;
import closehand.interview.Interview;
import closehand.interview.Provenance;
import closehand.json.FlatReader;
import closehand.json.JsonReader;
import closehand.rules.RuleBook;
import closehand.rules.Variation;
import closehand.rules.Variations;
import closehand.rules.next.Asking;
import closehand.rules.next.Proposal;
import closehand.rules.proof.Advisory;
import closehand.rules.proof.DeepCheck;
import closehand.rules.why.Settled;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** What would turn the advice, what to ask next, and a deep check, warm, on the core bank. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(2)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
public class WhyBenchmark {
  private final RuleBook rules = RuleBook.of(RulesBenchmark.readBank());
  private Answers whole = Answers.NONE;
  private Interview screened = interview(Answers.NONE);

  private Interview interview(Answers answers) {
    return Interview.reopen(
        rules.bank().questionnaire(),
        answers,
        Interview.Route.BRIEF,
        Provenance.By.CLINICIAN,
        Optional.empty());
  }

  /** Reads a whole case, and the same with nothing but consent and warning signs answered. */
  @Setup
  public void read() throws IOException {
    List<Problem> problems = new ArrayList<>();
    byte[] bytes = Files.readAllBytes(Path.of("examples", "quiet-heron", "answers.json"));
    whole =
        FlatAnswers.of(
                rules.bank(),
                FlatReader.read(JsonReader.read("heron", bytes, problems).orElseThrow(), problems))
            .answers();
    Answers signs = Answers.NONE;
    for (var entry : whole.byFact().entrySet()) {
      String section =
          rules.bank().questionnaire().questionOf(entry.getKey()).orElseThrow().section();
      if (section.equals("CON") || section.equals("SAF")) {
        signs = signs.with(entry.getKey(), entry.getValue());
      }
    }
    screened = interview(signs);
  }

  RuleBook rules() {
    return rules;
  }

  Answers whole() {
    return whole;
  }

  Interview screened() {
    return screened;
  }

  /** Every single other answer of a whole case. */
  @Benchmark
  public List<Variation> singleChanges() {
    return Variations.of(rules, whole).singles();
  }

  /** The likeliest 5,000 pairs of other answers. */
  @Benchmark
  public Variations.Pairs pairs() {
    return Variations.of(rules, whole).pairs(5_000);
  }

  /** The few answers that decide a whole case. */
  @Benchmark
  public Optional<Settled> settledBy() {
    return Settled.of(rules, whole);
  }

  /** The next question once the warning signs are cleared, where most is open. */
  @Benchmark
  public Proposal nextQuestion() {
    return Asking.next(rules, screened);
  }

  /** A deep check of the core bank. */
  @Benchmark
  public List<Advisory> deepCheck() {
    return DeepCheck.of(rules.bank());
  }
}
