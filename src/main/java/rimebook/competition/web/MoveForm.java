package rimebook.competition.web;

import org.jspecify.annotations.Nullable;

import rimebook.competition.CompetitionState;

/** The move that a button asks for. */
record MoveForm(@Nullable CompetitionState state, @Nullable Integer version) {

	MoveForm {
		version = (version != null) ? version : -1;
	}

}
