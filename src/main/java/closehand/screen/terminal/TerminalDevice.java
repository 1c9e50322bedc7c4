package closehand.screen.terminal;

import closehand.screen.frame.ScreenSize;
import closehand.screen.frame.Showing;
import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.TextColor;
import com.googlecode.lanterna.terminal.ansi.ANSITerminal;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.Charset;
import java.util.Set;

/**
 * The terminal as the library's screen writes to it. Writes only: keys are read and decoded
 * elsewhere, and nothing is ever asked of the terminal.
 */
final class TerminalDevice extends ANSITerminal {
  private static final String PASTE_MARKED = "\u001b[?2004h";
  private static final String PASTE_UNMARKED = "\u001b[?2004l";

  /** Every movement, told by numbers (xterm control sequences, 1003 and 1006). */
  private static final String POINTER_TOLD = "\u001b[?1003h\u001b[?1006h";

  private static final String POINTER_NOT_TOLD = "\u001b[?1003l\u001b[?1006l";
  private static final String FOCUS_TOLD = "\u001b[?1004h";
  private static final String FOCUS_NOT_TOLD = "\u001b[?1004l";

  private TerminalSize size;
  private Set<Showing.Report> told = Set.of();

  /**
   * A device.
   *
   * @param output where to write; it should keep a whole frame together
   * @param characters how to write characters as bytes
   * @param size how large the screen is
   */
  TerminalDevice(OutputStream output, Charset characters, ScreenSize size) {
    super(InputStream.nullInputStream(), output, characters);
    this.size = of(size);
  }

  /** Takes note of another size; the library's screen is told. */
  void resize(ScreenSize changed) throws IOException {
    size = of(changed);
    getTerminalSize();
  }

  private static TerminalSize of(ScreenSize size) {
    return new TerminalSize(size.columns(), size.rows());
  }

  @Override
  protected TerminalSize findTerminalSize() {
    return size;
  }

  /** The library writes a zero byte after some characters and asks about others; we do not. */
  @Override
  public void putString(String text) throws IOException {
    writeToTerminal(text.getBytes(getCharset()));
  }

  /** "The usual colour" needs no code: no look has one colour without the other. */
  @Override
  public void setForegroundColor(TextColor colour) throws IOException {
    if (colour != TextColor.ANSI.DEFAULT) {
      super.setForegroundColor(colour);
    }
  }

  @Override
  public void setBackgroundColor(TextColor colour) throws IOException {
    if (colour != TextColor.ANSI.DEFAULT) {
      super.setBackgroundColor(colour);
    }
  }

  /** Takes the screen over; from now on the terminal marks what is pasted. */
  @Override
  public void enterPrivateMode() throws IOException {
    super.enterPrivateMode();
    write(PASTE_MARKED);
  }

  /** Has the terminal tell these things besides keys, and no others. */
  void report(Set<Showing.Report> wanted) throws IOException {
    change(wanted, Showing.Report.POINTER, POINTER_TOLD, POINTER_NOT_TOLD);
    change(wanted, Showing.Report.FOCUS, FOCUS_TOLD, FOCUS_NOT_TOLD);
    told = Set.copyOf(wanted);
  }

  private void change(Set<Showing.Report> wanted, Showing.Report report, String begin, String end)
      throws IOException {
    if (wanted.contains(report) != told.contains(report)) {
      write(wanted.contains(report) ? begin : end);
      flush();
    }
  }

  @Override
  public void exitPrivateMode() throws IOException {
    report(Set.of());
    write(PASTE_UNMARKED);
    super.exitPrivateMode();
  }

  private void write(String sequence) throws IOException {
    writeToTerminal(sequence.getBytes(getCharset()));
  }
}
