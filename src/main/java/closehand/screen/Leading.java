package closehand.screen;

import closehand.interview.Interview;
import closehand.interview.LeftOpen;
import closehand.interview.Message;
import closehand.interview.Prompt;
import closehand.report.Announced;
import closehand.report.Consultation;
import java.util.List;
import java.util.Optional;

/** Leads through the interview: which question is in sight, and which notice stands before it. */
final class Leading {
  private Leading() {}

  /** A new interview, or one opened again, with sentences to be read first. */
  static ScreenModel begin(ScreenModel model, Talk talk, List<String> sentences) {
    ScreenModel next = announced(based(model.with(talk)).saying(Said.NOTHING));
    return sentences.isEmpty() ? next : next.pushing(ReadingScreen.first(sentences));
  }

  /** Sends a message; a refusal is said beside the question, and nothing else changes. */
  static ScreenModel.Step send(ScreenModel model, Message message, String sentence) {
    Talk before = model.talk().orElseThrow();
    Talk next = Correcting.after(before, message, before.after(message));
    Steering.Course course = Steering.after(next, message);
    Talk talk = course.talk();
    Effect sent = new Effect.Sent(message, before.interview(), talk.interview(), course.lines());
    Optional<String> refusal = talk.interview().refusal();
    if (refusal.isPresent()) {
      ScreenModel same = model.top().screen() instanceof TextScreen ? model : toBase(model);
      return new ScreenModel.Step(
          same.with(talk).saying(Said.refused(refusal.get())), List.of(sent));
    }
    boolean here =
        !changesQuestion(message) && talk.interview().at().equals(before.interview().at());
    ScreenModel led = here ? toBase(model.with(talk)) : based(model.with(talk));
    String said = sentence + passedOver(talk.interview()) + " " + String.join(" ", course.lines());
    led = led.saying(Said.that(said.strip()));
    led = course.enough().isEmpty() ? led : led.pushing(ReadingScreen.enough(course.enough()));
    return new ScreenModel.Step(announced(led), List.of(new Effect.Keep(talk.interview()), sent));
  }

  private static boolean changesQuestion(Message message) {
    return !(message instanceof Message.Note
        || message instanceof Message.Conduct
        || message instanceof Message.TakeRoute
        || message instanceof Message.Lower);
  }

  /** Takes back the last change. */
  static ScreenModel.Step undo(ScreenModel model) {
    Talk talk = model.talk().orElseThrow();
    if (talk.past().isEmpty()) {
      return new ScreenModel.Step(
          (model.waits() ? model : toBase(model))
              .saying(Said.refused("There is nothing to take back in this sitting.")),
          List.of());
    }
    Talk undone = talk.undone();
    ScreenModel next = announced(based(model.with(undone)).saying(Said.that("Taken back.")));
    return new ScreenModel.Step(
        next, List.of(new Effect.Keep(undone.interview()), new Effect.Undone(undone.interview())));
  }

  /** Only the question in sight, where it stands. */
  static ScreenModel toBase(ScreenModel model) {
    return model.piled(model.layers().subList(0, 1));
  }

  /** Only the question in sight, put together anew. */
  private static ScreenModel based(ScreenModel model) {
    Talk talk = model.talk().orElseThrow();
    Screen base =
        talk.prompt()
            .<Screen>map(prompt -> QuestionScreen.of(talk, prompt))
            .orElseGet(() -> Menu.of(Menu.Kind.FINISHED));
    ScreenModel next = model.piled(List.of(model.fresh(base)));
    boolean readBefore = base instanceof QuestionScreen q && !q.prompt().firstOfQuestion();
    return readBefore ? next.at(Pressing.layout(next).revealed(next.top().spot())) : next;
  }

  /** With the notices that are due on top, the strongest in sight. */
  private static ScreenModel announced(ScreenModel model) {
    Talk talk = model.talk().orElseThrow();
    Optional<Prompt> prompt = talk.prompt();
    Announced.Due due = talk.announced().due(talk.consultation(), prompt);
    ScreenModel next = model.with(talk.hearing(due.then()));
    if (due.ends() && !talk.again()) {
      return next.pushing(new NoticeScreen(standing(talk, due), true));
    }
    if (!due.cares().isEmpty()) {
      next = next.pushing(new NoticeScreen(due.cares(), false));
    }
    for (int i = due.stops().size() - 1; i >= 0; i--) {
      next = next.pushing(new NoticeScreen(List.of(due.stops().get(i)), false));
    }
    return next;
  }

  private static List<Consultation.Notice> standing(Talk talk, Announced.Due due) {
    return due.stops().isEmpty()
        ? talk.consultation().notices().stream().filter(Consultation.Notice::endsSession).toList()
        : due.stops();
  }

  private static String passedOver(Interview interview) {
    StringBuilder words = new StringBuilder();
    LeftOpen.sentences(interview.passedOver()).forEach(s -> words.append(' ').append(s));
    return words.toString();
  }
}
