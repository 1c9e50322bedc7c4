package closehand.measure.practice;

import closehand.measure.practice.Sheet.Job;
import closehand.measure.practice.Sheet.Pair;
import closehand.measure.practice.Sheet.Place;
import closehand.measure.practice.Sheet.Target;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** An invented panel of twelve cells in three rows, with twelve actions on it. */
public final class SomeSheet {
  /** What the cells send. */
  public static final String KEYS = "abcdefghijkl";

  private SomeSheet() {}

  /** Twelve cells, twelve actions. */
  public static Sheet twelve() {
    List<Target> targets = new ArrayList<>();
    List<Job> jobs = new ArrayList<>();
    for (int i = 0; i < KEYS.length(); i++) {
      targets.add(
          new Target(
              "in" + i,
              "cell " + (i + 1),
              "right thumb",
              new Place("panel", i % 4, i / 4),
              Signal.key(KEYS.substring(i, i + 1))));
      jobs.add(new Job("act" + i, "Action " + i, "in" + i, i + 1.0, i % 4, Optional.empty()));
    }
    return new Sheet(targets, jobs, List.of(new Pair("act0", "act1"), new Pair("act2", "act7")));
  }

  /** The same with a second meaning on the first cell. */
  public static Sheet layered() {
    Sheet plain = twelve();
    List<Job> jobs = new ArrayList<>(plain.jobs());
    jobs.add(new Job("far", "Far away", "in0", 2, 0, Optional.of("the foot switch")));
    return new Sheet(plain.targets(), jobs, plain.pairs());
  }
}
