package closehand.report;

import closehand.bank.Effectors;
import closehand.plan.ControlPlan;
import closehand.plan.ControlPlan.Assignment;
import closehand.plan.Planned;
import closehand.plan.supply.SuppliedInput;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * A control plan drawn in plain characters, device by device: side panels and keys as grids, sticks
 * and direction pads as crosses, everything else as a list of labels.
 *
 * <p>The drawing says nothing that the list of the plan does not say; it is for those who can see
 * it.
 */
public final class PlanDrawing {
  private static final Set<String> DIRECTIONS = Set.of("up", "left", "down", "right");
  private static final Map<String, String> PAD =
      Map.of("padUp", "up", "padLeft", "left", "padDown", "down", "padRight", "right");

  private final Set<String> withinReach;
  private final int width;
  private final Glyphs glyphs;
  private final List<String> lines = new ArrayList<>();

  private PlanDrawing(Set<String> withinReach, int width, Glyphs glyphs) {
    this.withinReach = Set.copyOf(withinReach);
    this.width = width;
    this.glyphs = glyphs;
  }

  /**
   * The drawing.
   *
   * @param width columns, 40 or more
   */
  public static List<String> of(Planned planned, int width, Glyphs glyphs) {
    Set<String> within = new TreeSet<>();
    planned.supply().inputs().stream().map(SuppliedInput::input).forEach(within::add);
    return of(planned.plan(), within, width, glyphs);
  }

  /**
   * The drawing of a plan.
   *
   * @param withinReach ids of the inputs within the player's reach
   * @param width columns, 40 or more
   */
  static List<String> of(ControlPlan plan, Set<String> withinReach, int width, Glyphs glyphs) {
    PlanDrawing drawing = new PlanDrawing(withinReach, width, glyphs);
    Map<String, List<Assignment>> byDevice = new LinkedHashMap<>();
    plan.assignments()
        .forEach(a -> byDevice.computeIfAbsent(PlanLines.device(a), d -> new ArrayList<>()).add(a));
    byDevice.forEach(drawing::device);
    return List.copyOf(drawing.lines);
  }

  private void device(String name, List<Assignment> all) {
    if (!lines.isEmpty()) {
      lines.add("");
    }
    add(name + ":");
    toWriteDown(all);
    List<Assignment> cells = kind(all, "cell");
    List<Assignment> keys = kind(all, "key");
    if (!cells.isEmpty()) {
      grid(cells, List.of("A", "B", "C"), List.of("1", "2", "3", "4"), true);
      add("Column 1 is at the fingertip, 4 at the wrist; --- is out of reach.");
    }
    if (!keys.isEmpty()) {
      keyArea(keys);
    }
    Map<String, Map<String, Assignment>> crosses = new LinkedHashMap<>();
    List<Assignment> others = new ArrayList<>();
    for (Assignment one : all) {
      Optional<String> way = way(one);
      if (way.isPresent() && one.held().isEmpty()) {
        crosses.computeIfAbsent(cross(one), c -> new LinkedHashMap<>()).put(way.get(), one);
      } else if (!(isGrid(one) && one.held().isEmpty())) {
        others.add(one);
      }
    }
    crosses.values().forEach(this::cross);
    labels(others);
  }

  /** Phrases and sounds are the player's own; the drawing has room to write them down. */
  private void toWriteDown(List<Assignment> all) {
    if (!kind(all, "phrase").isEmpty()) {
      add("Choose short phrases that sound unlike each other, and write them in.");
    } else if (!kind(all, "sound").isEmpty()) {
      add("Choose sounds that come out the same each time, and write them in.");
    }
  }

  private static boolean isGrid(Assignment one) {
    return one.inputKind().equals("cell")
        || (one.inputKind().equals("key") && one.input().matches("[B-E]\\d\\d"));
  }

  private static List<Assignment> kind(List<Assignment> all, String kind) {
    return all.stream()
        .filter(a -> a.inputKind().equals(kind) && a.held().isEmpty())
        .filter(a -> !kind.equals("key") || isGrid(a))
        .toList();
  }

  private static Optional<String> way(Assignment one) {
    String after = one.input().substring(one.input().lastIndexOf('.') + 1);
    return DIRECTIONS.contains(after)
        ? Optional.of(after)
        : Optional.ofNullable(PAD.get(one.input()));
  }

  private static String cross(Assignment one) {
    return PAD.containsKey(one.input())
        ? "pad"
        : one.input().substring(0, one.input().lastIndexOf('.'));
  }

