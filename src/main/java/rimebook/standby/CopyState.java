package rimebook.standby;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

import org.jspecify.annotations.Nullable;

import rimebook.wording.Sentence;

/**
 * How it stands with the second place.
 *
 * @param kind in a word
 * @param since since when it is so, UTC
 * @param kept what lies there, {@code null} while nothing of this run does
 * @param why what is the matter, nothing to say where all is well
 */
record CopyState(Kind kind, Instant since, @Nullable Kept kept, Sentence why) {

	private static final Duration PATIENCE = Duration.ofMinutes(1);

	/** How it is at that moment: a place that does not answer for a minute is behind. */
	CopyState at(Instant now) {
		Instant last = (this.kept != null) ? this.kept.until() : this.since;
		boolean behind = (this.kind == Kind.KEPT || this.kind == Kind.STARTING)
				&& Duration.between(last, now).compareTo(PATIENCE) > 0;
		return behind ? new CopyState(Kind.BEHIND, last, this.kept, Sentence.of("standby.behind")) : this;
	}

	/** Whether nothing has to be told. */
	public boolean isWell() {
		return (this.kind == Kind.KEPT && !isDoubtful()) || this.kind == Kind.STARTING || this.kind == Kind.ELSEWHERE;
	}

	/** What is the matter with a place where everything lies. */
	Optional<Sentence> doubt() {
		if (this.kept != null && this.kept.at().shared()) {
			return Optional.of(Sentence.of("standby.shared"));
		}
		return (this.kept != null && this.kept.at().sameDisk()) ? Optional.of(Sentence.of("standby.same-disk"))
				: Optional.empty();
	}

	/** What is to be said of it in a word: its kind, unless there is a doubt. */
	public String word() {
		return isDoubtful() ? "DOUBTFUL" : this.kind.name();
	}

	/** The same in a sentence; without words where there is nothing to say. */
	public Sentence reason() {
		return isDoubtful() ? doubt().orElse(this.why) : this.why;
	}

	private boolean isDoubtful() {
		return this.kind == Kind.KEPT && doubt().isPresent();
	}

	/** In a word. */
	enum Kind {

		/** No folder was ever given. */
		NEVER_SET_UP,

		/** Something else keeps copies. */
		ELSEWHERE,

		/** A folder is given, and this database cannot be copied by the service. */
		IMPOSSIBLE,

		/** The first copy is on its way. */
		STARTING,

		/** What was done is there. */
		KEPT,

		/** For a minute or longer nothing has arrived there. */
		BEHIND,

		/** It was tried and failed. */
		FAILING

	}

	/**
	 * What lies at the second place.
	 *
	 * @param copy the newest whole copy
	 * @param until the moment before which everything is there, UTC
	 * @param head how far the record is there
	 * @param at what kind of place it is
	 * @param lacking how many files of music are not there yet
	 */
	record Kept(CopyNote copy, Instant until, RecordHead head, Place at, int lacking) {

		Kept(CopyNote copy, Instant until, RecordHead head, Place at) {
			this(copy, until, head, at, 0);
		}

		/** The same where so many files are not there yet. */
		Kept lacking(int files) {
			return new Kept(this.copy, this.until, this.head, this.at, files);
		}

	}

	/**
	 * What may be the matter with a place where everything lies.
	 *
	 * @param sameDisk whether it is on the disk of the database
	 * @param shared whether another service writes its copies there too
	 */
	record Place(boolean sameDisk, boolean shared) {
	}

}
