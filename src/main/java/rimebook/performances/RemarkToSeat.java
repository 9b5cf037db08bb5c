package rimebook.performances;

/**
 * A remark of the referee as one seat has it.
 *
 * @param seen whether this seat has said that it has seen it
 */
public record RemarkToSeat(RemarkView remark, boolean seen) {
}
