package closehand.json;

import closehand.bank.Approach;
import closehand.bank.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads the approaches with their inputs, the classes of cost and the usual mixes. */
final class ApproachesReader {
  private static final Set<String> SIDES = Set.of("L", "R", "both", "none");

  /** Nothing here is measured in more: millimetres, newtons, milliseconds, minutes, seconds. */
  private static final double LARGEST = 100_000;

  private static final double LEAST_EFFORT = 0.25;
  private static final double MOST_EFFORT = 6;

  private final List<Problem> problems;
  private final List<Approach> approaches = new ArrayList<>();
  private final List<Approach.CostClass> costClasses = new ArrayList<>();
  private final List<Approach.Mix> mixes = new ArrayList<>();

  ApproachesReader(List<Problem> problems) {
    this.problems = problems;
  }

  void read(JsonValue value) {
    Optional<ObjectReading> reading = ObjectReading.of(value, problems);
    if (reading.isEmpty()) {
      return;
    }
    ObjectReading in = reading.get();
    each(in.list("costClasses"), this::costClass);
    each(in.list("approaches"), a -> approaches.add(approach(a)));
    each(
        in.optionalList("mixes"),
        m -> mixes.add(new Approach.Mix(m.texts("approaches"), m.text("text"))));
    in.finish();
  }

  private void costClass(ObjectReading in) {
    String code = in.text("code");
    if (!code.isEmpty() && costClasses.stream().anyMatch(c -> c.code().equals(code))) {
      problems.add(
          Problem.error(
              in.where("code"),
              "duplicate-id",
              "The class of cost \"" + code + "\" stands here for the second time.",
              "Choose another code."));
    }
    costClasses.add(new Approach.CostClass(code, in.text("text")));
  }

  List<Approach> approaches() {
    return approaches;
  }

  List<Approach.CostClass> costClasses() {
    return costClasses;
  }

  List<Approach.Mix> mixes() {
    return mixes;
  }

  private interface Each {
    void read(ObjectReading in);
  }

  private void each(List<JsonValue> values, Each each) {
    for (JsonValue value : values) {
      Optional<ObjectReading> in = ObjectReading.of(value, problems);
      if (in.isPresent()) {
        each.read(in.get());
        in.get().finish();
      }
    }
  }

  private Approach approach(ObjectReading in) {
    String id = in.text("id");
    Approach.Words words = words(in);
    List<Approach.Input> inputs = new ArrayList<>();
    each(in.list("inputs"), i -> inputs.add(input(i)));
    Approach approach =
        new Approach(
            id,
            words,
            inputs,
            span(in, "forceNewtons"),
            span(in, "travelMillimetres"),
            in.optionalNumber("steadinessMillimetres", 0, LARGEST),
            span(in, "latencyMilliseconds"),
            span(in, "setupMinutes"),
            in.texts("costClass"),
            in.flag("needsMount", false),
            in.flag("clinicianFirst", false),
            side(in),
            in.text("family"),
            in.texts("basis"),
            in.where());
    return approach;
  }

  private static Approach.Words words(ObjectReading in) {
    return new Approach.Words(
        in.text("name"),
        in.text("short"),
        in.text("summary"),
        in.text("offers"),
        in.text("effectorsText"),
        in.text("reach"),
        in.text("steadiness"),
        in.text("goodAt"),
        in.text("badAt"),
        in.text("strain"),
        in.text("contraIndications"),
        in.text("mounting"),
        in.text("borrow"),
        in.text("firstTry"));
  }

  private String side(ObjectReading in) {
    String side = in.text("sides");
    if (!side.isEmpty() && !SIDES.contains(side)) {
      problems.add(
          Problem.error(
              in.where("sides"), "unknown-value", "\"sides\" is L, R, both or none.", ""));
    }
    return side;
  }

  private Approach.Input input(ObjectReading in) {
    in.optional("position");
    return new Approach.Input(
        in.text("id"),
        in.text("kind"),
        in.text("name"),
        in.texts("effectors"),
        in.texts("does"),
        in.optionalNumber("effort", LEAST_EFFORT, MOST_EFFORT).orElse(1),
        in.optionalText("hid").orElse(""),
        in.where());
  }

  private Approach.Span span(ObjectReading in, String name) {
    Optional<ObjectReading> value = in.required(name).flatMap(v -> ObjectReading.of(v, problems));
    if (value.isEmpty()) {
      return new Approach.Span(0, 0, "");
    }
    return span(value.get());
  }

  static Approach.Span span(ObjectReading in) {
    double minimum = in.optionalNumber("min", 0, LARGEST).orElse(0);
    double maximum = in.optionalNumber("max", 0, LARGEST).orElse(minimum);
    String text = in.optionalText("text").orElse("");
    in.finish();
    if (minimum > maximum) {
      in.problems()
          .add(
              Problem.error(
                  in.where("min"), "out-of-range", "\"min\" is above \"max\".", "Swap them?"));
      return new Approach.Span(maximum, minimum, text);
    }
    return new Approach.Span(minimum, maximum, text);
  }
}
