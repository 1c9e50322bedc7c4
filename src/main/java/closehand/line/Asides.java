package closehand.line;

import closehand.bank.FactType;
import closehand.bank.Field;
import closehand.bank.Option;
import closehand.interview.Answer;
import closehand.interview.Entry;
import closehand.interview.Interview;
import closehand.interview.LeftOpen;
import closehand.interview.NamedList;
import closehand.interview.Overview;
import closehand.interview.Prompt;
import closehand.interview.StillOpen;
import closehand.interview.Wording;
import closehand.report.Advisor;
import closehand.report.Desk;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Says questions, reasons, help and overviews; changes nothing. */
final class Asides {
  private final Console console;
  private final Advisor advisor;
  private Map<String, String> listed = Map.of();

  private final java.util.function.Predicate<Prompt> measurable;

  Asides(Console console, Advisor advisor) {
    this(console, advisor, prompt -> false);
  }

  /**
   * Asides that also say where a task can measure what is asked.
   *
   * @param measurable whether a task belongs to the question
   */
  Asides(Console console, Advisor advisor, java.util.function.Predicate<Prompt> measurable) {
    this.console = console;
    this.advisor = advisor;
    this.measurable = measurable;
  }

  /** The whole question with its position and, if it has one field, its answers. */
  void question(Prompt prompt, Map<String, String> names) {
    listed = Map.of();
    console.gap();
    console.say(prompt.question().id() + ". " + prompt.position() + ".");
    again(prompt.again());
    console.say(prompt.questionText());
    if (!prompt.fieldText().equals(prompt.questionText())) {
      field(prompt, names);
    } else {
      answers(prompt, names);
    }
  }

  /** One field of a question with several. */
  void field(Prompt prompt, Map<String, String> names) {
    console.say(prompt.fieldText());
    answers(prompt, names);
  }

  private void again(Prompt.Again again) {
    switch (again) {
      case NO -> {}
      case BEFORE_TASKS ->
          console.say("We ask this again before you try something with your body.");
      case AFTER_TASKS -> console.say("We ask this again now that the tasks are done.");
      case AFTER_BREAK -> console.say("Welcome back. We ask this again after every break.");
      case REVIEW -> console.say("We ask this again at every review.");
    }
  }

  private void answers(Prompt prompt, Map<String, String> names) {
    list(names);
    FactType type = prompt.field().type();
    int number = 0;
    for (Option option : type.choices()) {
      number++;
      console.item(Integer.toString(number), option.display());
    }
    String unsure = prompt.question().safetyWeight() >= 3 ? " k if you are not sure;" : "";
    String task = measurable.test(prompt) ? " t measures it step by step;" : "";
    console.say(hint(type, names).replace("; ?", ";" + unsure + task + " ?") + several(prompt));
    prompt
        .earlier()
        .ifPresent(
            e ->
                console.say(
                    prompt.again() != Prompt.Again.NO
                        ? "Your answer before: "
                            + words(prompt, names, e.answer())
                            + ". Please answer again."
                        : "Your answer so far: "
                            + words(prompt, names, e.answer())
                            + ". Press Enter to keep it."));
  }

  /** The names that may be given, with their numbers; said once while the same ones are asked. */
  private void list(Map<String, String> names) {
    if (!names.isEmpty() && names.equals(listed)) {
      console.say("The same list as before; r shows it again.");
      return;
    }
    int number = 0;
    for (Map.Entry<String, String> one : names.entrySet()) {
      number++;
      console.item(Integer.toString(number), one.getValue() + " (" + one.getKey() + ")");
    }
    listed = Map.copyOf(names);
  }

  private static String words(Prompt prompt, Map<String, String> names, Answer answer) {
    return answer
        .given()
        .filter(v -> !names.isEmpty())
        .map(v -> new NamedList(names).words(v))
        .orElseGet(() -> Wording.of(prompt.field(), answer));
  }

  private static String hint(FactType type, Map<String, String> names) {
    String hint;
    if (type instanceof FactType.YesNo) {
      hint = "y for yes, n for no";
    } else if (type instanceof FactType.OneOf) {
      hint = "Type a number";
    } else if (type instanceof FactType.SeveralOf) {
      hint = "Type one or more numbers, such as 1 3, or none";
    } else if (type instanceof FactType.Amount amount) {
      hint =
          "Type a number from "
              + Wording.number(amount.minimum())
              + " to "
              + Wording.of(type, new closehand.interview.Value.Number(amount.maximum()));
    } else if (!names.isEmpty()) {
      hint =
          "Type numbers or names with commas between them, such as 1, "
              + names.values().stream().limit(2).reduce((one, two) -> two).orElseThrow()
              + "; none if there is none";
    } else if (type instanceof FactType.WordList) {
      hint = "Type your words, with commas between them";
    } else {
      hint = "Type your words";
    }
    return hint + "; ? for why, h for help.";
  }

