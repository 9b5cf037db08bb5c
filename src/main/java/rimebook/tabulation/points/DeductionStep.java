package rimebook.tabulation.points;

/**
 * From how many on an amount holds.
 *
 * @param from in the unit of the rule, at least 1
 * @param points for each item or skater, or in steps for all together
 */
public record DeductionStep(int from, Points points) {

}
