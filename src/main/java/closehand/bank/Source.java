package closehand.bank;

/**
 * A published source, or a named basis that is none ("common practice").
 *
 * @param id such as {@code S43} or {@code common practice}
 * @param usedFor what it supports
 * @param reference author, year, title, place
 * @param status how far it was checked
 */
public record Source(String id, String usedFor, String reference, String status) {}
