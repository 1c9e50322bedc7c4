package closehand.report;

import closehand.bank.Bank;
import closehand.bank.EnableWhen;
import closehand.bank.FactType;
import closehand.bank.Field;
import closehand.bank.Option;
import closehand.bank.Question;
import closehand.bank.Questionnaire;
import closehand.bank.Section;
import closehand.interview.Wording;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The questions of a bank in words: what is asked, of whom, when, and what can be answered. */
final class QuestionPaperWords {
  private final Questionnaire questionnaire;
  private final EnableWords enable;
  private final String usualSystem;
  private final List<String> usualHelp;

  QuestionPaperWords(Bank bank, Glyphs glyphs) {
    this.questionnaire = bank.questionnaire();
    this.enable = new EnableWords(bank, glyphs);
    List<String> systems = new ArrayList<>();
    questionnaire
        .fieldsByFact()
        .values()
        .forEach(f -> f.type().choices().forEach(o -> systems.add(o.system())));
    this.usualSystem = usual(systems, "");
    this.usualHelp =
        usual(questionnaire.questions().stream().map(this::help).toList(), List.<String>of());
  }

  /** What most of these are; the first of them where several are equally many. */
  private static <T> T usual(List<T> all, T none) {
    Map<T, Integer> counts = new HashMap<>();
    all.forEach(one -> counts.merge(one, 1, Integer::sum));
    T usual = none;
    int most = 0;
    for (T one : all) {
      int count = counts.getOrDefault(one, 0);
      if (count > most) {
        most = count;
        usual = one;
      }
    }
    return usual;
  }

  /** The bank as a whole, then every section. */
  List<PaperPart> parts() {
    List<PaperPart> parts = new ArrayList<>();
    PaperPart whole = new PaperPart("bank", "The questions as a whole", "");
    whole.add("Title", Phrases.sentence(questionnaire.title()));
    whole.add("Version", Phrases.sentence(questionnaire.version()));
    whole.add("Address of the questions", questionnaire.url());
    whole.add("Address of the answers", usualSystem.isEmpty() ? "none." : usualSystem);
    whole.add(
        "Help in other programs",
        usualHelp.isEmpty()
            ? "Shown always."
            : "Some of it is shown only if " + String.join("; some only if ", usualHelp) + ".");
    parts.add(whole);
    for (Section section : questionnaire.sections()) {
      PaperPart part =
          new PaperPart("section " + section.id(), section.id() + ". " + section.title(), "");
      section.questions().forEach(q -> part.add("Question " + q.id(), lines(q)));
      parts.add(part);
    }
    return parts;
  }

  private List<String> help(Question question) {
    return question.helpConditions().stream().map(enable::of).toList();
  }

  private List<String> lines(Question question) {
    List<String> lines = new ArrayList<>();
    lines.add(asked(question));
    List<EnableWhen> shared = shared(question);
    if (!shared.isEmpty()) {
      lines.add(onlyIf(shared));
    }
    question.remoteText().ifPresent(t -> lines.add("Over a call it is put so: " + t));
    question.aloneText().ifPresent(t -> lines.add("Asked alone it is put so: " + t));
    lines.add("Why: " + Phrases.sentence(question.why()));
    labelled(lines, "In the room: ", question.inTheRoom());
    labelled(lines, "Over a call: ", question.overVideo());
    labelled(lines, "Alone: ", question.alone());
    List<String> help = help(question);
    if (!help.equals(usualHelp)) {
      lines.add(
          "Help in other programs: "
              + (help.isEmpty() ? "always." : "only if " + String.join("; only if ", help) + "."));
    }
    question.fields().forEach(f -> lines.add(field(question, f, shared)));
    return lines;
  }

  private static void labelled(List<String> lines, String label, String words) {
    if (!words.isEmpty()) {
      lines.add(label + words);
    }
  }

  private static String asked(Question question) {
    String who =
        switch (question.askedBy()) {
          case PLAYER -> "the player may fill it in alone";
          case VOLUNTEER -> "a volunteer may ask";
          case VOLUNTEER_REFER ->
              "a volunteer may ask, and any answer but the all-clear goes to a clinician";
          case CLINICIAN -> "only a clinician may ask";
        };
    return Phrases.sentence(question.text())
        + " ("
        + question.shortName().map(s -> "in short: " + Phrases.bare(s) + "; ").orElse("")
        + question.route().code()
        + "; "
        + who
        + "; safety weight "
        + question.safetyWeight()
        + ")";
  }

