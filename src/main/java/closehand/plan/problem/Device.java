package closehand.plan.problem;

/**
 * Something with inputs that is bought, set up and put away as one.
 *
 * @param id unique among devices
 * @param name how it is called
 * @param setUpPoints what using it at all costs: setting up, money, what must be borrowed; 0 or
 *     more
 * @param parts how many of the allowed parts it counts for; 0 for what is there anyway
 */
public record Device(String id, String name, int setUpPoints, int parts) {}
