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
		void on(Cancellations all, EventId event, @Nullable SegmentId segment, String reason, Actor actor) {
			if (segment == null) {
				all.cancel(event, reason, actor);
			}
			else {
				all.cancel(segment, reason, actor);
			}
		}

	},

	/** It takes place after all. */
	RETURN {

		@Override
		void on(Cancellations all, EventId event, @Nullable SegmentId segment, String reason, Actor actor) {
			if (segment == null) {
				all.bringBack(event, actor);
			}
			else {
				all.bringBack(segment, actor);
			}
		}

	},

	/** It was never meant. */
	REMOVE {

		@Override
		void on(Cancellations all, EventId event, @Nullable SegmentId segment, String reason, Actor actor) {
			if (segment == null) {
				all.remove(event, actor);
			}
			else {
				all.remove(segment, actor);
			}
		}

	};

	abstract void on(Cancellations all, EventId event, @Nullable SegmentId segment, String reason, Actor actor);

	/** Tell whether the event itself is gone afterwards. */
	boolean endsEvent(@Nullable SegmentId segment) {
		return this == REMOVE && segment == null;
	}

}
