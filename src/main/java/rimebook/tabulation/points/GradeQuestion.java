package rimebook.tabulation.points;

/**
 * What a judge is asked before the judge's sheet can be submitted.
 *
 * @param judge number of the judge, from 1
 * @param key of the element
 * @param state whether a grade is missing or has to be confirmed
 */
public record GradeQuestion(int judge, int key, GradeState state) {

}
