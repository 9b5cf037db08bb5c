package rimebook.stand.web;

import java.util.List;
import java.util.function.Predicate;

import org.jspecify.annotations.Nullable;

import rimebook.entries.EntryId;
import rimebook.performances.PerformanceId;
import rimebook.performances.PerformanceStatus;
import rimebook.stand.StandView;
import rimebook.wording.Sentence;

/**
 * The running order as a strip.
 *
 * @param done how many of those that did not withdraw are done
 * @param of how many did not withdraw
 * @param punctuality when the next team is expected, and how late that is; may be none
 */
record OrderPart(List<OrderRow> rows, int done, int of, Sentence punctuality) implements LivePart {

	static OrderPart of(StandView stand) {
		return of(stand, Sentence.NONE, Lacks.NOTHING);
	}

	static OrderPart of(StandView stand, Sentence punctuality, Lacks lacks) {
		List<OrderRow> rows = stand.order().stream().map((row) -> OrderRow.of(row, stand, lacks)).toList();
		List<PerformanceStatus> started = rows.stream()
			.map(OrderRow::status)
			.filter((status) -> status != PerformanceStatus.WITHDRAWN)
			.toList();
		return new OrderPart(rows, (int) started.stream().filter(PerformanceStatus::isDone).count(), started.size(),
				punctuality);
	}

	/**
	 * What teams that are still to skate lack.
	 *
	 * @param music whether the music desk has nothing to play for a team
	 * @param door whether something is left to do for a team at the door
	 * @param people whether fewer are to be on the ice than the event asks for
	 */
	record Lacks(Predicate<EntryId> music, Predicate<EntryId> door, Predicate<EntryId> people) {

		static final Lacks NOTHING = new Lacks((entry) -> false, (entry) -> false, (entry) -> false);

	}

	/**
	 * A line of the running order.
	 *
	 * @param mark how it stands to the ice: now, next, late for one that was passed over,
	 * later for one that waits by the referee's word, waiting, done, again or gap
	 */
	record OrderRow(PerformanceId id, Turn turn, Team team, Course course, String mark) {

		static OrderRow of(StandView.Row row, StandView stand, Lacks lacks) {
			EntryId entry = row.performance().entry();
			boolean isToSkate = isToSkate(row.performance().status());
			return new OrderRow(row.performance().id(), new Turn(row.performance().startNumber(),
					row.performance().start().group(), row.performance().turn().callReason()),
					new Team(row.team(), row.club(), row.spokenAs()),
					new Course(row.performance().status(), row.performance().course().statusReason(),
							row.performance().isAgain(), stand.reopened() == null && row.equals(stand.lastClosed()),
							isToSkate && lacks.music().test(entry), isToSkate && lacks.people().test(entry),
							(isToSkate && lacks.door().test(entry)) ? entry : null),
					mark(row, stand));
		}

		private static boolean isToSkate(PerformanceStatus status) {
			return status == PerformanceStatus.WAITING || status == PerformanceStatus.ON_ICE;
		}

		private static String mark(StandView.Row row, StandView stand) {
			return switch (row.performance().status()) {
				case ON_ICE -> "now";
				case WAITING -> waiting(row, stand);
				case CLOSED -> "done";
				case REOPENED -> "again";
				case WITHDRAWN, NOT_FINISHED, DISQUALIFIED, SET_ASIDE -> "gap";
			};
		}

		/** Tell whether two officials can set how it came through. */
		public boolean canCorrect() {
			return this.course.status().isDone();
		}

		private static String waiting(StandView.Row row, StandView stand) {
			if (row.equals(stand.next())) {
				return "next";
			}
			return row.performance().turn().postponed() ? "later" : (stand.isPassedOver(row) ? "late" : "waiting");
		}

		/** Tell whether the referee can call it although another team comes next. */
		public boolean canCall() {
			return this.course.status() == PerformanceStatus.WAITING && !this.mark.equals("next");
		}

		/** Tell whether it can still be ended without marks that count. */
		public boolean canEnd() {
			return this.course.status().canBecome(PerformanceStatus.DISQUALIFIED);
		}

		/** How far it has come, in a word. */
		public PerformanceStatus status() {
			return this.course.status();
		}

		/** The team as people know it. */
		record Team(String name, String club, String spokenAs) {
		}

		/**
		 * When it is its turn.
		 *
		 * @param callReason why it was called out of the drawn order, else empty
		 */
		record Turn(int number, int group, String callReason) {
		}

		/**
		 * How far it has come, and what can be done about it.
		 *
		 * @param reason why there is a gap, the cards are open again or it waits, else
		 * empty
		 * @param skatesAgain whether the whole programme is skated again
		 * @param canReopen whether its closed cards can be opened again
		 * @param lacksMusic whether it is still to skate and there is no music for it
		 * @param tooFew whether it is still to skate and its people are too few
		 * @param missed the entry, where it is still to skate and something is left to do
		 * for it at the door, else {@code null}
		 */
		record Course(PerformanceStatus status, String reason, boolean skatesAgain, boolean canReopen,
				boolean lacksMusic, boolean tooFew, @Nullable EntryId missed) {
		}

	}

}
