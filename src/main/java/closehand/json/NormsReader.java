package closehand.json;

import closehand.bank.Problem;
import closehand.measure.norms.CentileTable;
import closehand.measure.norms.Group;
import closehand.measure.norms.MeanTable;
import closehand.measure.norms.Norms;
import closehand.measure.norms.Origin;
import closehand.measure.norms.Strength;
import closehand.measure.norms.ThumbReach;
import closehand.measure.norms.Unit;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads the tables of what is usual. */
public final class NormsReader {
  private static final String EMBEDDED = "/question-banks/norms/norms.json";
  private static final int GROUP_CELLS = 4;

  private final List<Problem> problems;

  private NormsReader(List<Problem> problems) {
    this.problems = problems;
  }

  /** The tables that travel with the program. */
  public static Norms embedded() throws IOException {
    List<Problem> problems = new ArrayList<>();
    try (InputStream in = NormsReader.class.getResourceAsStream(EMBEDDED)) {
      byte[] bytes = in == null ? new byte[0] : in.readAllBytes();
      return read("norms.json", bytes, problems)
          .orElseThrow(() -> new IllegalStateException("the embedded norms cannot be read"));
    }
  }

  /**
   * Reads a file of tables.
   *
   * @param problems receives whatever is wrong
   * @return the tables, or empty if anything is wrong
   */
  public static Optional<Norms> read(String file, byte[] bytes, List<Problem> problems) {
    int before = problems.size();
    Optional<Norms> norms =
        JsonReader.read(file, bytes, problems)
            .flatMap(v -> ObjectReading.of(v, problems))
            .map(new NormsReader(problems)::norms);
    return problems.size() > before ? Optional.empty() : norms;
  }

  private Norms norms(ObjectReading object) {
    List<MeanTable> means = new ArrayList<>();
    List<CentileTable> centiles = new ArrayList<>();
    for (JsonValue one : items(object.required("means"))) {
      ObjectReading.of(one, problems).ifPresent(o -> means.add(meanTable(o)));
    }
    for (JsonValue one : items(object.required("centiles"))) {
      ObjectReading.of(one, problems).ifPresent(o -> centiles.add(centileTable(o)));
    }
    // Kept for people who read the file; nothing is worked out from it yet.
    object.optional("handSizes");
    ThumbReach thumb =
        object
            .required("thumbReach")
            .flatMap(v -> ObjectReading.of(v, problems))
            .map(this::thumb)
            .orElse(new ThumbReach(0, 0, 0, 0, 0, "", ""));
    object.finish();
    return new Norms(means, centiles, thumb);
  }

  private ThumbReach thumb(ObjectReading object) {
    ThumbReach thumb =
        new ThumbReach(
            number(object, "proximalShare"),
            number(object, "distalShare"),
            number(object, "withShiftShare"),
            number(object, "bendDegrees"),
            number(object, "turnDegrees"),
            object.text("source"),
            object.text("status"));
    object.finish();
    return thumb;
  }

  private Origin origin(ObjectReading object) {
    String strength = object.text("measure");
    String unit = object.text("unit");
    String status = object.text("status");
    if (status.contains("from memory")) {
      wrong(object, "status", "A table from memory is not used.", "Confirm it by its paper first.");
    }
    return new Origin(
        object.text("id"),
        named(object, "measure", List.of(Strength.values()), Strength::code, strength)
            .orElse(Strength.GRIP),
        named(object, "unit", List.of(Unit.values()), Unit::code, unit).orElse(Unit.KILOGRAM),
        object.text("source"),
        status,
        object.text("people"));
  }

  private MeanTable meanTable(ObjectReading object) {
    Origin origin = origin(object);
    List<MeanTable.Row> rows = new ArrayList<>();
    for (JsonValue one : items(object.required("rows"))) {
      List<JsonValue> cells = items(Optional.of(one));
      group(cells, one)
          .ifPresent(
              g -> {
                double mean = positive(cells, GROUP_CELLS, one);
                OptionalDouble spread =
                    cells.size() > GROUP_CELLS + 1
                        ? OptionalDouble.of(positive(cells, GROUP_CELLS + 1, one))
                        : OptionalDouble.empty();
                rows.add(new MeanTable.Row(g, mean, spread));
              });
    }
    object.finish();
    return new MeanTable(origin, rows);
  }

