package closehand.report;

import closehand.bank.Approach;
import closehand.bank.GameProfile.Action;
import closehand.bank.Where;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/** What can be changed of an action that a game asks, in words and values. */
public final class AskedAction {
  private static final Set<String> OWN_WAYS =
      Set.of("analog2", "aim2", "analog1", "wheel", "edge", "text", "menu", "mode", "motion");
  private static final double SHORT = 0.1;

  private AskedAction() {}

  /** One thing about an action. */
  public enum Part {
    MATTERS("How much it matters"),
    OFTEN("How often"),
    HOW("How it is done"),
    HELD("How long one hold lasts"),
    SOON("How soon it must come");

    private final String words;

    Part(String words) {
      this.words = words;
    }

    String words() {
      return words;
    }
  }

  /** One value that a part can have. */
  record Value(String words, Action action) {}

  /** A new action, pressed now and then. */
  static Action named(List<Action> others, String name) {
    int number = 1;
    Set<String> ids = new java.util.HashSet<>();
    others.forEach(a -> ids.add(a.id()));
    while (ids.contains("OWN" + number)) {
      number++;
    }
    return new Action(
        "OWN" + number,
        name,
        OptionalDouble.of(1),
        List.of("tap"),
        span(SHORT),
        /* continuous= */ false,
        1,
        2,
        List.of(),
        List.of(),
        Where.file("by hand"));
  }

  /** Whether it is a press or a hold, whose way can be changed; a movement's cannot. */
  static boolean isPress(Action action) {
    return action.style().stream().noneMatch(OWN_WAYS::contains);
  }

  static boolean isHeld(Action action) {
    return isPress(action) && holds(action.style());
  }

  /** The parts that can be changed. */
  static List<Part> parts(Action action) {
    List<Part> parts = new ArrayList<>(List.of(Part.MATTERS, Part.OFTEN, Part.SOON));
    if (isPress(action)) {
      parts.add(Part.HOW);
    }
    if (isHeld(action)) {
      parts.add(Part.HELD);
    }
    return parts;
  }

  /** How a part stands, in words. */
  static String now(Action action, Part part) {
    return switch (part) {
      case MATTERS -> importance(action.importance());
      case OFTEN ->
          action.perMinute().isPresent() ? times(action.perMinute().getAsDouble()) : "not counted";
      case HOW -> style(action.style());
      case HELD ->
          number((action.holdSeconds().minimum() + action.holdSeconds().maximum()) / 2)
              + " seconds";
      case SOON -> urgency(action.urgency());
    };
  }

  /** What a part can be. */
  static List<Value> values(Action action, Part part) {
    List<Value> values = new ArrayList<>();
    switch (part) {
      case MATTERS -> {
        for (int i = 3; i >= 0; i--) {
          values.add(new Value(importance(i), with(action, action.urgency(), i)));
        }
      }
      case OFTEN -> {
        for (double often : new double[] {0.3, 1, 3, 6, 12, 30, 60}) {
          values.add(new Value(times(often), often(action, often)));
        }
      }
      case SOON -> {
        for (int i = 3; i >= 0; i--) {
          values.add(new Value(urgency(i), with(action, i, action.importance())));
        }
      }
      case HOW -> {
        for (String how : List.of("tap", "hold", "mash")) {
          double seconds = how.equals("tap") ? SHORT : 2;
          values.add(new Value(style(List.of(how)), done(action, List.of(how), seconds)));
        }
      }
      case HELD -> {
        for (double seconds : new double[] {0.5, 1, 2, 4, 8}) {
          values.add(
              new Value(number(seconds) + " seconds", done(action, action.style(), seconds)));
        }
      }
    }
    return values;
  }

  /** One line about an action. */
  static String line(Action action) {
    String held = isHeld(action) ? ", " + now(action, Part.HELD) : "";
    return action.name()
        + ": "
        + now(action, Part.MATTERS)
        + "; "
        + now(action, Part.OFTEN)
        + ", "
        + now(action, Part.HOW)
        + held
        + "; "
        + now(action, Part.SOON);
  }

  private static String importance(int importance) {
    return switch (importance) {
      case 3 -> "must have";
      case 2 -> "wanted";
      case 1 -> "nice to have";
      default -> "rarely missed";
    };
  }

  private static String urgency(int urgency) {
    return switch (urgency) {
      case 3 -> "at once, within about a third of a second";
      case 2 -> "within a second";
      case 1 -> "within three seconds";
      default -> "no hurry";
    };
  }

  private static String style(List<String> style) {
    if (style.contains("mash")) {
      return "pressed quickly again and again";
    }
    if (style.stream().anyMatch(OWN_WAYS::contains)) {
      return "in its own way";
    }
    return holds(style) ? "held" : "pressed";
  }

  private static boolean holds(List<String> style) {
    return style.contains("hold") && !style.contains("tap");
  }

  private static String times(double often) {
    return often == 1 ? "once a minute" : number(often) + " times a minute";
  }

  /** The same as one that the game cannot be played without. */
  static Action mustHave(Action action) {
    return with(action, action.urgency(), 3);
  }

  private static Approach.Span span(double seconds) {
    return new Approach.Span(seconds, seconds, "");
  }

  private static Action with(Action a, int urgency, int importance) {
    return new Action(
        a.id(),
        a.name(),
        a.perMinute(),
        a.style(),
        a.holdSeconds(),
        a.continuous(),
        urgency,
        importance,
        a.pressedWith(),
        a.options(),
        a.where());
  }

  private static Action often(Action a, double perMinute) {
    return new Action(
        a.id(),
        a.name(),
        OptionalDouble.of(perMinute),
        a.style(),
        a.holdSeconds(),
        a.continuous(),
        a.urgency(),
        a.importance(),
        a.pressedWith(),
        a.options(),
        a.where());
  }

  private static Action done(Action a, List<String> style, double seconds) {
    return new Action(
        a.id(),
        a.name(),
        a.perMinute(),
        style,
        span(seconds),
        /* continuous= */ false,
        a.urgency(),
        a.importance(),
        a.pressedWith(),
        a.options(),
        a.where());
  }

  private static String number(double value) {
    return closehand.interview.Wording.number(value);
  }
}
