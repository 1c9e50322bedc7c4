package closehand.screen;

import java.util.Optional;

/**
 * One screen. It holds what belongs to it alone, such as a half-typed line; everything else is read
 * from the model it is shown with.
 */
sealed interface Screen
    permits Menu,
        QuestionScreen,
        SealScreen,
        SecretScreen,
        CaseScreen,
        CheckNumberScreen,
        BoardScreen,
        TextScreen,
        ReadingScreen,
        ByHandScreen,
        OverviewScreen,
        ExplainScreen,
        NoticeScreen,
        LettersScreen {
  /** The screen put together. */
  Shown shown(ScreenModel model);

  /** Whether what stands here is read to its end before anything is taken. */
  default boolean isReadFirst() {
    return false;
  }

  /** What going back does here. */
  default Act back() {
    return new Act.Close();
  }

  /** The line being typed on this screen, where there is one. */
  default Optional<Draft> draft() {
    return Optional.empty();
  }

  /** What taking the typed line does. */
  default Act accept(ScreenModel model) {
    throw new IllegalStateException("nothing is typed here");
  }

  /** The same screen with another typed line; only called where there is one. */
  default Screen typing(Draft draft) {
    throw new IllegalStateException("nothing is typed here");
  }
}
