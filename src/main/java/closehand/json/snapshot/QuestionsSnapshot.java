package closehand.json.snapshot;

import closehand.bank.EnableWhen;
import closehand.bank.Field;
import closehand.bank.Question;
import closehand.bank.Questionnaire;
import closehand.bank.Section;
import closehand.bank.TaskKind;

/** Questions with their fields and conditions. */
final class QuestionsSnapshot {
  private static final Question.Route[] ROUTES = Question.Route.values();
  private static final Question.AskedBy[] ASKED_BY = Question.AskedBy.values();
  private static final TaskKind[] TASKS = TaskKind.values();
  private static final EnableWhen.Operator[] OPERATORS = EnableWhen.Operator.values();

  private QuestionsSnapshot() {}

  static void write(Questionnaire q, SnapshotOut out) {
    out.text(q.url());
    out.text(q.version());
    out.text(q.title());
    out.list(q.sections(), s -> section(s, out));
    out.map(q.groupTexts(), out::text);
  }

  static Questionnaire read(SnapshotIn in) {
    return new Questionnaire(
        in.text(), in.text(), in.text(), in.list(() -> section(in)), in.map(in::text));
  }

  private static void section(Section s, SnapshotOut out) {
    out.text(s.id());
    out.text(s.title());
    out.list(s.questions(), q -> question(q, out));
  }

  private static Section section(SnapshotIn in) {
    return new Section(in.text(), in.text(), in.list(() -> question(in)));
  }

  private static void question(Question q, SnapshotOut out) {
    out.text(q.id());
    out.text(q.section());
    out.text(q.text());
    out.maybe(q.shortName(), out::text);
    out.maybe(q.remoteText(), out::text);
    out.maybe(q.aloneText(), out::text);
    out.text(q.why());
    out.text(q.inTheRoom());
    out.text(q.overVideo());
    out.text(q.alone());
    out.list(q.helpConditions(), e -> enableWhen(e, out));
    out.name(q.route());
    out.name(q.askedBy());
    out.number(q.safetyWeight());
    out.list(q.fields(), f -> field(f, out));
    out.where(q.where());
  }

  private static Question question(SnapshotIn in) {
    return new Question(
        in.text(),
        in.text(),
        in.text(),
        in.maybe(in::text),
        in.maybe(in::text),
        in.maybe(in::text),
        in.text(),
        in.text(),
        in.text(),
        in.text(),
        in.list(() -> enableWhen(in)),
        in.name(ROUTES),
        in.name(ASKED_BY),
        in.number(),
        in.list(() -> field(in)),
        in.where());
  }

  private static void field(Field f, SnapshotOut out) {
    out.text(f.fact());
    out.text(f.label());
    out.maybe(f.remoteLabel(), out::text);
    out.maybe(f.aloneLabel(), out::text);
    FactTypeSnapshot.write(f.type(), out);
    out.flag(f.required());
    out.list(f.conditions(), e -> enableWhen(e, out));
    out.texts(f.groups());
    out.maybe(f.task(), out::name);
    out.flag(f.askedAgain());
    out.texts(f.classification());
    out.where(f.where());
  }

  private static Field field(SnapshotIn in) {
    return new Field(
        in.text(),
        in.text(),
        in.maybe(in::text),
        in.maybe(in::text),
        FactTypeSnapshot.read(in),
        in.flag(),
        in.list(() -> enableWhen(in)),
        in.texts(),
        in.maybe(() -> in.name(TASKS)),
        in.flag(),
        in.texts(),
        in.where());
  }

  private static void enableWhen(EnableWhen e, SnapshotOut out) {
    out.list(e.tests(), t -> test(t, out));
    out.flag(e.all());
  }

  private static EnableWhen enableWhen(SnapshotIn in) {
    return new EnableWhen(in.list(() -> test(in)), in.flag());
  }

  private static void test(EnableWhen.Test t, SnapshotOut out) {
    out.text(t.fact());
    out.name(t.operator());
    expected(t.expected(), out);
    out.where(t.where());
  }

  private static EnableWhen.Test test(SnapshotIn in) {
    return new EnableWhen.Test(in.text(), in.name(OPERATORS), expected(in), in.where());
  }

  private static void expected(EnableWhen.Expected expected, SnapshotOut out) {
    if (expected instanceof EnableWhen.Expected.Flag flag) {
      out.number(0);
      out.flag(flag.value());
    } else if (expected instanceof EnableWhen.Expected.Number number) {
      out.number(1);
      out.fraction(number.value());
      out.flag(number.whole());
    } else if (expected instanceof EnableWhen.Expected.Coded coded) {
      out.number(2);
      out.text(coded.system());
      out.text(coded.code());
    } else if (expected instanceof EnableWhen.Expected.Text text) {
      out.number(3);
      out.text(text.value());
    }
  }

  private static EnableWhen.Expected expected(SnapshotIn in) {
    return switch (in.number()) {
      case 0 -> new EnableWhen.Expected.Flag(in.flag());
      case 1 -> new EnableWhen.Expected.Number(in.fraction(), in.flag());
      case 2 -> new EnableWhen.Expected.Coded(in.text(), in.text());
      default -> new EnableWhen.Expected.Text(in.text());
    };
  }
}
