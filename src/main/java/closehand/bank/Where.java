package closehand.bank;

/**
 * Where in a file something stands, so that a mistake can be found without searching.
 *
 * @param file the file's name as its author knows it
 * @param line 1-based; 0 when the whole file is meant or the line is not known yet
 * @param column 1-based; 0 when the whole file is meant or the line is not known yet
 * @param path the place inside the JSON document
 */
public record Where(String file, int line, int column, Path path) {

  /** The whole file. */
  public static Where file(String name) {
    return new Where(name, 0, 0, Path.ROOT);
  }

  /** A place further in, on a line that only the file itself can tell. */
  public Where child(String name) {
    return new Where(file, 0, 0, path.child(name));
  }

  /** An element of a list further in, on a line that only the file itself can tell. */
  public Where child(int index) {
    return child(Integer.toString(index));
  }

  /** Whether this is the other place or stands inside it. */
  public boolean isWithin(Where other) {
    return file.equals(other.file) && path.isWithin(other.path);
  }

  /** The JSON pointer of this place; empty for the whole document. */
  public String pointer() {
    return path.toString();
  }

  /** {@code file:line:column at /pointer}, leaving out what is not known. */
  @Override
  public String toString() {
    String pointer = pointer();
    return file
        + (line > 0 ? ":" + line + ":" + column : "")
        + (pointer.isEmpty() ? "" : " at " + pointer);
  }
}
