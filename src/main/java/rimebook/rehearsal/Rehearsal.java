package rimebook.rehearsal;

import java.time.Instant;

import org.jspecify.annotations.Nullable;

import rimebook.competition.CompetitionId;
import rimebook.shared.Actor;

/**
 * The one rehearsal of a service, from the touch of the button until it is deleted.
 *
 * @param competition which one it is held on
 * @param name what that one is called
 * @param stage how far it is
 * @param port where it answers, 0 before it does
 * @param why one there is none any more, empty where nothing failed
 */
record Rehearsal(CompetitionId competition, String name, Begun begun, Stage stage, int port, String why) {

	static Rehearsal of(CompetitionId competition, String name, Begun begun) {
		return new Rehearsal(competition, name, begun, Stage.COPYING, 0, "");
	}

	Rehearsal isAt(Stage stage) {
		return new Rehearsal(this.competition, this.name, this.begun, stage, this.port, "");
	}

	Rehearsal answersAt(int port) {
		return new Rehearsal(this.competition, this.name, this.begun, Stage.RUNNING, port, "");
	}

	Rehearsal failed(String key) {
		return new Rehearsal(this.competition, this.name, this.begun, Stage.FAILED, 0, key);
	}

	/** Tell whether it has come to an end of whatever kind. */
	public boolean isOver() {
		return this.stage == Stage.FAILED || this.stage == Stage.DELETED;
	}

	/** Tell whether it changes by itself in a moment. */
	public boolean waits() {
		return this.stage == Stage.COPYING || this.stage == Stage.STARTING || this.stage == Stage.ENDING;
	}

	/** Differs from that of every other stage of every other one. */
	public String print() {
		return this.stage + "-" + this.begun.at().toEpochMilli();
	}

	/** The password, for whoever began it and nobody else. */
	@Nullable String passwordFor(Actor actor) {
		return (this.stage == Stage.RUNNING && this.begun.by().isSamePersonAs(actor)) ? this.begun.password() : null;
	}

	/** How far it is. */
	enum Stage {

		/** The competition is being copied. */
		COPYING,

		/** The copy is being restored, and the process does not answer yet. */
		STARTING,

		/** It can be opened. */
		RUNNING,

		/** It is being stopped. */
		ENDING,

		/** It was stopped, and nothing of it is left. */
		DELETED,

		/** It ended by itself, or never came up; nothing of it is left. */
		FAILED

	}

	/**
	 * Who began it.
	 *
	 * @param password with which everybody signs in there
	 */
	record Begun(Actor by, Instant at, String password) {

		@Override
		public String toString() {
			return "Begun[" + this.by + ", " + this.at + "]";
		}

	}

}
