package closehand.screen;

import closehand.bank.Field;
import closehand.interview.Interview;
import closehand.interview.Overview;
import closehand.interview.Prompt;
import closehand.screen.frame.Role;
import closehand.screen.view.Block;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The places of one hand in a question that asks the same of every finger. A question without hands
 * is one grid as a whole.
 */
final class Grid {
  /** From this many places on a grid helps; fewer are asked one after the other. */
  private static final int LEAST = 4;

  private Grid() {}

  /** The places around the current field, itself included; nothing where a grid would not help. */
  static List<Cell> around(Interview interview, Prompt prompt) {
    List<Cell> cells = new ArrayList<>();
    if (prompt.question().fields().size() < LEAST) {
      return cells;
    }
    String hand = hand(prompt.field());
    for (Overview.Row row : interview.rows(prompt.question())) {
      if (belongs(row, prompt, hand)) {
        boolean answered = row.state() == Overview.State.ANSWERED;
        cells.add(new Cell(row.field().fact(), row.field().label(), answered ? row.words() : ""));
      }
    }
    return cells.size() < LEAST ? List.of() : cells;
  }

  private static boolean belongs(Overview.Row row, Prompt prompt, String hand) {
    return row.field().type().getClass().equals(prompt.field().type().getClass())
        && row.state() != Overview.State.SET_ASIDE
        && row.state() != Overview.State.FOR_CLINICIAN
        && hand(row.field()).equals(hand);
  }

  /**
   * The part of a fact that names the side, such as L in digit.L.press.T; empty where none does.
   */
  private static String hand(Field field) {
    String[] parts = field.fact().split("\\.", -1);
    boolean side = parts.length > 2 && (parts[1].equals("L") || parts[1].equals("R"));
    return side ? parts[1] : "";
  }

  static void show(Shown.Builder screen, List<Cell> cells, String fact) {
    for (Cell cell : cells) {
      boolean now = cell.fact().equals(fact);
      String words = cell.words().isEmpty() ? "not asked yet" : cell.words();
      String line = "  " + cell.label() + ": " + words + (now ? " (asked now)" : "");
      screen.add(Block.laid(line, now ? Role.STRONG : Role.PLAIN));
    }
  }

  /** The place before or after, if there is one. */
  static Optional<String> beside(List<Cell> cells, String fact, int step) {
    for (int i = 0; i < cells.size(); i++) {
      int other = i + step;
      if (cells.get(i).fact().equals(fact) && other >= 0 && other < cells.size()) {
        return Optional.of(cells.get(other).fact());
      }
    }
    return Optional.empty();
  }
}
