package closehand.screen;

/**
 * One place of a grid: a field of the question for one hand.
 *
 * @param fact the field
 * @param label what it asks, such as "Left thumb"
 * @param words the answer it has, or empty
 */
record Cell(String fact, String label, String words) {}
