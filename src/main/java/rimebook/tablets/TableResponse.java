package rimebook.tablets;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.UUID;

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
import rimebook.tabulation.SegmentKind;

/**
 * What a seat's tablet is told, as JSON. Marks are numbers with one decimal, times are
 * UTC; the members mean what they mean in {@link JudgeTable}.
 */
record TableResponse(String seat, String event, String segment, @Nullable SegmentKind kind,
		PlacementRules.CardTieBreak secondLook, @Nullable Now now, List<Card> cards, int skated, int starters,
		JudgingMethod method, @Nullable Points points, @Nullable Reopened reopened, @Nullable String panel,
		PlacementRules.ZeroMark zeroMark, List<UUID> ended, List<JudgeTable.Corrected> corrected) {

	static TableResponse of(JudgeTable table) {
		return new TableResponse(table.seat(), table.event(), table.segment(), table.kind(), table.secondLook(),
				Now.of(table.now()), table.cards().stream().map(Card::of).toList(), table.skated(), table.starters(),
				table.method(), Points.of(table.points()), Reopened.of(table.reopened()), table.panel(),
				table.zeroMark(), table.ended().stream().map(PerformanceId::value).toList(), table.corrected());
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
	record Points(int listSequence, List<PointsTasks.PointsTask.Element> elements,
			List<PointsTasks.PointsTask.TakenOut> takenOut, List<String> components, int lowestGrade, int highestGrade,
			boolean authorised, PointsSubmission.@Nullable ReceivedPointsCard card) {

		static @Nullable Points of(PointsTasks.@Nullable PointsTask task) {
			return (task == null) ? null : new Points(task.listSequence(), task.elements(), task.takenOut(),
					task.components(), -task.highestGrade(), task.highestGrade(), task.authorised(), own(task.card()));
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
	record Card(UUID performance, int startNumber, String team, BigDecimal first, BigDecimal second, int sequence,
			Instant receivedAt, boolean closed) {

		static Card of(JudgeTable.OwnCard card) {
			return new Card(card.performance().value(), card.startNumber(), card.team(),
					MarkWords.decimal(card.first()), MarkWords.decimal(card.second()), card.sequence(),
					card.receivedAt(), card.closed());
		}

	}

}
