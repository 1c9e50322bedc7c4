/**
 * The arithmetic of few measurements of one person: middles and spread, pointing, small exact
 * tests, overlap, change beside a person's own wobble, and in which words all this is told.
 *
 * <p>{@link closehand.measure.statistics.Decline}, {@link closehand.measure.statistics.GripChange},
 * {@link closehand.measure.statistics.Learning}, {@link closehand.measure.statistics.Reaction} and
 * {@link closehand.measure.statistics.Taps} are shown nowhere yet: reference arithmetic with its
 * checks, for whoever looks at a measurement again.
 *
 * <p>Pure, and of numbers alone: no answers, no clock, no chance, no norms. Every formula names
 * where it was published. None of these methods was made for disabled players, so none judges a
 * person: they compare one person's tries with other tries of the same person.
 */
@NullMarked
package closehand.measure.statistics;

import org.jspecify.annotations.NullMarked;
