package closehand.screen;

import closehand.interview.Interview;
import closehand.interview.Message;
import closehand.interview.Provenance;
import closehand.report.ByHand;
import closehand.report.Desk;
import closehand.report.Glyphs;
import closehand.report.TaskGate;
import closehand.screen.frame.Frame;
import closehand.screen.frame.Guards;
import closehand.screen.frame.Key;
import closehand.screen.frame.ScreenSize;
import closehand.screen.frame.Showing;
import closehand.screen.task.TaskFace;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The full-screen face: holds the model, hands it keys, and carries out what comes of them.
 *
 * <p>Whatever an answer changes is kept before the next frame is shown.
 */
public final class ScreenFace implements Showing {
  private final CaseBook book;
  private ScreenModel model;
  private Optional<Desk> desk = Optional.empty();
  private Optional<Effect.Ending> ending = Optional.empty();
  private List<String> lastWords = List.of();
  private final Door door;
  private Optional<Aloud.Place> told = Optional.empty();
  private Optional<Effect> waiting = Optional.empty();
  private Follower follower = Follower.NOBODY;
  private Optional<TaskFace> task = Optional.empty();

  /** A face at the start screen. */
  public ScreenFace(CaseBook book, Glyphs glyphs, Settings settings) {
    this.book = book;
    this.door = new Door(book);
    this.model = ScreenModel.start(ScreenSize.USUAL, glyphs, settings, book.names());
  }

  /** Goes straight to a case that was opened elsewhere. */
  public ScreenFace with(CaseBook.Opened opened) {
    entered(door.entered(model, opened, /* words= */ false));
    return this;
  }

  /** Has somebody follow what happens from now on. */
  public ScreenFace followedBy(Follower next) {
    follower = next;
    return this;
  }

  /** Asks who leads a new interview, once it was told that another one was broken off. */
  public void beginning() {
    model = model.pushing(Menu.of(Menu.Kind.WHO_ASKS));
    tellOfOneBrokenOff();
  }

  private void tellOfOneBrokenOff() {
    book.brokenOff().ifPresent(s -> model = model.told("Left unfinished", List.of(s)));
  }

  /** Asks how a new case is to be kept, when who leads and how long is known. */
  public void beginning(Provenance.By asker, Interview.Route route) {
    model = model.pushing(SealScreen.of(asker, route));
    tellOfOneBrokenOff();
  }

  /**
   * Goes to a saved case that was looked up.
   *
   * @param wish what is wanted with it; nothing to ask
   */
  public void opening(String name, CaseBook.Found found, Optional<Wish> wish) {
    entered(door.opening(model, name, found, wish));
  }

  /** How the run ended; nothing while it goes on. */
  public Optional<Effect.Ending> ending() {
    return ending;
  }

  /** The interview as it stands; nothing before there is one. */
  public Optional<Interview> interview() {
    return model.talk().map(Talk::interview);
  }

  /** How the screen is to behave now. */
  public Settings settings() {
    return model.settings();
  }

  /** What is to be said on the terminal after the screen is closed. */
  public List<String> lastWords() {
    return lastWords;
  }

  @Override
  public Frame frame(ScreenSize size) {
    if (task.isPresent()) {
      Frame frame = task.get().frame(size);
      if (!size.equals(model.size())) {
        model = model.after(new Key.Resized(size)).model();
      }
      return frame;
    }
    if (!size.equals(model.size())) {
      model = model.after(new Key.Resized(size)).model();
    }
    if (waiting.isEmpty()) {
      tellWhatCameUp();
    }
    return waiting
        .flatMap(Waits::sentence)
        .map(sentence -> model.pushing(ReadingScreen.moment(sentence)))
        .orElse(model)
        .frame();
  }

  @Override
  public void press(Key key) {
    press(key, 0);
  }

  @Override
  public void press(Key key, long millis) {
    if (task.isPresent()) {
      task.get().press(key, millis);
      task.get().ended().ifPresent(this::taskEnded);
      if (!(key instanceof Key.Closed || key instanceof Key.Resized)) {
        return;
      }
    }
    if (key instanceof Key.Passed || key instanceof Key.Focus) {
      return;
    }
    take(model.after(key));
    beginTask(millis);
  }

  private void take(ScreenModel.Step step) {
    model = step.model();
    step.effects().forEach(this::carryOutOrWait);
  }

  /** What takes its time waits until the screen has said so. */
  private void carryOutOrWait(Effect effect) {
    if (takesTime(effect)) {
      waiting = Optional.of(effect);
    } else {
      carryOut(effect);
    }
  }

  private boolean takesTime(Effect effect) {
    boolean first =
        model.top().screen() instanceof SecretScreen secret
            && secret.step() == SecretScreen.Step.FIRST;
    return Waits.sentence(effect).isPresent() && !(effect instanceof Effect.SecretTaken && first);
  }

  @Override
  public boolean busy() {
    return waiting.isPresent();
  }

