package rimebook.tabulation.points;

/**
 * A single setting of a rule set as it was written down.
 *
 * @param name for example {@code trim-from}
 * @param value as written
 * @param source where it comes from
 */
public record SourcedSetting(String name, String value, RuleSource source) {

}
