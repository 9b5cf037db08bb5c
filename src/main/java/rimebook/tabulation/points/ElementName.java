package rimebook.tabulation.points;

/**
 * What a sign in a code stands for.
 *
 * @param sign for example {@code ME}
 * @param feature whether it is an additional feature of an element
 * @param name for example "move element"
 * @param source where the name comes from
 */
public record ElementName(String sign, boolean feature, String name, RuleSource source) {

}
