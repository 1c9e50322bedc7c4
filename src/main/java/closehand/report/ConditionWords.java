package closehand.report;

import closehand.bank.Bank;
import closehand.bank.Caution;
import closehand.bank.Condition;
import closehand.bank.Condition.Operand;
import closehand.bank.FactType;
import closehand.bank.Field;
import closehand.bank.Option;
import closehand.bank.Term;
import closehand.interview.Value;
import closehand.interview.Wording;
import closehand.rules.Workings;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Conditions of rules in plain English, the player spoken to. */
public final class ConditionWords {
  private static final String LOWERED = "cleared";
  private static final String INSIDE_GAME = "game.";
  private static final String FIRST_GAME = "games.1.";

  private final Bank bank;
  private final Glyphs glyphs;
  private final Map<String, Field> fields;
  private final Map<String, Term> terms = new HashMap<>();
  private final Set<String> ambiguous = new HashSet<>();

  /** Words for the conditions of this bank. */
  public ConditionWords(Bank bank, Glyphs glyphs) {
    this.bank = bank;
    this.glyphs = glyphs;
    this.fields = bank.questionnaire().fieldsByFact();
    bank.terms().forEach(t -> terms.put(t.id(), t));
  }

  /** The same; where several facts or terms have one name, their ids stand with it. */
  static ConditionWords unmistakable(Bank bank, Glyphs glyphs) {
    ConditionWords words = new ConditionWords(bank, glyphs);
    Map<String, String> byName = new HashMap<>();
    List<String> ids = new ArrayList<>(words.fields.keySet());
    ids.addAll(words.terms.keySet().stream().sorted().toList());
    for (String fact : ids) {
      String other = byName.putIfAbsent(words.name(fact), fact);
      if (other != null) {
        words.ambiguous.addAll(List.of(fact, other));
      }
    }
    return words;
  }

  /** The condition as part of a sentence, such as: "Pain now" is 4 or more, and ... */
  public String of(Condition condition) {
    return words(condition, false);
  }

  private String words(Condition condition, boolean inside) {
    if (condition instanceof Condition.Test test) {
      return test(test);
    }
    if (condition instanceof Condition.All all) {
      return joined(all.parts(), " and ", inside);
    }
    if (condition instanceof Condition.Any any) {
      return joined(any.parts(), " or ", inside);
    }
    if (condition instanceof Condition.Not not) {
      return "it is not so that " + words(not.part(), true);
    }
    if (condition instanceof Condition.AtLeast atLeast) {
      List<String> parts = atLeast.parts().stream().map(p -> words(p, true)).toList();
      return "at least " + atLeast.count() + " of these hold: (" + String.join("; ", parts) + ")";
    }
    if (condition instanceof Condition.AnyGame any) {
      return "for at least one wanted game, " + words(any.part(), true);
    }
    if (condition instanceof Condition.EveryGame every) {
      return "for every wanted game, " + words(every.part(), true);
    }
    return "whatever the answers";
  }

  private String joined(List<Condition> parts, String word, boolean inside) {
    List<String> words = new ArrayList<>();
    parts.forEach(p -> words.add(words(p, true)));
    String text = String.join("," + word, words);
    return inside && words.size() > 1 ? "(" + text + ")" : text;
  }

  private String test(Condition.Test test) {
    if (test.operator().equals(Workings.LISTED)) {
      return "game " + test.fact().replaceAll("\\D", "") + " is named";
    }
    if (test.fact().equals(LOWERED) && test.value() instanceof Operand.Code code) {
      Optional<Caution> caution = bank.caution(code.value());
      return "a clinician has lowered "
          + glyphs.quoted(caution.map(Caution::title).orElse(code.value()));
    }
    Term term = terms.get(test.fact());
    if (term instanceof Term.Derived && test.value() instanceof Operand.Flag flag) {
      String text = name(term.id());
      return flag.value() ? text : "it is not so that " + text;
    }
    return name(test.fact()) + " " + predicate(test);
  }

  /** What a fact or term is called inside a sentence. */
  String name(String factOrTerm) {
    Term term = terms.get(factOrTerm);
    if (term != null) {
      return ambiguous.contains(factOrTerm) ? term.text() + " [" + factOrTerm + "]" : term.text();
    }
    String asked =
        factOrTerm.startsWith(INSIDE_GAME)
            ? FIRST_GAME + factOrTerm.substring(INSIDE_GAME.length())
            : factOrTerm;
    String name = glyphs.quoted(Phrases.bare(Labels.of(bank.questionnaire(), asked)));
    return ambiguous.contains(asked) ? name + " [" + factOrTerm + "]" : name;
  }

  private FactType type(String fact) {
    String asked =
        fact.startsWith(INSIDE_GAME) ? FIRST_GAME + fact.substring(INSIDE_GAME.length()) : fact;
    Field field = fields.get(asked);
    return field == null ? new FactType.Words(1) : field.type();
  }

  private String predicate(Condition.Test test) {
    FactType type = type(test.fact());
    Operand value = test.value();
    return switch (test.operator()) {
      case "<" -> compared(type, value, "is less than ", "", "is below ", "");
      case "<=" -> compared(type, value, "is ", " or less", "is ", " or below");
      case ">" -> compared(type, value, "is more than ", "", "is above ", "");
      case ">=" -> compared(type, value, "is ", " or more", "is ", " or above");
      case "has" -> "includes " + options(type, value);
      case "how" -> how(value);
      default -> "is " + options(type, value);
    };
  }

  /** Compared with a number; on a scale with the answer of that number. */
  private String compared(
      FactType type,
      Operand value,
      String before,
      String after,
      String beforeOption,
      String afterOption) {
    double number = value instanceof Operand.Number n ? n.value() : 0;
    for (Option option : type.choices()) {
      if (option.ordinal().isPresent() && option.ordinal().getAsDouble() == number) {
        return beforeOption + glyphs.quoted(option.display()) + afterOption;
      }
    }
    return before + Wording.of(type, new Value.Number(number)) + after;
  }

  private String options(FactType type, Operand value) {
    if (value instanceof Operand.Flag flag) {
      return flag.value() ? "yes" : "no";
    }
    if (value instanceof Operand.Number number) {
      return compared(type, number, "", "", "", "");
    }
    if (value instanceof Operand.Codes codes) {
      List<String> words = codes.values().stream().map(c -> code(type, c.value())).toList();
      return either(words);
    }
    return value instanceof Operand.Code one ? code(type, one.value()) : "";
  }

  private String code(FactType type, String code) {
    return type instanceof FactType.YesNo
        ? code
        : glyphs.quoted(Wording.of(type, new Value.Code(code)));
  }

  private static String either(List<String> words) {
    int last = words.size() - 1;
    return last < 1
        ? String.join("", words)
        : String.join(", ", words.subList(0, last)) + " or " + words.get(last);
  }

  private static String how(Operand value) {
    if (!(value instanceof Operand.Codes codes)) {
      return "is known in any way";
    }
    List<String> ways = new ArrayList<>();
    for (Operand.Code code : codes.values()) {
      ways.add(
          switch (code.value()) {
            case "notAsked" -> "not asked yet";
            case "declined" -> "not said";
            case "notKnown" -> "not known";
            case "later" -> "put off";
            default -> "answered";
          });
    }
    return "is " + either(ways);
  }
}
