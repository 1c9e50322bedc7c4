package closehand.screen.picture;

import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;

/**
 * Turns the golden screens into pictures, to be looked at by somebody who changes a screen.
 *
 * <p>Draws the usual theme: bold, reversed and underlined on the terminal's own colours, and a
 * frame where the terminal's cursor stands. Run it with the class path of the tests: {@code
 * closehand.screen.picture.ScreenPictures FOLDER [SIZE...]}. Nothing of it is in the program.
 */
public final class ScreenPictures {
  private static final Path GOLDEN = Path.of("src/test/resources/screen");
  private static final Font FONT = new Font(Font.MONOSPACED, Font.PLAIN, 16);
  private static final Color PAPER = new Color(0xF7, 0xF7, 0xF2);
  private static final Color INK = new Color(0x18, 0x18, 0x18);
  private static final Color CURSOR = new Color(0xB0, 0x30, 0x10);

  private ScreenPictures() {}

  /** Draws every golden screen at the sizes named, or at all. */
  public static void main(String[] arguments) throws IOException {
    System.setProperty("java.awt.headless", "true");
    Path folder = Files.createDirectories(Path.of(arguments[0]));
    List<String> sizes = List.of(arguments).subList(1, arguments.length);
    List<Path> files;
    try (Stream<Path> all = Files.list(GOLDEN)) {
      files = all.sorted().toList();
    }
    for (Path file : files) {
      for (Golden one : Golden.in(Files.readAllLines(file))) {
        if (sizes.isEmpty() || sizes.contains(one.size())) {
          String name = file.getFileName().toString().replace(".txt", "-" + one.size() + ".png");
          ImageIO.write(picture(one), "png", folder.resolve(name).toFile());
        }
      }
    }
  }

  private static BufferedImage picture(Golden golden) {
    BufferedImage measured = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB);
    FontMetrics metrics = measured.createGraphics().getFontMetrics(FONT);
    int cell = metrics.charWidth('m');
    int line = metrics.getHeight();
    int columns = Integer.parseInt(golden.size().split("x")[0]);
    BufferedImage image =
        new BufferedImage(columns * cell, golden.text().size() * line, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = image.createGraphics();
    graphics.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    graphics.setColor(PAPER);
    graphics.fillRect(0, 0, image.getWidth(), image.getHeight());
    for (int row = 0; row < golden.text().size(); row++) {
      for (int column = 0; column < columns; column++) {
        draw(graphics, golden, row, column, cell, line, metrics.getAscent());
      }
    }
    graphics.setColor(CURSOR);
    graphics.drawRect(golden.cursorColumn() * cell, golden.cursorRow() * line, cell, line - 1);
    return image;
  }

  private static void draw(
      Graphics2D graphics, Golden golden, int row, int column, int cell, int line, int ascent) {
    char role = at(golden.roles().get(row), column);
    boolean reversed = role == 'C' || role == 'B';
    if (reversed) {
      graphics.setColor(INK);
      graphics.fillRect(column * cell, row * line, cell, line);
    }
    boolean bold = "SMKW".indexOf(role) >= 0;
    graphics.setFont(bold ? FONT.deriveFont(Font.BOLD) : FONT);
    graphics.setColor(reversed ? PAPER : INK);
    graphics.drawString(
        String.valueOf(at(golden.text().get(row), column)), column * cell, row * line + ascent);
    if (role == 'F') {
      graphics.drawLine(
          column * cell, (row + 1) * line - 2, (column + 1) * cell, (row + 1) * line - 2);
    }
  }

  private static char at(String row, int column) {
    return column < row.length() ? row.charAt(column) : ' ';
  }

  /** One frame of a golden file. */
  private record Golden(
      String size, List<String> text, List<String> roles, int cursorRow, int cursorColumn) {
    static List<Golden> in(List<String> lines) {
      List<Golden> all = new ArrayList<>();
      for (int i = 0; i < lines.size(); i++) {
        if (lines.get(i).startsWith("== ")) {
          all.add(one(lines, i));
        }
      }
      return all;
    }

    private static Golden one(List<String> lines, int from) {
      List<String> text = new ArrayList<>();
      List<String> roles = new ArrayList<>();
      int line = from + 1;
      for (; lines.get(line).startsWith("|"); line++) {
        text.add(lines.get(line).substring(1));
      }
      String[] cursor = lines.get(line).replaceAll("[^0-9]+", " ").strip().split(" ");
      for (line++; line < lines.size() && lines.get(line).startsWith("|"); line++) {
        roles.add(lines.get(line).substring(1));
      }
      return new Golden(
          lines.get(from).substring(3),
          text,
          roles,
          Integer.parseInt(cursor[0]),
          Integer.parseInt(cursor[1]));
    }
  }
}
