package closehand.rules;

import closehand.bank.Caution;
import closehand.bank.FactType;
import closehand.bank.Option;
import closehand.interview.Answer;
import closehand.interview.Answers;
import closehand.interview.Provenance;
import closehand.interview.Value;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Turns what a search found possible into answers somebody could give. */
final class WitnessAnswers {
  private final Program program;
  private final long[] root;

  WitnessAnswers(Program program, long[] root) {
    this.program = program;
    this.root = root;
  }

  Answers of(long[] base) {
    Map<String, Answers.Recorded> byFact = new LinkedHashMap<>();
    for (Asked asked : program.table().all()) {
      answer(asked, base)
          .ifPresent(
              a -> byFact.put(asked.fact(), new Answers.Recorded(a, Provenance.PLAYER_TOLD)));
    }
    List<Answers.Lowered> lowered = new ArrayList<>();
    int cleared = program.table().worked(FactTable.CLEARED).slot();
    List<Caution> cautions = program.bank().cautions();
    for (int i = 0; i < cautions.size(); i++) {
      if (base[cleared + i] == Shape.YES) {
        lowered.add(new Answers.Lowered(cautions.get(i).code(), "", "", ""));
      }
    }
    return new Answers(byFact, lowered);
  }

  private Optional<Answer> answer(Asked asked, long[] base) {
    long how = base[asked.howSlot()];
    if (how == root[asked.howSlot()] || (how & How.NOT_ASKED) != 0) {
      return Optional.empty();
    }
    if (how == How.state(How.GIVEN)) {
      return Optional.of(new Answer.Given(value(asked, base)));
    }
    Answer.Reason reason =
        (how & How.DECLINED) != 0
            ? Answer.Reason.DECLINED
            : (how & How.LATER) != 0 ? Answer.Reason.LATER : Answer.Reason.UNKNOWN;
    return Optional.of(new Answer.Absent(reason));
  }

  private static Value value(Asked asked, long[] base) {
    long cells = base[asked.slot()];
    FactType type = asked.field().type();
    if (type instanceof FactType.YesNo) {
      return new Value.Flag((cells & Shape.NO) == 0);
    }
    if (type instanceof FactType.Amount amount) {
      return new Value.Number(number(asked, amount, base));
    }
    if (asked.shape() instanceof ChoiceShape choice) {
      for (int i = 0; i < choice.options().size(); i++) {
        if ((cells & 1L << choice.cells().get(i)) != 0) {
          return new Value.Code(choice.options().get(i).code());
        }
      }
    }
    return asked.shape() instanceof SeveralShape several
        ? picks(asked, several, base)
        : words((WordsShape) asked.shape(), cells);
  }

  private static double number(Asked asked, FactType.Amount amount, long[] base) {
    if (asked.spanSlot().isPresent()) {
      return Double.longBitsToDouble(base[asked.spanSlot().getAsInt()]);
    }
    NumberLine line = ((AmountShape) asked.shape()).line();
    Values grid = new Values.Grid(amount.minimum(), amount.maximum(), amount.decimals());
    int cell = Long.numberOfTrailingZeros(base[asked.slot()]);
    return grid.atLeast(Math.max(line.low(cell), grid.minimum()));
  }

  private static Value picks(Asked asked, SeveralShape several, long[] base) {
    List<String> picked = new ArrayList<>();
    List<String> possible = new ArrayList<>();
    for (int i = 0; i < several.width(); i++) {
      Option option = several.options().get(i);
      if (base[asked.slot() + i] == Shape.YES) {
        picked.add(option.code());
      } else if ((base[asked.slot() + i] & Shape.YES) != 0) {
        possible.add(option.code());
      }
    }
    boolean saysNone = several.options().stream().anyMatch(Option::exclusive);
    if (picked.isEmpty() && saysNone && !possible.isEmpty()) {
      picked.add(possible.get(possible.size() - 1));
    }
    return new Value.Codes(picked);
  }

  private static Value words(WordsShape words, long cells) {
    int cell = Long.numberOfTrailingZeros(cells);
    return new Value.Text(cell < words.compared().size() ? words.compared().get(cell) : "other");
  }
}
