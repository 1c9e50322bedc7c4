package closehand.measure.practice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * Prompts and presses that were logged elsewhere, for inputs that never arrive in a terminal. The
 * same rules hold as at the keyboard: what comes again by itself counts once, and a round that was
 * disturbed counts for nothing.
 *
 * @param entries in the order of their times
 */
public record LoggedPresses(List<Entry> entries) {
  /** Copies the list. */
  public LoggedPresses {
    entries = List.copyOf(entries);
  }

  /** One line of a log. Times are milliseconds on one clock. */
  public sealed interface Entry {
    /** When. */
    long millis();

    /** A round begins. */
    record Round(long millis) implements Entry {}

    /** An action was asked for. */
    record Prompt(long millis, String action) implements Entry {}

    /** An input was pressed; empty for one that is not part of the plan. */
    record Press(long millis, Optional<String> input) implements Entry {}

    /** Something got in between: nothing of this round counts. */
    record Lost(long millis) implements Entry {}
  }

  /** What came of each prompt; rounds that were lost are left out. */
  public List<Try> tries(Sheet sheet) {
    Folding folding = new Folding(sheet);
    entries.forEach(folding::take);
    folding.round();
    return folding.kept;
  }

  /** How many rounds counted for nothing. */
  public int lostRounds() {
    int lost = 0;
    boolean open = true;
    for (Entry entry : entries) {
      if (entry instanceof Entry.Round) {
        open = true;
      } else if (entry instanceof Entry.Lost && open) {
        lost++;
        open = false;
      }
    }
    return lost;
  }

  private static final class Folding {
    private final Sheet sheet;
    private final List<Try> kept = new ArrayList<>();
    private final List<Try> going = new ArrayList<>();
    private Optional<Entry.Prompt> asked = Optional.empty();
    private Optional<String> last = Optional.empty();
    private long lastAt = Long.MIN_VALUE / 2;
    private int repeats;
    private boolean lost;
    private int round;
    private boolean any;

    Folding(Sheet sheet) {
      this.sheet = sheet;
    }

    void take(Entry entry) {
      if (entry instanceof Entry.Round) {
        round();
      } else if (entry instanceof Entry.Lost) {
        lost = true;
      } else if (entry instanceof Entry.Prompt prompt) {
        unanswered();
        asked = Optional.of(prompt);
        any = true;
      } else if (entry instanceof Entry.Press press) {
        press(press);
      }
    }

    /** The round is over; what was asked and not answered is a miss. */
    void round() {
      unanswered();
      if (!lost) {
        kept.addAll(going);
      }
      going.clear();
      round += any ? 1 : 0;
      any = false;
      lost = false;
    }

    private void unanswered() {
      asked.ifPresent(a -> going.add(judged(a, Optional.empty(), OptionalLong.empty())));
      asked = Optional.empty();
    }

    private void press(Entry.Press press) {
      boolean again =
          press.input().isPresent()
              && last.equals(press.input())
              && press.millis() - lastAt < Practising.SAME_KEY_MILLIS;
      repeats = again ? repeats + 1 : 0;
      boolean bounced = repeats == 1 && press.millis() - lastAt < Practising.BOUNCE_MILLIS;
      last = press.input();
      lastAt = press.millis();
      if (again) {
        mark(bounced);
        return;
      }
      if (asked.isEmpty()) {
        return;
      }
      long millis = press.millis() - asked.get().millis();
      if (millis >= Practising.TOO_SOON_MILLIS) {
        going.add(judged(asked.get(), press.input(), OptionalLong.of(millis)));
      }
      asked = Optional.empty();
    }

    private void mark(boolean bounced) {
      if (!going.isEmpty()) {
        Try one = going.get(going.size() - 1);
        Try.Marks more = new Try.Marks(!bounced, bounced, false);
        going.set(going.size() - 1, one.with(one.marks().and(more)));
      }
    }

    private Try judged(Entry.Prompt prompt, Optional<String> input, OptionalLong millis) {
      Sheet.Target wanted = sheet.target(prompt.action());
      boolean hit = input.filter(wanted.input()::equals).isPresent();
      Optional<Sheet.Target> other =
          hit
              ? Optional.empty()
              : input.flatMap(
                  i -> sheet.targets().stream().filter(t -> t.input().equals(i)).findFirst());
      return new Try(
          round,
          prompt.action(),
          wanted.input(),
          hit,
          hit ? millis : OptionalLong.empty(),
          other.map(Sheet.Target::input),
          other.filter(o -> o.place().isBeside(wanted.place())).isPresent(),
          Try.Marks.NONE);
    }
  }
}