  @Override
  public void work() {
    Optional<Effect> next = waiting;
    waiting = Optional.empty();
    next.ifPresent(this::carryOut);
  }

  @Override
  public void noted() {
    desk.ifPresent(d -> model = model.kept(d.unsaved()));
  }

  private void taskEnded(Message.EndTask end) {
    task = Optional.empty();
    take(model.ended(end));
  }

  /** Begins a measured task as soon as the interview says that one is due. */
  private void beginTask(long millis) {
    Optional<String> fact = model.taskDue();
    Optional<Desk> from = desk;
    if (task.isPresent() || fact.isEmpty() || from.isEmpty() || from.get().tasks().isEmpty()) {
      return;
    }
    TaskGate gate = from.get().tasks().get();
    Interview now = interview().orElseThrow();
    task =
        gate.book()
            .taskFor(fact.get())
            .map(t -> gate.setup(now, t, from.get().day(now), true))
            .map(s -> new TaskFace(s, model.glyphs(), model.size(), usual(), millis));
  }

  @Override
  public long waitMillis(long millis) {
    return task.map(t -> t.waitMillis(millis)).orElse(-1L);
  }

  @Override
  public Set<Report> reports() {
    return task.map(TaskFace::reports).orElse(Set.of());
  }

  @Override
  public boolean over() {
    return ending.isPresent();
  }

  @Override
  public Guards guards() {
    return task.isPresent() ? task.get().guards() : usual();
  }

  private Guards usual() {
    return new Guards(settings().holdMillis(), settings().bounceMillis());
  }

  @Override
  public boolean repeats(Key key) {
    return task.isPresent()
        ? task.get().repeats(key)
        : Showing.super.repeats(key) || model.writes(key);
  }

  private void carryOut(Effect effect) {
    if (effect instanceof Effect.Keep keep) {
      desk.ifPresent(d -> model = model.kept(d.keep(keep.interview())));
    } else if (effect instanceof Effect.Example) {
      entered(door.entered(model, book.example(), /* words= */ false));
    } else if (effect instanceof Effect.CheckBank) {
      model = model.told("The question bank", book.check());
    } else if (effect instanceof Effect.WritePages write) {
      model = model.told("The page", book.writePages(write.interview()));
    } else if (effect instanceof Effect.Print print) {
      model = model.told("Printing", book.print(print.lines()));
    } else if (effect instanceof Effect.WorkOutPlan plan) {
      workOut(plan);
    } else if (effect instanceof Effect.BeginByHand begin) {
      model = ByHandWork.begun(model, desk.flatMap(d -> d.byHand(begin.interview())));
      follow();
    } else if (effect instanceof Effect.ChangeByHand change) {
      change(change);
    } else if (effect instanceof Effect.KeepSettings keep) {
      List<String> trouble = book.keep(keep.settings());
      model = trouble.isEmpty() ? model : model.told("Settings", trouble);
    } else if (effect instanceof Effect.Delete) {
      lastWords = desk.map(Desk::delete).orElse(List.of());
      end(Effect.Ending.DELETED);
    } else if (effect instanceof Effect.Leave leave) {
      end(leave.ending());
    } else {
      door.carryOut(model, effect).ifPresentOrElse(this::entered, () -> follower.heard(effect));
    }
  }

  private void end(Effect.Ending how) {
    door.forget();
    ending = Optional.of(how);
  }

  private void change(Effect.ChangeByHand change) {
    ByHand after = ByHandWork.after(change);
    if (desk.isPresent() && interview().isPresent()) {
      model = ByHandWork.shown(model, change.at(), after, desk.get(), interview().orElseThrow());
      follow();
    }
  }

  /** Tells whoever follows what page of the plan is in sight. */
  private void follow() {
    if (model.top().screen() instanceof ByHandScreen screen) {
      interview()
          .map(i -> new Effect.Shown(i, Command.PLAN, ByHandWork.lines(screen.byHand())))
          .ifPresent(follower::heard);
    }
  }

  private void workOut(Effect.WorkOutPlan plan) {
    List<String> lines =
        desk.map(d -> plan.load() ? d.load(plan.interview()) : d.plan(plan.interview()))
            .orElse(List.of());
    model = model.pushing(plan.load() ? ReadingScreen.load(lines) : ReadingScreen.plan(lines));
    follower.heard(new Effect.Shown(plan.interview(), Command.PLAN, lines));
  }

  /** What is told of a new screen outside the questions. */
  private void tellWhatCameUp() {
    if (follower == Follower.NOBODY) {
      return;
    }
    Aloud.Place here = Aloud.Place.of(model);
    if (!told.equals(Optional.of(here))) {
      told = Optional.of(here);
      Aloud.of(model).ifPresent(follower::heard);
    }
  }

  private void entered(ScreenModel next) {
    model = next;
    door.opened()
        .ifPresent(
            holding -> {
              desk = Optional.of(holding.desk());
              tellWhatCameUp();
              follower.begun(holding.desk(), holding.interview());
            });
  }
}
