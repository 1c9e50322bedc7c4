package closehand.cli;

import closehand.line.Console;
import closehand.report.Clean;
import closehand.report.Glyphs;
import closehand.report.Laid;
import closehand.report.Wrap;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;

/**
 * The line face's console on standard input and output: plain text, 72 columns, nothing printed
 * over.
 */
final class PlainConsole implements Console {
  /** The narrowest screen a line is fitted to, in columns. */
  private static final int NARROWEST = 20;

  private final BufferedReader input;
  private final PrintStream output;
  private final Glyphs glyphs;
  private final boolean scripted;
  private final int width;
  private int line;

  PlainConsole(
      Surroundings surroundings, java.io.InputStream input, Glyphs glyphs, boolean scripted) {
    this.input = new BufferedReader(new InputStreamReader(input, surroundings.characters()));
    this.output = surroundings.output();
    this.width = Math.min(Wrap.WIDTH, Math.max(NARROWEST, surroundings.columns()));
    this.glyphs = glyphs;
    this.scripted = scripted;
  }

  @Override
  public void say(String paragraph) {
    print(Wrap.lines(width, "", "", Clean.of(paragraph, glyphs)));
  }

  @Override
  public void item(String mark, String text) {
    String first = " ".repeat(Math.max(0, 3 - mark.length())) + mark + "  ";
    print(Wrap.lines(width, first, " ".repeat(first.length()), Clean.of(text, glyphs)));
  }

  @Override
  public void lines(List<String> lines) {
    if (width == Wrap.WIDTH) {
      print(lines);
      return;
    }
    Laid.of(lines).forEach(paragraph -> print(paragraph.lines(width)));
  }

  @Override
  public void gap() {
    output.print("\n");
  }

  private void print(List<String> lines) {
    for (String one : lines) {
      output.print(one);
      output.print('\n');
    }
  }

  @Override
  public Optional<String> ask(String prompt) {
    output.print(prompt);
    output.flush();
    try {
      String typed = next();
      if (scripted || typed == null) {
        output.print('\n');
      }
      return Optional.ofNullable(typed);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The next line; in a script blank lines and lines that begin with # are passed over. */
  private @org.jspecify.annotations.Nullable String next() throws IOException {
    while (true) {
      String typed = input.readLine();
      line++;
      if (typed == null || !scripted || !(typed.isBlank() || typed.startsWith("#"))) {
        return typed;
      }
    }
  }

  @Override
  public void forgetTyped() {
    try {
      while (!scripted && input.ready() && input.readLine() != null) {
        line++;
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** How often is looked whether a line has come, in a go of a few seconds. */
  private static final long LOOK_MILLIS = 1;

  @Override
  public Heard askUntil(Optional<Long> endNanos) {
    if (scripted || endNanos.isEmpty()) {
      return Console.super.askUntil(endNanos);
    }
    output.flush();
    try {
      while (true) {
        long now = System.nanoTime();
        if (input.ready()) {
          String typed = next();
          return typed == null ? new Heard.Ended() : new Heard.Line(typed, now);
        }
        if (now - endNanos.get() >= 0) {
          return new Heard.TimeUp(now);
        }
        Thread.sleep(LOOK_MILLIS);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return new Heard.Ended();
    }
  }

  @Override
  public boolean scripted() {
    return scripted;
  }

  @Override
  public int lineNumber() {
    return line;
  }
}
