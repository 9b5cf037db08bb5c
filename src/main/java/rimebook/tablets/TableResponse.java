package rimebook.tablets;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.UUID;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import org.jspecify.annotations.Nullable;

import rimebook.competition.JudgingMethod;
import rimebook.performances.PerformanceId;
import rimebook.placement.MarkWords;
import rimebook.points.PointsSubmission;
import rimebook.points.PointsTasks;
import rimebook.remarks.RemarkReceipts;
import rimebook.remarks.Remarks;
import rimebook.tabulation.PlacementRules;

/**
 * What a seat's tablet is told, as JSON. Marks are numbers with one decimal, times are
 * UTC; the members mean what they mean in {@link JudgeTable}, and all of them lie side by
 * side.
 */
record TableResponse(@JsonUnwrapped JudgeTable.Heading heading, @JsonUnwrapped Course course,
		@JsonUnwrapped Marking marking, @JsonUnwrapped Decided decided,
		@JsonInclude(JsonInclude.Include.NON_NULL) @Nullable String record) {

	/**
	 * Lay it out.
	 * @param record where the record ends, as text to keep
	 */
	static TableResponse of(JudgeTable table, @Nullable String record) {
		return new TableResponse(table.heading(),
				new Course(Now.of(table.course().now()), table.course().cards().stream().map(Card::of).toList(),
						table.course().skated(), table.course().starters()),
				new Marking(table.marking().method(), Points.of(table.marking().points()),
						Reopened.of(table.marking().reopened())),
				new Decided(table.decided().panel(), table.decided().zeroMark(),
						table.decided().ended().stream().map(PerformanceId::value).toList(),
						table.decided().corrected()),
				record);
	}

	/** The performance to mark. */
	record Now(UUID performance, int startNumber, String team, String club, List<Remark> remarks) {

		static @Nullable Now of(JudgeTable.@Nullable Now now) {
			return (now == null) ? null : new Now(now.performance().value(), now.startNumber(), now.team(), now.club(),
					now.remarks().stream().map(Remark::of).toList());
		}

	}

	/** The members of a performance to mark and, in points judging, its own points. */
	record Reopened(@JsonUnwrapped Now performance, @Nullable Points points) {

		static @Nullable Reopened of(JudgeTable.@Nullable Reopened reopened) {
			return (reopened == null) ? null : new Reopened(Objects.requireNonNull(Now.of(reopened.performance())),
					Points.of(reopened.points()));
		}

	}

	/** What the seat has to give in points judging, and what it has given. */
	record Points(@JsonUnwrapped Called called, List<String> components, @JsonUnwrapped Grades grades,
			boolean authorised, PointsSubmission.@Nullable ReceivedPointsCard card) {

		static @Nullable Points of(PointsTasks.@Nullable PointsTask task) {
			return (task == null) ? null
					: new Points(
							new Called(task.called().listSequence(), task.called().elements(),
									task.called().takenOut()),
							task.components(), new Grades(-task.highestGrade(), task.highestGrade()),
							task.called().authorised(), own(task.card()));
		}

		/** What the technical panel called. */
		record Called(int listSequence, List<PointsTasks.PointsTask.Element> elements,
				List<PointsTasks.PointsTask.TakenOut> takenOut) {
		}

		/** Which grades can be given. */
		record Grades(int lowestGrade, int highestGrade) {
		}

	}

	private static PointsSubmission.@Nullable ReceivedPointsCard own(PointsTasks.PointsTask.@Nullable OwnCard card) {
		return (card != null) ? PointsSubmission.ReceivedPointsCard.of(card) : null;
	}

	/** What the referee tells the panel. */
	record Remark(UUID id, Remarks.RemarkKind kind, String text, Instant notedAt, boolean seen) {

		static Remark of(RemarkReceipts.ToSeat notice) {
			Remarks.RemarkView remark = notice.remark();
			return new Remark(remark.id(), remark.kind(), remark.text(), remark.notedAt(), notice.seen());
		}

	}

	/** A card of this seat. */
	record Card(UUID performance, int startNumber, String team, @JsonUnwrapped Version version, boolean closed) {

		static Card of(JudgeTable.OwnCard card) {
			return new Card(card.performance().value(), card.startNumber(), card.team(),
					new Version(MarkWords.decimal(card.version().first()), MarkWords.decimal(card.version().second()),
							card.version().sequence(), card.version().receivedAt()),
					card.closed());
		}

		/** The version of a card that counts. */
		record Version(BigDecimal first, BigDecimal second, int sequence, Instant receivedAt) {
		}

	}

	/** How far the segment has come, with the seat's own cards. */
	record Course(@Nullable Now now, List<Card> cards, int skated, int starters) {
	}

	/** What the seat has to give. */
	record Marking(JudgingMethod method, @Nullable Points points, @Nullable Reopened reopened) {
	}

	/** What was decided that a seat has to know. */
	record Decided(@Nullable String panel, PlacementRules.ZeroMark zeroMark, List<UUID> ended,
			List<JudgeTable.Corrected> corrected) {
	}

}
