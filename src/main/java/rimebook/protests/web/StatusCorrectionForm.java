package rimebook.protests.web;

import org.jspecify.annotations.Nullable;

import rimebook.performances.PerformanceStatus;

/** How a team came through a segment, as typed. */
record StatusCorrectionForm(@Nullable String performance, @Nullable PerformanceStatus status, @Nullable String reason,
		@Nullable String protest) {
}
