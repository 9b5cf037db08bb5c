package rimebook.competition.web;

import org.jspecify.annotations.Nullable;

import rimebook.competition.Cancellations;
import rimebook.competition.EventId;
import rimebook.competition.SegmentId;
import rimebook.shared.Actor;

/** What can be done with an event or one of its segments when the plan changes. */
enum CancellationAct {

	/** It does not take place. */
	CANCEL {

		@Override
		void on(Cancellations all, Planned planned, String reason, Actor actor) {
			if (planned.segment() == null) {
				all.cancel(planned.event(), reason, actor);
			}
			else {
				all.cancel(planned.segment(), reason, actor);
			}
		}

	},

	/** It takes place after all. */
	RETURN {

		@Override
		void on(Cancellations all, Planned planned, String reason, Actor actor) {
			if (planned.segment() == null) {
				all.bringBack(planned.event(), actor);
			}
			else {
				all.bringBack(planned.segment(), actor);
			}
		}

	},

	/** It was never meant. */
	REMOVE {

		@Override
		void on(Cancellations all, Planned planned, String reason, Actor actor) {
			if (planned.segment() == null) {
				all.remove(planned.event(), actor);
			}
			else {
				all.remove(planned.segment(), actor);
			}
		}

	};

	abstract void on(Cancellations all, Planned planned, String reason, Actor actor);

	/** Tell whether the event itself is gone afterwards. */
	boolean endsEvent(@Nullable SegmentId segment) {
		return this == REMOVE && segment == null;
	}

	/**
	 * What stands in the plan.
	 *
	 * @param segment one of the event's, {@code null} for the whole event
	 */
	record Planned(EventId event, @Nullable SegmentId segment) {
	}

}