  private CentileTable centileTable(ObjectReading object) {
    Origin origin = origin(object);
    List<Integer> centiles = new ArrayList<>();
    for (JsonValue one : items(object.required("centiles"))) {
      centiles.add(one instanceof JsonValue.Num number ? (int) number.value() : 0);
    }
    if (!centiles.contains(50)) {
      wrong(object, "centiles", "The middle, 50, is missing.", "Add the values of centile 50.");
      centiles.add(50);
    }
    List<CentileTable.Row> rows = new ArrayList<>();
    for (JsonValue one : items(object.required("rows"))) {
      List<JsonValue> cells = items(Optional.of(one));
      group(cells, one).ifPresent(g -> rows.add(centileRow(g, cells, centiles.size(), one)));
    }
    object.finish();
    return new CentileTable(origin, centiles, rows);
  }

  private CentileTable.Row centileRow(
      Group group, List<JsonValue> cells, int count, JsonValue row) {
    List<Double> values = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double value = positive(cells, GROUP_CELLS + i, row);
      if (i > 0 && value <= values.get(i - 1)) {
        problems.add(
            Problem.error(row.where(), "not-rising", "Centiles must rise.", "Check this row."));
      }
      values.add(value);
    }
    return new CentileTable.Row(group, values);
  }

  private Optional<Group> group(List<JsonValue> cells, JsonValue row) {
    if (cells.size() <= GROUP_CELLS
        || !(cells.get(0) instanceof JsonValue.Str sex)
        || !(cells.get(1) instanceof JsonValue.Str hand)
        || !(cells.get(2) instanceof JsonValue.Num least)
        || !(cells.get(3) instanceof JsonValue.Num most)) {
      problems.add(
          Problem.error(
              row.where(),
              "norm-row",
              "A row is sex, hand, youngest age, oldest age and its figures.",
              "Copy the form of a neighbour."));
      return Optional.empty();
    }
    Optional<Group.Sex> of = name(List.of(Group.Sex.values()), sex);
    Optional<Group.Hand> with = name(List.of(Group.Hand.values()), hand);
    return of.isPresent() && with.isPresent()
        ? Optional.of(new Group(of.get(), with.get(), (int) least.value(), (int) most.value()))
        : Optional.empty();
  }

  private <T extends Enum<T>> Optional<T> name(List<T> all, JsonValue.Str text) {
    for (T one : all) {
      if (one.name().toLowerCase(Locale.ROOT).equals(text.value())) {
        return Optional.of(one);
      }
    }
    problems.add(
        Problem.error(
            text.where(), "norm-group", "This group is not known.", "Use one of " + all + "."));
    return Optional.empty();
  }

  private <T> Optional<T> named(
      ObjectReading object,
      String member,
      List<T> all,
      java.util.function.Function<T, String> code,
      String text) {
    for (T one : all) {
      if (code.apply(one).equals(text)) {
        return Optional.of(one);
      }
    }
    List<String> codes = all.stream().map(code).toList();
    wrong(object, member, "This name is not known.", "Use one of " + codes + ".");
    return Optional.empty();
  }

  private double number(ObjectReading object, String name) {
    JsonValue value = object.required(name).orElse(null);
    if (value instanceof JsonValue.Num number && number.value() > 0) {
      return number.value();
    }
    wrong(object, name, "This must be a number above 0.", "Give the figure.");
    return 1;
  }

  private double positive(List<JsonValue> cells, int place, JsonValue row) {
    if (place < cells.size()
        && cells.get(place) instanceof JsonValue.Num number
        && number.value() > 0) {
      return number.value();
    }
    problems.add(
        Problem.error(
            row.where(), "norm-figure", "A figure is missing or not above 0.", "Check this row."));
    return 1;
  }

  private void wrong(ObjectReading object, String member, String what, String mend) {
    problems.add(Problem.error(object.where(member), "norm-table", what, mend));
  }

  private List<JsonValue> items(Optional<JsonValue> value) {
    if (value.isPresent() && value.get() instanceof JsonValue.Arr list) {
      return list.items();
    }
    value.ifPresent(
        v ->
            problems.add(
                Problem.error(v.where(), "wrong-type", "A list is needed.", "Write [ ... ].")));
    return List.of();
  }
}
