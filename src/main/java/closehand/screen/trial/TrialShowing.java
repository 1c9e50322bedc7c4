package closehand.screen.trial;

import closehand.measure.trial.Trial;
import closehand.measure.trial.TrialDialogue;
import closehand.report.Glyphs;
import closehand.screen.frame.Frame;
import closehand.screen.frame.Guards;
import closehand.screen.frame.Key;
import closehand.screen.frame.ScreenSize;
import closehand.screen.frame.Showing;
import closehand.screen.view.Layout;
import closehand.screen.view.Spot;
import closehand.screen.view.View;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** A trial on the full screen; kept after every answer, before the next frame is shown. */
public final class TrialShowing implements Showing {
  private static final int LONGEST = 500;

  private final Function<Trial, List<String>> keep;
  private final Glyphs glyphs;
  private final Guards guards;
  private ScreenSize size = ScreenSize.USUAL;
  private State state;
  private Spot spot = Spot.START;
  private List<String> trouble = List.of();

  /**
   * A trial, new or gone on with.
   *
   * @param keep keeps it as it stands; gives what went wrong, in plain sentences
   * @param guards how long keys are ignored after others
   */
  public TrialShowing(
      TrialDialogue dialogue, Function<Trial, List<String>> keep, Glyphs glyphs, Guards guards) {
    this.state = State.begin(dialogue);
    this.keep = keep;
    this.glyphs = glyphs;
    this.guards = guards;
  }

  /** The trial as it stands. */
  public Trial trial() {
    return state.dialogue().trial();
  }

  private TrialPage page() {
    return TrialPages.of(state, trouble, glyphs);
  }

  @Override
  public Frame frame(ScreenSize now) {
    size = now;
    return View.of(page().content(), spot, now, glyphs);
  }

  @Override
  public boolean over() {
    return state.page() == State.Page.LEFT;
  }

  @Override
  public Guards guards() {
    return guards;
  }

  @Override
  public boolean repeats(Key key) {
    return Showing.super.repeats(key)
        || key instanceof Key.Typed typed
            && (state.takesFigures()
                || state.takesWords() && (typed.digit() < 0 || !state.typed().isEmpty()));
  }

  @Override
  public void press(Key key) {
    if (key instanceof Key.Closed) {
      become(state.at(State.Page.LEFT, 0));
    } else if (key instanceof Key.Typed typed) {
      typed(typed);
    } else if (key instanceof Key.Named named) {
      named(named);
    }
  }

  private void typed(Key.Typed key) {
    if (key.text().equals("?")) {
      boolean asked = state.page() == State.Page.CONSENT || state.page() == State.Page.COMPARED;
      become(asked ? state : state.at(State.Page.HELP, 0));
      return;
    }
    boolean figure = state.takesFigures() && key.digit() >= 0;
    boolean word = state.takesWords() && (key.digit() < 0 || !state.typed().isEmpty());
    if (figure || word) {
      write(key.text());
      return;
    }
    if (key.digit() >= 0) {
      digit(key.digit());
    }
  }

  private void digit(int digit) {
    List<TrialPage.Offer> offers = page().offers();
    for (int i = 0; i < offers.size(); i++) {
      if (offers.get(i).digit() == digit) {
        Doing doing = offers.get(i).doing();
        Optional<Spot> first = Layout.of(page().content(), size, glyphs).lookFirst(spot, i);
        boolean answers = doing instanceof Doing.Answer || doing instanceof Doing.Accept;
        if (first.isPresent() && answers) {
          spot = first.get();
        } else {
          take(doing);
        }
        return;
      }
    }
  }

  private void write(String text) {
    if (state.typed().length() + text.length() > LONGEST) {
      return;
    }
    state = state.writing(state.typed() + text);
    List<TrialPage.Offer> offers = page().offers();
    for (int i = 0; i < offers.size(); i++) {
      if (offers.get(i).doing() instanceof Doing.Accept) {
        spot = Layout.of(page().content(), size, glyphs).revealed(new Spot(i, spot.top()));
      }
    }
    if (state.takesFigures() && state.typed().length() >= state.figures()) {
      boolean other = state.page() != State.Page.DAY && state.typed().matches("9+");
      become(state.at(other ? State.Page.OTHER : State.Page.CHECK, 0));
    }
  }

  private void named(Key.Named key) {
    Layout layout = Layout.of(page().content(), size, glyphs);
    boolean blank = key == Key.Named.SPACE && state.takesWords() && !state.typed().isEmpty();
    if (blank && onField(layout)) {
      write(" ");
      return;
    }
    switch (key) {
      case SPACE, DOWN, TAB -> spot = layout.next(spot);
      case UP -> spot = layout.previous(spot);
      case PAGE_DOWN, RIGHT -> spot = layout.pageDown(spot);
      case PAGE_UP, LEFT -> spot = layout.pageUp(spot);
      case HOME -> spot = Spot.START;
      case ENTER -> enter(layout);
      case BACKSPACE, ESCAPE, DELETE -> back();
      case HELP -> typed(new Key.Typed("?"));
      case INTERRUPT -> take(new Doing.Leave());
      default -> {
        // No other key means anything here.
      }
    }
  }

  private boolean onField(Layout layout) {
    return chosen(layout).filter(d -> d instanceof Doing.Accept).isPresent();
  }

  private Optional<Doing> chosen(Layout layout) {
    int chosen = layout.settle(spot).chosen();
    List<TrialPage.Offer> offers = page().offers();
    return chosen < offers.size() ? Optional.of(offers.get(chosen).doing()) : Optional.empty();
  }

  /** Takes the chosen line once it is in sight; until then it shows more. */
  private void enter(Layout layout) {
    if (layout.isUnread(layout.settle(spot))) {
      spot = layout.next(spot);
    } else {
      chosen(layout).ifPresent(this::take);
    }
  }

  private void back() {
    if (!state.typed().isEmpty() && (state.takesFigures() || state.takesWords())) {
      state = state.writing(state.typed().substring(0, state.typed().length() - 1));
    } else if (state.page() == State.Page.QUESTION) {
      take(new Doing.Before());
    } else if (state.page() == State.Page.COMPARED) {
      become(state.at(state.home(), 0));
    } else if (state.page() != State.Page.CONSENT) {
      become(state.at(State.Page.QUESTION, 0));
    }
  }

  private void take(Doing doing) {
    if (doing instanceof Doing.Answer answer) {
      answered(state.dialogue().answered(answer.text()));
    } else if (doing instanceof Doing.Accept) {
      answered(state.dialogue().answered(state.asRead()));
    } else if (doing instanceof Doing.Halt halt) {
      answered(state.dialogue().stopped(halt.sign()));
    } else if (doing instanceof Doing.Before) {
      answered(state.dialogue().back());
    } else if (doing instanceof Doing.Go go) {
      boolean again = go.page() == State.Page.QUESTION && go.part() == 1;
      become((again ? state.writing("") : state).at(go.page(), again ? 0 : go.part()));
    } else if (doing instanceof Doing.Write write) {
      write(write.character());
      become(state.at(State.Page.LETTERS, 0));
    } else if (doing instanceof Doing.Erase) {
      String typed = state.typed();
      become(state.writing(typed.isEmpty() ? "" : typed.substring(0, typed.length() - 1)));
    } else {
      become(state.at(State.Page.LEFT, 0));
    }
  }

  private void answered(TrialDialogue now) {
    boolean changed = !now.trial().equals(state.dialogue().trial());
    become(state.with(now));
    if (changed) {
      trouble = keep.apply(now.trial());
    }
  }

  private void become(State next) {
    state = next;
    spot = Spot.START;
  }
}
