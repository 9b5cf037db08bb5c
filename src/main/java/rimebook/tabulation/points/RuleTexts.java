package rimebook.tabulation.points;

/**
 * The tables of a rule set as comma-separated text, each with a header; lines beginning
 * with {@code #} are comments. Every row but those of the values ends with the columns
 * {@code provenance} (published, recomputed, practice or from memory) and {@code note}.
 *
 * @param settings {@code setting,value}: {@code id}, {@code title}, {@code trim-from},
 * {@code tie-break-short} and {@code tie-break-free} (elements, components or none),
 * {@code floor-at-zero} (yes or no) and {@code disqualified-places} (close-all,
 * close-final or leave-gaps)
 * @param values see {@link ValueTable}
 * @param components {@code segment,level,component,factor}: the segment is short or free
 * @param deductions {@code item,name,basis,unit,from,points}: the basis is per item, per
 * skater or steps; one row for each step
 * @param elements {@code sign,kind,name}: the kind is element or feature
 */
public record RuleTexts(String settings, String values, String components, String deductions, String elements) {

}
