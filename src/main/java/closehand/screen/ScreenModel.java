package closehand.screen;

import closehand.interview.Interview;
import closehand.interview.Measured;
import closehand.interview.Message;
import closehand.report.Advisor;
import closehand.report.Glyphs;
import closehand.screen.frame.Frame;
import closehand.screen.frame.Key;
import closehand.screen.frame.ScreenSize;
import closehand.screen.view.Spot;
import closehand.screen.view.View;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Everything the full-screen face knows. Immutable: {@link #after} gives the next one, {@link
 * #frame} what is to be seen.
 *
 * @param size how large the screen is
 * @param glyphs which characters it can show
 * @param settings how it is to behave
 * @param cases the names of saved cases
 * @param talk the interview, once there is one
 * @param layers screens on top of one another, the one in sight last; never empty
 * @param said what came of the last key
 */
public record ScreenModel(
    ScreenSize size,
    Glyphs glyphs,
    Settings settings,
    List<String> cases,
    Optional<Talk> talk,
    List<Layer> layers,
    Said said) {
  /** Copies the lists; no screen at all is a caller's bug. */
  public ScreenModel {
    cases = List.copyOf(cases);
    layers = List.copyOf(layers);
    if (layers.isEmpty()) {
      throw new IllegalArgumentException("no screen is in sight");
    }
  }

  /** What comes of a key. */
  public record Step(ScreenModel model, List<Effect> effects) {
    /** Copies the effects. */
    public Step {
      effects = List.copyOf(effects);
    }
  }

  /** The start: a new interview, a saved case, the example, the bank. */
  public static ScreenModel start(
      ScreenSize size, Glyphs glyphs, Settings settings, List<String> cases) {
    return new ScreenModel(
        size,
        glyphs,
        settings,
        cases,
        Optional.empty(),
        List.of(new Layer(Menu.of(Menu.Kind.START), Spot.START)),
        Said.NOTHING);
  }

  /** The next model and what is to be done outside. */
  public Step after(Key key) {
    Step step = Pressing.take(this, key);
    ScreenModel next = step.model();
    return next.said().refusal() || stays(next)
        ? new Step(Pressing.revealed(next), step.effects())
        : step;
  }

  /** Whether the mark stays where it was and in sight, though what is said now takes its room. */
  private boolean stays(ScreenModel next) {
    return next.layers.size() == layers.size()
        && next.top().equals(top())
        && next.size.equals(size)
        && Pressing.layout(this).isInSight(top().spot(), top().spot().chosen());
  }

  /** With an interview to hold, new or opened again. */
  public ScreenModel holding(Advisor advisor, Interview interview, List<String> sentences) {
    return Leading.begin(this, Talk.about(advisor, interview), sentences);
  }

  /** With a case that was sealed just now; its words are shown this once. */
  public ScreenModel sealed(Advisor advisor, Interview interview, List<String> sentences) {
    return holding(advisor, interview, List.of()).pushing(ReadingScreen.sealed(sentences));
  }

  /** What came of an effect, to be read on a screen of its own. */
  public ScreenModel told(String heading, List<String> lines) {
    return pushing(ReadingScreen.lines(heading, lines));
  }

  /** With the screen in sight closed, where it took a passphrase or asked how to seal. */
  ScreenModel withoutSecrets() {
    ScreenModel next = this;
    while (next.top().screen() instanceof SecretScreen
        || next.top().screen() instanceof SealScreen) {
      next = next.closing();
    }
    return next;
  }

  /** At the start again, with these cases saved. */
  ScreenModel restarted(List<String> names) {
    return start(size, glyphs, settings, names);
  }

  /** What came of keeping the interview; nothing when it is kept. */
  public ScreenModel kept(List<String> trouble) {
    return talk.map(t -> with(t.troubled(trouble))).orElse(this);
  }

  /** Whether a key writes into a line here, so that the same one may come again at once. */
  public boolean writes(Key key) {
    Optional<Draft> draft = top().screen().draft();
    if (draft.isEmpty()) {
      return false;
    }
    boolean empty = draft.get().isEmpty();
    boolean words = draft.get().kind() != Draft.Kind.FIGURES;
    return key instanceof Key.Typed typed
        ? !words || !empty || typed.digit() < 0
        : key == Key.Named.BACKSPACE && !empty;
  }

  /** The fact of the measured task that is to be run now, once nothing waits to be read. */
  Optional<String> taskDue() {
    boolean clear = top().screen() instanceof QuestionScreen;
    return clear ? talk.flatMap(t -> t.interview().taskDue()) : Optional.empty();
  }

  /** After a measured task. */
  Step ended(Message.EndTask end) {
    String said = end.measured().ending() == Measured.Ending.DONE ? "Noted as measured." : "";
    return Leading.send(this, end, said);
  }

  /** What is to be seen. */
  public Frame frame() {
    return View.of(Foot.content(this), top().spot(), size, glyphs);
  }

  /**
   * Whether something waits to be read to its end: a stop or a caution, or words shown only once.
   * Nothing may pass it by. A stop that ends the session comes again by itself.
   */
  boolean waits() {
    return layers.stream()
        .map(Layer::screen)
        .anyMatch(
            screen ->
                screen instanceof NoticeScreen notice && !notice.ends()
                    || screen instanceof ReadingScreen reading
                        && reading.kind() == ReadingScreen.Kind.SEALED);
  }

  Layer top() {
    return layers.get(layers.size() - 1);
  }

  Shown shown() {
    return top().screen().shown(this);
  }

  ScreenModel with(Talk next) {
    return new ScreenModel(size, glyphs, settings, cases, Optional.of(next), layers, said);
  }

  ScreenModel with(Settings next) {
    return new ScreenModel(size, glyphs, next, cases, talk, layers, said);
  }

  ScreenModel with(ScreenSize next) {
    return new ScreenModel(next, glyphs, settings, cases, talk, layers, said);
  }

  ScreenModel saying(Said next) {
    return new ScreenModel(size, glyphs, settings, cases, talk, layers, next);
  }

  ScreenModel piled(List<Layer> next) {
    return new ScreenModel(size, glyphs, settings, cases, talk, next, said);
  }

  /** With the cursor elsewhere on the top screen. */
  ScreenModel at(Spot spot) {
    return replacing(new Layer(top().screen(), spot));
  }

  ScreenModel replacing(Layer layer) {
    List<Layer> next = new ArrayList<>(layers);
    next.set(next.size() - 1, layer);
    return piled(next);
  }

  ScreenModel pushing(Screen screen) {
    List<Layer> next = new ArrayList<>(layers);
    next.add(fresh(screen));
    return piled(next).begun();
  }

  /** A screen in place of the top, at its start. */
  ScreenModel swapping(Screen screen) {
    return replacing(fresh(screen)).begun();
  }

  /** A list that begins further down shows where; the text of a question is read first. */
  private ScreenModel begun() {
    boolean list = top().spot().chosen() > 0 && !(top().screen() instanceof QuestionScreen);
    return list ? Pressing.revealed(this) : this;
  }

  /** With the top screen gone; the last one stays. */
  ScreenModel closing() {
    return layers.size() == 1 ? this : piled(layers.subList(0, layers.size() - 1));
  }

  /** A screen at its start. */
  Layer fresh(Screen screen) {
    return new Layer(screen, new Spot(screen.shown(this).begin(), 0));
  }
}