  /** Only the columns that are in use, so that names have room. */
  private void keyArea(List<Assignment> keys) {
    Set<String> columns = new TreeSet<>();
    Set<String> rows = new TreeSet<>(java.util.Comparator.reverseOrder());
    keys.forEach(
        k -> {
          rows.add(k.input().substring(0, 1));
          columns.add(k.input().substring(1));
        });
    grid(keys, List.copyOf(rows), List.copyOf(columns), false);
  }

  private void grid(
      List<Assignment> all, List<String> rows, List<String> columns, boolean reachShown) {
    int room = (width - 3) / columns.size() - 1;
    if (room < 7) {
      labels(all);
      return;
    }
    String edge = "  +" + ("-".repeat(room) + "+").repeat(columns.size());
    StringBuilder head = new StringBuilder("   ");
    columns.forEach(c -> head.append(Wrapped.padded(column(c), room + 1)));
    lines.add(head.toString().stripTrailing());
    for (String row : rows) {
      lines.add(edge);
      List<List<String>> cells = new ArrayList<>();
      for (String column : columns) {
        cells.add(cell(all, row + column, room, reachShown));
      }
      int height = cells.stream().mapToInt(List::size).max().orElse(1);
      for (int line = 0; line < height; line++) {
        StringBuilder text = new StringBuilder(line == 0 ? row + " |" : "  |");
        for (List<String> cell : cells) {
          text.append(Wrapped.padded(line < cell.size() ? cell.get(line) : "", room)).append('|');
        }
        lines.add(text.toString());
      }
    }
    lines.add(edge);
  }

  private static String column(String name) {
    return name.startsWith("0") ? name.substring(1) : name;
  }

  private List<String> cell(List<Assignment> all, String id, int room, boolean reachShown) {
    for (Assignment one : all) {
      if (one.input().equals(id)) {
        String letter = one.inputKind().equals("key") ? bare(one.inputName()) + " " : "";
        return Wrapped.lines(room, clean(letter + one.name()));
      }
    }
    boolean unreached = reachShown && !withinReach.contains(id);
    return List.of(unreached ? "-".repeat(Math.min(3, room)) : "");
  }

  /** The name of a key without the word. */
  private static String bare(String key) {
    return key.startsWith("key ") ? key.substring(4) + ":" : key + ":";
  }

  /** A cross: up above, left and right beside a middle, down below. */
  private void cross(Map<String, Assignment> ways) {
    String name = ways.values().iterator().next().inputName();
    int comma = name.indexOf(',');
    String what = name.startsWith("direction pad") ? "direction pad" : name;
    add((comma > 0 ? name.substring(0, comma) : what) + ":");
    int room = (width - 9) / 2;
    middle(ways.get("up"), room);
    List<String> left = side(ways.get("left"), room);
    List<String> right = side(ways.get("right"), room);
    for (int i = 0; i < Math.max(left.size(), right.size()); i++) {
      String one = i < left.size() ? left.get(i) : "";
      String other = i < right.size() ? right.get(i) : "";
      String mid = i == 0 ? " <- + -> " : "         ";
      lines.add((" ".repeat(Math.max(0, room - one.length())) + one + mid + other).stripTrailing());
    }
    middle(ways.get("down"), room);
  }

  private List<String> side(@org.jspecify.annotations.Nullable Assignment one, int room) {
    return one == null ? List.of("") : Wrapped.lines(room, clean(one.name()));
  }

  private void middle(@org.jspecify.annotations.Nullable Assignment one, int room) {
    if (one != null) {
      for (String line : Wrapped.lines(width, clean(one.name()))) {
        int before = Math.max(0, room + 4 - line.length() / 2);
        lines.add(" ".repeat(Math.min(before, Math.max(0, width - line.length()))) + line);
      }
    }
  }

  private void labels(List<Assignment> all) {
    int room = Math.min(30, (width - 6) / 2);
    for (Assignment one : all) {
      String label =
          one.held().map(h -> "hold " + h + " + ").orElse("") + one.inputName() + room(one);
      List<String> left = Wrapped.lines(room, clean(label));
      List<String> right =
          Wrapped.lines(
              width - room - 6, clean(one.name() + " (" + Effectors.words(one.effector()) + ")"));
      for (int i = 0; i < Math.max(left.size(), right.size()); i++) {
        String box = i < left.size() ? left.get(i) : "";
        String text = i < right.size() ? right.get(i) : "";
        lines.add(("[ " + Wrapped.padded(box, room) + " ] " + text).stripTrailing());
      }
    }
  }

  private static String room(Assignment one) {
    boolean own = one.inputKind().equals("phrase") || one.inputKind().equals("sound");
    return own ? ": _______________" : "";
  }

  private void add(String text) {
    lines.addAll(Wrapped.lines(width, clean(text)));
  }

  private String clean(String text) {
    return Clean.of(text, glyphs);
  }
}
