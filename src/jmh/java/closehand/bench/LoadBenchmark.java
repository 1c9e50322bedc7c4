package closehand.bench;

import closehand.strain.Body;
import closehand.strain.Exertion;
import closehand.strain.PlanLoad;
import closehand.strain.PlayTime;
import closehand.strain.Use;
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
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The load of an invented plan of 40 actions on 12 body parts, warm. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(2)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
public class LoadBenchmark {
  private static final int ACTIONS = 40;
  private static final List<String> PARTS =
      List.of(
          "R.T", "R.I", "R.M", "R.R", "R.L", "L.T", "L.I", "L.M", "L.foot", "R.foot", "head",
          "voice");

  private final List<Use> uses = plan();
  private final Body body = new Body(Map.of("R.T", 0.2), Map.of("R.T", 40.0, "R.I", 45.0));
  private final PlayTime time = new PlayTime(1.5, 4);

  private static List<Use> plan() {
    List<Use> uses = new ArrayList<>();
    for (int i = 0; i < ACTIONS; i++) {
      String name = "action " + i;
      Exertion press =
          new Exertion(PARTS.get(i % PARTS.size()), 0.1 + 0.01 * (i % 7), 1 + i % 11, 0.2 + i % 3);
      uses.add(new Use(name, name, i % 3 == 0 ? Use.Kind.TAP : Use.Kind.HOLD, press, List.of()));
    }
    return List.copyOf(uses);
  }

  /** Every body part, both hands, all methods, cautions. */
  @Benchmark
  public PlanLoad loadOfFortyActions() {
    return PlanLoad.of("an invented game", uses, body, time);
  }
}