  /** From three fields of a kind on it is worth saying that one line can fill them all. */
  private static String several(Prompt prompt) {
    int fields = prompt.lineOfFields().size();
    FactType type = prompt.field().type();
    boolean single =
        type instanceof FactType.SeveralOf
            || type instanceof FactType.Words
            || type instanceof FactType.WordList;
    boolean grid = fields >= 3 && !single;
    if (!grid) {
      return "";
    }
    String last = prompt.lineOfFields().get(fields - 1).label();
    return " Or type up to " + fields + " answers in a row, as far as " + last + ".";
  }

  /** Says back what was understood, so that a slip is noticed at once. */
  void noted(Prompt prompt, List<Entry.Line.For> values, Map<String, String> names) {
    List<String> parts = new ArrayList<>();
    for (Entry.Line.For value : values) {
      for (Field field : prompt.lineOfFields()) {
        if (field.fact().equals(value.fact())) {
          String words =
              names.isEmpty()
                  ? Wording.of(field.type(), value.value())
                  : new NamedList(names).words(value.value());
          parts.add(values.size() > 1 ? field.label() + ": " + words : words);
        }
      }
    }
    boolean free = prompt.field().type() instanceof FactType.Words;
    console.say(free || parts.isEmpty() ? "Noted." : "Noted: " + String.join("; ", parts) + ".");
  }

  /** Why it is asked and how to see it. */
  void why(Prompt prompt) {
    console.say("Why: " + prompt.question().why());
    prompt.howToSee().forEach(h -> console.say("How to see it: " + h));
    if (prompt.question().askedBy() == closehand.bank.Question.AskedBy.VOLUNTEER_REFER) {
      console.say("Any answer here other than the all-clear goes to a health professional too.");
    }
  }

  /** What can be typed. */
  void help() {
    console.say("At any question you can type an answer, or one of these letters and Enter.");
    for (Typed.Command command : Typed.Command.values()) {
      boolean leaves = command == Typed.Command.LEAVE && !advisor.isKept();
      console.item(command.key(), leaves ? "leave; nothing is kept" : command.meaning());
    }
    console.say(
        "If a letter is also an answer here, it counts as the answer. A colon before a letter makes it a command:"
            + " :l puts a question off. An equals sign before your words makes them an answer.");
  }

  /** Each part with what is answered and open, or every row of one part. */
  void overview(Interview interview, String part) {
    List<Overview.Part> parts = interview.overview().parts();
    console.say(interview.progress().words());
    int number = 0;
    for (Overview.Part one : parts) {
      number++;
      if (part.isEmpty()) {
        console.item(Integer.toString(number), one.title() + ": " + one.words(true) + ".");
      } else if (part.equals(Integer.toString(number)) || part.equalsIgnoreCase(one.id())) {
        console.say(one.title());
        one.rows().forEach(row -> row(row, advisor.names(interview, row.field())));
      }
    }
  }

  private void row(Overview.Row row, Map<String, String> names) {
    String name = row.question().shortName().orElse(row.question().id());
    String label = row.question().fields().size() > 1 ? name + ", " + row.field().label() : name;
    String words =
        switch (row.state()) {
          case ANSWERED -> withNames(row.words(), names);
          case SET_ASIDE -> row.words() + " (set aside: it does not apply now)";
          case OPEN -> row.words().isEmpty() ? "open" : "open. " + row.words();
          case FOR_CLINICIAN -> "left for a clinician";
          case HELD -> "waiting. " + row.words();
        };
    console.item(row.question().id(), label + ": " + words);
  }

  /** Codes in a list of answers, each with its name. */
  private static String withNames(String words, Map<String, String> names) {
    if (names.isEmpty()) {
      return words;
    }
    List<String> named = new ArrayList<>();
    for (String word : words.split(", ", -1)) {
      named.add(names.containsKey(word) ? names.get(word) + " (" + word + ")" : word);
    }
    return String.join(", ", named);
  }