  private String onlyIf(List<EnableWhen> conditions) {
    return "Asked only if "
        + String.join("; and if ", conditions.stream().map(enable::of).toList())
        + ".";
  }

  /** The conditions that all fields of a question have. */
  private static List<EnableWhen> shared(Question question) {
    List<EnableWhen> shared = new ArrayList<>(question.fields().get(0).conditions());
    question.fields().forEach(f -> shared.retainAll(f.conditions()));
    return shared;
  }

  private String field(Question question, Field field, List<EnableWhen> shared) {
    StringBuilder words = new StringBuilder();
    for (String group : field.groups()) {
      String heading = questionnaire.groupTexts().getOrDefault(group, group);
      boolean told = group.equals(question.section()) || group.equals(question.id());
      String repeated = heading.equals(question.text()) ? "" : heading + " ";
      words.append(told ? "" : repeated + "[" + group + "] \u2013 ");
    }
    if (!field.label().equals(question.text())) {
      String label = Phrases.bare(field.label());
      words.append(label).append(label.endsWith("?") ? " " : ": ");
    }
    words.append(answers(field.type())).append(' ').append(name(field));
    field.remoteLabel().ifPresent(t -> words.append(" Over a call: ").append(Phrases.sentence(t)));
    field.aloneLabel().ifPresent(t -> words.append(" Alone: ").append(Phrases.sentence(t)));
    List<EnableWhen> own = new ArrayList<>(field.conditions());
    own.removeAll(shared);
    if (!own.isEmpty()) {
      words.append(' ').append(onlyIf(own));
    }
    words.append(field.required() ? " An answer is needed." : "");
    field.task().ifPresent(t -> words.append(" It takes a task: ").append(t.code()).append('.'));
    words.append(field.askedAgain() ? " Asked again before and after timed tasks." : "");
    if (!field.classification().isEmpty()) {
      words.append(" ICF ").append(String.join(", ", field.classification())).append('.');
    }
    return words.toString();
  }

  /** What files call the fact and its answers. */
  private String name(Field field) {
    List<String> codes = new ArrayList<>();
    for (Option option : field.type().choices()) {
      String place =
          option.ordinal().isPresent() && !isItsPlace(option)
              ? " = " + Wording.number(option.ordinal().getAsDouble())
              : "";
      String system = option.system().equals(usualSystem) ? "" : " of " + option.system();
      codes.add(option.code() + place + system);
    }
    String unit =
        field.type() instanceof FactType.Amount amount && !amount.unit().isEmpty()
            ? " in " + amount.unit()
            : "";
    return "["
        + field.fact()
        + unit
        + (codes.isEmpty() ? "" : ": " + String.join(", ", codes))
        + "]";
  }

  private static boolean isItsPlace(Option option) {
    return option.ordinal().isPresent()
        && Wording.number(option.ordinal().getAsDouble()).equals(option.code());
  }

  private static String answers(FactType type) {
    if (type instanceof FactType.YesNo) {
      return "yes or no.";
    }
    if (type instanceof FactType.Amount amount) {
      return (amount.decimals() == 0 ? "a whole number from " : "a number from ")
          + Wording.number(amount.minimum())
          + " to "
          + Wording.of(type, new closehand.interview.Value.Number(amount.maximum()))
          + (amount.decimals() == 0
              ? "."
              : ", with at most " + Phrases.count(amount.decimals(), "decimal") + ".");
    }
    if (type instanceof FactType.Words words) {
      return "own words, at most " + words.maximumLength() + " characters.";
    }
    if (type instanceof FactType.WordList) {
      return "a list of own words.";
    }
    List<String> options = new ArrayList<>();
    boolean scale = false;
    for (Option option : type.choices()) {
      options.add(option.display() + (option.exclusive() ? " (and nothing else)" : ""));
      scale |= option.ordinal().isPresent();
    }
    String lead = type instanceof FactType.SeveralOf ? "any of" : "one of";
    return lead + (scale ? " a scale: " : ": ") + String.join("; ", options) + ".";
  }
}
