package closehand.cli;

import closehand.measure.trial.Trial;
import closehand.measure.trial.TrialDialogue;
import closehand.report.Glyphs;
import closehand.screen.Settings;
import closehand.screen.frame.Guards;
import closehand.screen.frame.InTurn;
import closehand.screen.practice.BeforeFace;
import closehand.screen.terminal.FaceChoice;
import closehand.screen.terminal.FullScreen;
import closehand.screen.terminal.Theme;
import closehand.screen.trial.TrialShowing;
import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Shows a trial on the full screen where the terminal can serve. */
final class TrialScreen {
  private final Surroundings surroundings;
  private final Glyphs glyphs;
  private final boolean line;
  private String why = "";

  /**
   * For one run.
   *
   * @param line whether the line face is wanted even where the full screen would do
   */
  TrialScreen(Surroundings surroundings, Glyphs glyphs, boolean line) {
    this.surroundings = surroundings;
    this.glyphs = glyphs;
    this.line = line;
  }

  /**
   * That it was shown.
   *
   * @param begun whether the questions before it let it begin
   * @param trial the trial as it stood at the end
   */
  record Shown(boolean begun, Trial trial) {}

  /** Why it was not shown. */
  String why() {
    return why;
  }

  /** Shows it until somebody leaves; nothing where the line face is to serve. */
  Optional<Shown> show(
      TrialCommand.Asked asked, TrialDialogue dialogue, Function<Trial, List<String>> keep)
      throws IOException {
    FaceChoice choice =
        FaceChoice.of(
            new FaceChoice.Circumstances(
                line,
                /* scripted= */ false,
                surroundings.typed(),
                surroundings.environment(),
                System.getProperty("os.name", "")));
    why = choice.why();
    if (!choice.fullScreen()) {
      return Optional.empty();
    }
    Settings settings = SettingsFile.in(surroundings).read();
    Optional<Theme> theme =
        Theme.chosen(Optional.empty(), /* noColour= */ false, surroundings.environment());
    Optional<FullScreen> screen =
        FullScreen.takeOver(
            new FileInputStream(FileDescriptor.in),
            new FileOutputStream(FileDescriptor.out),
            surroundings.characters(),
            theme.orElse(Theme.PLAIN));
    if (screen.isEmpty()) {
      why = FaceChoice.noSetUp().why();
      return Optional.empty();
    }
    Guards guards = new Guards(settings.holdMillis(), settings.bounceMillis());
    TrialShowing showing = new TrialShowing(dialogue, keep, glyphs, guards);
    BeforeFace before = new BeforeFace(asked.before(), asked.settle(), glyphs, guards);
    screen
        .get()
        .show(new InTurn(before, () -> before.isClear() ? Optional.of(showing) : Optional.empty()));
    return Optional.of(new Shown(before.isClear(), showing.trial()));
  }
}
