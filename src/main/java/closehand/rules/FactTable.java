package closehand.rules;

import closehand.bank.Bank;
import closehand.bank.Caution;
import closehand.bank.EnableWhen;
import closehand.bank.FactType;
import closehand.bank.Field;
import closehand.bank.Option;
import closehand.bank.Question;
import closehand.bank.Section;
import closehand.bank.Term;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;

/** Every fact and term with its place in the state, which is one array of cell sets. */
final class FactTable {
  /** The one fact that is not asked: which cautions a clinician lowered. */
  static final String CLEARED = "cleared";

  private static final int GATE_WEIGHT = 3;

  private final BankView view;
  private final Map<String, NumberLine> lines;
  private final Map<String, Asked> asked = new LinkedHashMap<>();
  private final Map<String, Worked> worked = new LinkedHashMap<>();
  private final Set<String> differenceInputs = new HashSet<>();
  private final Map<Integer, Integer> listedSlots = new HashMap<>();
  private final Worked cleared;
  private int size;

  /**
   * A term, or the system's own fact, with its place in the state.
   *
   * @param id as conditions name it
   * @param shape how its values lie in cells
   * @param slot where its cells start
   */
  record Worked(String id, Shape shape, int slot) {}

  /** Lays out the bank of this view; {@code order} names each fact and term after all it needs. */
  FactTable(BankView view, List<String> order) {
    this.view = view;
    this.lines = NumberLines.of(view, order);
    for (Term term : view.terms().values()) {
      if (term instanceof Term.Computed computed
          && computed.computation() == Term.Computation.DIFFERENCE) {
        differenceInputs.addAll(computed.of());
      }
    }
    Set<String> gates = gateFacts(view.bank());
    Map<String, List<String>> texts = comparedTexts(view);
    for (Field field : view.fields().values()) {
      asked.put(
          field.fact(),
          place(field, gates.contains(field.fact()), texts.getOrDefault(field.fact(), List.of())));
    }
    for (String id : order) {
      Term term = view.terms().get(id);
      if (term != null) {
        place(id, termShape(term));
      }
    }
    cleared = new Worked(CLEARED, new SeveralShape(codes(view.bank().cautions())), size);
    size += cleared.shape().width();
    for (int game : view.games().slots()) {
      listedSlots.put(game, size++);
    }
  }

  /** Whether rules may ask for "2 or more" of these answers. */
  static boolean isScale(FactType.OneOf type) {
    return !type.options().isEmpty() && type.isScale();
  }

  private static Set<String> gateFacts(Bank bank) {
    Set<String> gates = new HashSet<>();
    for (Section section : bank.questionnaire().sections()) {
      for (Question question : section.questions()) {
        if (question.safetyWeight() == GATE_WEIGHT) {
          question.fields().forEach(f -> gates.add(f.fact()));
        }
      }
    }
    return gates;
  }

  private static Map<String, List<String>> comparedTexts(BankView view) {
    Map<String, List<String>> texts = new HashMap<>();
    for (EnableWhen.Test test : view.enableTests()) {
      if (test.expected() instanceof EnableWhen.Expected.Text text) {
        List<String> known = texts.computeIfAbsent(test.fact(), f -> new ArrayList<>());
        if (!known.contains(text.value())) {
          known.add(text.value());
        }
      }
    }
    return texts;
  }

  private Asked place(Field field, boolean gate, List<String> texts) {
    Shape shape = factShape(field, texts);
    int how = size + shape.width();
    boolean spanned =
        field.type() instanceof FactType.Amount && differenceInputs.contains(field.fact());
    OptionalInt span = spanned ? OptionalInt.of(how + 1) : OptionalInt.empty();
    boolean unsure = gate && field.type().option(Asked.UNSURE).isPresent();
    Asked place = new Asked(asked.size(), field, shape, size, how, span, unsure, gate);
    size = how + (spanned ? 3 : 1);
    return place;
  }

  private void place(String id, Shape shape) {
    worked.put(id, new Worked(id, shape, size));
    size += shape.width();
  }

