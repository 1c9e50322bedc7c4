/**
 * The full-screen face: screens, what each key does, and what the program around is asked to do.
 *
 * <p>Pure but for {@code ScreenFace}, which carries out the effects. No terminal, no file; frames
 * and keys stand in {@code frame}, drawing in {@code view}, the terminal in {@code terminal}.
 */
@NullMarked
package closehand.screen;

import org.jspecify.annotations.NullMarked;
