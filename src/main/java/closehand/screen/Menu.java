package closehand.screen;

import closehand.interview.Message;
import closehand.interview.Provenance;
import java.util.Optional;

/**
 * A short list of things to do.
 *
 * @param kind which list
 * @param page which page of it, from 0
 * @param by a person chosen on the list before, where there is one
 */
record Menu(Kind kind, int page, Optional<Provenance.By> by) implements Screen {
  enum Kind {
    START,
    CASES,
    WHO_ASKS,
    HOW_LONG,
    SKIP,
    MORE,
    CONDUCT,
    WHO_ANSWERS,
    HOW_KNOWN,
    LOWER,
    STOP,
    FINISHED,
    SETTINGS,
    LEAVE,
    DELETE,
    DISCARD,
    WRITTEN_DOWN
  }

  static Menu of(Kind kind) {
    return new Menu(kind, 0, Optional.empty());
  }

  /** From the end the way back is the question before; everywhere else it is the screen below. */
  @Override
  public Act back() {
    return kind == Kind.FINISHED ? new Act.Send(new Message.Back()) : new Act.Close();
  }

  Menu turned(int next) {
    return new Menu(kind, next, by);
  }

  @Override
  public Shown shown(ScreenModel model) {
    return switch (kind) {
      case START, CASES, WHO_ASKS, HOW_LONG -> Beginnings.of(this, model);
      case DISCARD -> CaseScreen.discarding();
      case SETTINGS -> SettingsMenu.of(model);
      case CONDUCT, WHO_ANSWERS, HOW_KNOWN, LOWER -> PeopleMenus.of(this, model);
      case SKIP, MORE, STOP, FINISHED, LEAVE, DELETE, WRITTEN_DOWN -> AsideMenus.of(this, model);
    };
  }
}