  private Shape factShape(Field field, List<String> texts) {
    FactType type = field.type();
    if (type instanceof FactType.YesNo) {
      return new YesNoShape();
    }
    if (type instanceof FactType.Amount amount) {
      NumberLine line = line(field.fact());
      return new AmountShape(
          line,
          line.cellsOf(new Values.Grid(amount.minimum(), amount.maximum(), amount.decimals())));
    }
    if (type instanceof FactType.OneOf one) {
      return isScale(one) ? scale(one, line(field.fact())) : choice(one);
    }
    if (type instanceof FactType.SeveralOf several) {
      return new SeveralShape(several.options());
    }
    return new WordsShape(texts);
  }

  private NumberLine line(String id) {
    return Optional.ofNullable(lines.get(id))
        .orElseThrow(() -> new IllegalArgumentException("no number: " + id));
  }

  private static Shape scale(FactType.OneOf type, NumberLine line) {
    List<Integer> cells = new ArrayList<>();
    long all = 0;
    for (Option option : type.options()) {
      int cell = line.cellOf(option.ordinal().orElseThrow());
      cells.add(cell);
      all |= 1L << cell;
    }
    return new ChoiceShape(type.options(), cells, Optional.of(line), all);
  }

  private static Shape choice(FactType.OneOf type) {
    int count = type.options().size();
    if (count > NumberLine.MOST_CELLS) {
      throw new IllegalArgumentException("more than " + NumberLine.MOST_CELLS + " options");
    }
    List<Integer> cells = new ArrayList<>();
    for (int cell = 0; cell < count; cell++) {
      cells.add(cell);
    }
    return new ChoiceShape(type.options(), cells, Optional.empty(), (1L << count) - 1);
  }

  private Shape termShape(Term term) {
    if (!(term instanceof Term.Computed computed)) {
      return new YesNoShape();
    }
    NumberLine line = line(term.id());
    long all =
        switch (computed.computation()) {
          case MAXIMUM, MINIMUM ->
              computed.of().stream().mapToLong(i -> shapeOf(i).all()).reduce(0, (a, b) -> a | b);
          case COUNT -> line.cellsOf(new Values.Grid(0, countable(computed.of().get(0)), 0));
          case DIFFERENCE -> line.all();
        };
    return new AmountShape(line, all);
  }

  private int countable(String several) {
    return (int)
        asked(several).field().type().choices().stream().filter(o -> !o.exclusive()).count();
  }

  private static List<Option> codes(List<Caution> cautions) {
    return cautions.stream()
        .map(c -> new Option("", c.code(), c.title(), OptionalDouble.empty(), false, c.where()))
        .toList();
  }

  /** How the values of this fact or term lie in cells. */
  Shape shapeOf(String id) {
    Asked fact = asked.get(id);
    return fact != null ? fact.shape() : worked(id).shape();
  }

  /** Where the cells of this fact or term start. */
  int slotOf(String id) {
    Asked fact = asked.get(id);
    return fact != null ? fact.slot() : worked(id).slot();
  }

  /** The asked fact with this id. */
  Asked asked(String fact) {
    return findAsked(fact).orElseThrow(() -> new IllegalArgumentException("no such fact: " + fact));
  }

  /** The asked fact with this id, if there is one. */
  Optional<Asked> findAsked(String fact) {
    return Optional.ofNullable(asked.get(fact));
  }

  /** The term, or the system's own fact, with this id. */
  Worked worked(String id) {
    if (id.equals(CLEARED)) {
      return cleared;
    }
    return Optional.ofNullable(worked.get(id))
        .orElseThrow(() -> new IllegalArgumentException("no such fact or term: " + id));
  }

  /** The slot that says whether this game slot holds a game. */
  int listedSlot(int game) {
    return Optional.ofNullable(listedSlots.get(game))
        .orElseThrow(() -> new IllegalArgumentException("no such game slot: " + game));
  }

  /** Every asked fact, in order. */
  List<Asked> all() {
    return List.copyOf(asked.values());
  }

  /** The game slots the questionnaire has. */
  List<Integer> games() {
    return view.games().slots();
  }

  /** How many slots a state has. */
  int size() {
    return size;
  }
}
