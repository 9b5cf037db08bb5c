package rimebook.competition.web;

import org.jspecify.annotations.Nullable;

import rimebook.competition.CompetitionState;

/** The move that a button asks for. */
record MoveForm(@Nullable CompetitionState state, @Nullable Integer version) {

	@Override
	public Integer version() {
		return (this.version != null) ? this.version : -1;
	}

}
