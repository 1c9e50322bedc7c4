package closehand.measure.practice;

import closehand.measure.practice.ButtonCheck.Arrived;
import closehand.measure.practice.ButtonCheck.Wanted;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a button check found against the plan, in plain words. */
public final class CheckWords {
  private final ButtonCheck check;
  private final List<String> lines = new ArrayList<>();

  private CheckWords(ButtonCheck check) {
    this.check = check;
  }

  /** One sentence or two about each thing to put right, or that nothing is. */
  public static List<String> of(ButtonCheck check) {
    CheckWords words = new CheckWords(check);
    words.dead();
    words.doubled();
    words.elsewhere();
    words.restless();
    if (words.lines.isEmpty()) {
      words.lines.add("Every input that was pressed arrived, each as itself.");
    }
    return words.lines;
  }

  private Optional<Signal> signal(Wanted input) {
    return Optional.ofNullable(check.arrived().get(input.input())).flatMap(Arrived::signal);
  }

  private void dead() {
    for (Wanted input : check.wanted()) {
      Arrived arrived = check.arrived().get(input.input());
      if (arrived != null && arrived.signal().isEmpty()) {
        lines.add(
            "Nothing comes from: "
                + input.name()
                + ". Look at its cable and its setting; some inputs, such as those of a game"
                + " controller, never arrive in a terminal.");
      }
    }
  }

  private void doubled() {
    Map<Signal, List<String>> by = new LinkedHashMap<>();
    for (Wanted input : check.wanted()) {
      signal(input).ifPresent(s -> by.computeIfAbsent(s, k -> new ArrayList<>()).add(input.name()));
    }
    by.forEach(
        (signal, names) -> {
          if (names.size() > 1) {
            lines.add(
                "These send the same, "
                    + signal.words()
                    + ": "
                    + String.join("; ", names)
                    + ". Give all but one of them another key.");
          }
        });
  }

  /** What sends something else than the plan says; two that send each other's are swapped. */
  private void elsewhere() {
    List<String> told = new ArrayList<>();
    for (Wanted input : check.wanted()) {
      Optional<Signal> came = signal(input);
      boolean other =
          came.isPresent() && input.expected().isPresent() && !came.equals(input.expected());
      if (!other || told.contains(input.input())) {
        continue;
      }
      Optional<Wanted> swapped =
          check.wanted().stream()
              .filter(w -> !w.equals(input) && w.expected().equals(came))
              .filter(w -> signal(w).equals(input.expected()))
              .findFirst();
      if (swapped.isPresent()) {
        told.add(swapped.get().input());
        lines.add("These two are swapped: " + input.name() + " and " + swapped.get().name() + ".");
      } else {
        lines.add(
            input.name()
                + " sends "
                + came.map(Signal::words).orElse("")
                + "; the plan has "
                + input.expected().map(Signal::words).orElse("")
                + ".");
      }
    }
  }

  private void restless() {
    for (Wanted input : check.wanted()) {
      Arrived arrived = check.arrived().get(input.input());
      if (arrived == null) {
        continue;
      }
      if (arrived.held()) {
        lines.add(
            input.name()
                + " came again and again. It was held, or it repeats by itself: a repeat-press"
                + " filter, or switching its repeat off, can help.");
      }
      if (arrived.bounced()) {
        lines.add(
            input.name()
                + " came twice at one press. A repeat-press filter can help; if it does so"
                + " often, the switch itself may be worn.");
      }
      if (arrived.along()) {
        lines.add("With " + input.name() + " something else was pressed along.");
      }
      if (arrived.signal().filter(s -> s.kind() == Signal.Kind.UNKNOWN).isPresent()) {
        lines.add(
            input.name()
                + " sends a key this program has no name for. It can be practised all the same.");
      }
    }
  }
}
