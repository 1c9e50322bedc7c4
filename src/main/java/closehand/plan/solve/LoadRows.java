package closehand.plan.solve;

import closehand.plan.problem.Effector;
import closehand.plan.problem.Equipment;
import closehand.plan.problem.Input;
import closehand.plan.problem.Layer;
import closehand.plan.problem.Load;
import closehand.plan.problem.PlanPricer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Limits on what an effector does in a minute, one row each: the sum of the amounts of the chosen
 * placements stays at or below the limit. A row is hard, or each unit above costs a price (amber).
 * Rows that no plan can reach are left out.
 */
final class LoadRows {
  /** The price of a unit above a hard limit. */
  static final long HARD = Long.MAX_VALUE;

  /** For each row its limit. */
  final long[] limit;

  /** For each row what a unit above costs in 1/1024 point, or {@link #HARD}. */
  final long[] price;

  /** For each placement the rows it adds to. */
  final int[][] row;

  /** For each placement how much it adds to them. */
  final long[][] amount;

  private record Row(String effector, boolean presses, long limit, long price) {}

  LoadRows(Tables tables) {
    List<Row> rows = rows(tables);
    Map<String, String> effectorOf = new HashMap<>();
    Equipment equipment = tables.problem.equipment();
    for (Input input : equipment.inputs()) {
      effectorOf.put(input.id(), input.effector());
    }
    Map<String, String> holderOf = new HashMap<>();
    for (Layer layer : equipment.layers()) {
      holderOf.put(layer.id(), effectorOf.getOrDefault(layer.button(), ""));
    }
    long[][] dense = new long[tables.placement.length][rows.size()];
    long[] most = new long[rows.size()];
    for (int a = 0; a < tables.actions; a++) {
      long[] mostHere = new long[rows.size()];
      for (int p = tables.first[a]; p < tables.first[a + 1]; p++) {
        String worker = effectorOf.getOrDefault(tables.placement[p].slot().input(), "");
        Load work = tables.rules.load(tables.placement[p]);
        String holder = tables.placement[p].slot().layer().map(holderOf::get).orElse("");
        Load held = tables.rules.layerLoad(tables.placement[p]);
        for (int r = 0; r < rows.size(); r++) {
          dense[p][r] = amount(rows.get(r), worker, work) + amount(rows.get(r), holder, held);
          mostHere[r] = Math.max(mostHere[r], dense[p][r]);
        }
      }
      for (int r = 0; r < most.length; r++) {
        most[r] += mostHere[r];
      }
    }
    int[] kept =
        java.util.stream.IntStream.range(0, most.length)
            .filter(r -> most[r] > rows.get(r).limit())
            .toArray();
    limit = new long[kept.length];
    price = new long[kept.length];
    for (int k = 0; k < kept.length; k++) {
      limit[k] = rows.get(kept[k]).limit();
      price[k] = rows.get(kept[k]).price();
    }
    row = new int[dense.length][];
    amount = new long[dense.length][];
    for (int p = 0; p < dense.length; p++) {
      long[] amounts = dense[p];
      row[p] =
          java.util.stream.IntStream.range(0, kept.length)
              .filter(k -> amounts[kept[k]] > 0)
              .toArray();
      amount[p] = new long[row[p].length];
      for (int k = 0; k < row[p].length; k++) {
        amount[p][k] = amounts[kept[row[p][k]]];
      }
    }
  }

  private static List<Row> rows(Tables tables) {
    List<Row> rows = new ArrayList<>();
    for (Effector e : tables.problem.body().effectors()) {
      rows.add(new Row(e.id(), true, e.limit().pressesTenths(), HARD));
      rows.add(new Row(e.id(), false, e.limit().heldMillis(), HARD));
      e.amber()
          .ifPresent(
              a -> {
                rows.add(new Row(e.id(), true, a.from().pressesTenths(), PlanPricer.pressParts(a)));
                rows.add(new Row(e.id(), false, a.from().heldMillis(), PlanPricer.heldParts(a)));
              });
    }
    return rows.stream().filter(r -> r.price() > 0).toList();
  }

  private static long amount(Row row, String effector, Load load) {
    if (!row.effector().equals(effector)) {
      return 0;
    }
    return row.presses() ? load.pressesTenths() : load.heldMillis();
  }

  int count() {
    return limit.length;
  }

  /** Whether nothing is sold above a limit, so that every plan costs whole points. */
  boolean isAllHard() {
    return java.util.Arrays.stream(price).allMatch(p -> p == HARD);
  }

  boolean isHard(int r) {
    return price[r] == HARD;
  }
}