  /** Says that enough is known, and asks whether to go on all the same. */
  boolean wantsMore(List<String> lines) {
    console.gap();
    console.lines(lines);
    return console
        .ask("y goes on, Enter ends: ")
        .filter(l -> l.strip().equalsIgnoreCase("y"))
        .isPresent();
  }

  /**
   * The control plan, which may take a moment.
   *
   * @param rest what is wanted with it; empty to read it
   */
  void plan(Desk desk, Interview interview, String rest) {
    if (!rest.isEmpty()) {
      new PlanByHand(console, desk).change(interview);
      return;
    }
    console.say("One moment, the plan is being worked out.");
    console.lines(desk.plan(interview));
    if (!console.scripted()) {
      console.say("g change looks at one action, moves it, or changes what a game asks.");
    }
  }

  /** Enter alone where there is no answer to keep. */
  void nothingTyped() {
    if (!console.scripted()) {
      console.say("Nothing was typed. l puts this question off, h lists what you can do.");
    }
  }

  /** What was passed over, each question once with its reason. */
  void passedOver(Interview interview) {
    LeftOpen.sentences(interview.passedOver()).forEach(console::say);
  }

  /** What is still open at the end. */
  void open(Interview interview) {
    List<StillOpen> open = interview.open();
    if (open.isEmpty()) {
      console.say("Nothing is open.");
      return;
    }
    console.say("Still open:");
    String before = "";
    for (StillOpen one : open) {
      if (!one.question().id().equals(before)) {
        before = one.question().id();
        console.item(
            before,
            one.question().shortName().orElse(one.question().text()) + ". " + one.because());
      }
    }
  }

  /** Why something stands as it does; asks what, where nothing was named. */
  void explain(Desk desk, Interview interview, String name) {
    Map<String, String> controls = desk.explainable(interview);
    List<String> ids = List.copyOf(controls.keySet());
    Optional<String> wanted = Optional.of(name);
    if (name.isEmpty()) {
      int number = 0;
      for (String words : controls.values()) {
        number++;
        console.item(Integer.toString(number), words);
      }
      wanted = console.ask("Which one? Its number, or a name such as C-WRIST or R.T: ");
    }
    wanted
        .map(String::strip)
        .filter(w -> !w.isEmpty())
        .map(w -> w.matches("[0-9]{1,3}") ? numbered(ids, Integer.parseInt(w)) : w)
        .ifPresent(w -> console.lines(desk.explain(interview, w)));
  }

  private static String numbered(List<String> ids, int number) {
    return number >= 1 && number <= ids.size() ? ids.get(number - 1) : Integer.toString(number);
  }

  /** Lists the parts and asks where to go. */
  Optional<String> askPlace(Interview interview) {
    int number = 0;
    for (Overview.Part part : interview.overview().parts()) {
      number++;
      console.item(Integer.toString(number), part.title());
    }
    return console
        .ask("Which part, or which question (such as DIG-03)? ")
        .map(String::strip)
        .filter(p -> !p.isEmpty());
  }

  /** The id of a question for a part number or an id; says so if there is none. */
  Optional<String> placeOf(Interview interview, String place) {
    List<Overview.Part> parts = interview.overview().parts();
    for (int i = 0; i < parts.size(); i++) {
      if (place.equals(Integer.toString(i + 1)) || place.equalsIgnoreCase(parts.get(i).id())) {
        if (parts.get(i).rows().isEmpty()) {
          console.say("Nothing can be asked in that part yet.");
          return Optional.empty();
        }
        return Optional.of(parts.get(i).rows().get(0).question().id());
      }
    }
    if (interview.questionnaire().fieldsByFact().containsKey(place)) {
      return Optional.of(place);
    }
    for (closehand.bank.Question question : interview.questionnaire().questions()) {
      if (question.id().equalsIgnoreCase(place)) {
        return Optional.of(part(interview, question));
      }
    }
    console.say("There is no part or question of that name. o lists the parts.");
    return Optional.empty();
  }

  /**
   * The part of a question to go to; asked for only where several parts have an answer to change.
   */
  private String part(Interview interview, closehand.bank.Question question) {
    List<Field> answered =
        question.fields().stream()
            .filter(f -> interview.effective().answer(f.fact()).isPresent())
            .toList();
    if (answered.size() < 2) {
      return question.id();
    }
    console.say("Which part?");
    return Choice.of(console, Optional.<Field>empty(), answered.toArray(new Field[0]), Field::label)
        .map(Field::fact)
        .orElse(question.id());
  }
}
