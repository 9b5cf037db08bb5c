package rimebook.documents;

import java.time.Instant;
import java.util.Set;
import java.util.UUID;

import org.jspecify.annotations.Nullable;

import rimebook.competition.CompetitionView;
import rimebook.competition.EventView;
import rimebook.competition.SegmentView;
import rimebook.published.Standing;
import rimebook.wording.Sentence;

/**
 * What a document says, whatever the paper and the language.
 *
 * @param at what it is about
 * @param edition which state of it
 * @param rules the rule set that was applied; {@link Sentence#NONE} where none was
 * @param body what the template of its kind lays out
 * @param about the things that it tells of, whose newest line on the record tells since
 * when it has been so; empty where it shows a version
 */
record DocumentContent(Subject at, Edition edition, Sentence rules, Object body, Set<UUID> about) {

	DocumentContent {
		about = Set.copyOf(about);
	}

	/** The same as it stood at that moment and since then. */
	DocumentContent since(Instant moment) {
		return new DocumentContent(this.at, this.edition.since(moment), this.rules, this.body, this.about);
	}

	/** The same without the names of officials and what is said of them. */
	DocumentContent withoutPeople() {
		return (this.body instanceof NamesPeople named)
				? new DocumentContent(this.at, this.edition, this.rules, named.withoutPeople(), this.about) : this;
	}

	/** What is laid out where officials are named. */
	interface NamesPeople {

		/** The same without them. */
		Object withoutPeople();

	}

	/** The same where the data are more than the standing whose version it shows. */
	DocumentContent withFingerprint(String fingerprint) {
		return new DocumentContent(this.at, new Edition(this.edition.version(), this.edition.standing(),
				this.edition.since(), fingerprint, this.edition.recorded()), this.rules, this.body, this.about);
	}

	/**
	 * What a document is about.
	 *
	 * @param venue where and when the competition is held
	 * @param segment {@code null} for a whole event
	 * @param names what all of them are called on the sheet
	 */
	record Subject(Standing.Venue venue, EventView event, @Nullable SegmentView segment, Names names) {

		/** The same, told of as it was when a version was published. */
		Subject asIn(Standing standing, Standing.Venue venue) {
			return new Subject(venue, this.event, this.segment,
					new Names(standing.competition(), standing.event(), standing.segment(), standing.rulebook()));
		}

		/** Its part in the name of a file. */
		String slug() {
			return (this.segment != null) ? this.event.slug() + "-" + this.segment.slug() : this.event.slug();
		}

	}

	/**
	 * What is called what.
	 *
	 * @param segment empty for a whole event
	 */
	record Names(String competition, String event, String segment, String rulebook) {

		static Names of(CompetitionView competition, EventView event, @Nullable SegmentView segment) {
			return new Names(competition.name(), event.name(), (segment != null) ? segment.name() : "",
					competition.facts().rulebook());
		}

	}

	/**
	 * Which state of its subject a document shows.
	 *
	 * @param version of the standing, 0 where there are no versions
	 * @param standing how far it can be trusted to stay
	 * @param since when what it says became so, UTC
	 * @param fingerprint SHA-256 of the data, in hexadecimal
	 * @param recorded that of the version, as the record has it
	 */
	record Edition(int version, Trust standing, Instant since, String fingerprint, String recorded) {

		/** Of data that are the standing itself, or have no version. */
		Edition(int version, Trust standing, Instant since, String fingerprint) {
			this(version, standing, since, fingerprint, fingerprint);
		}

		Edition since(Instant moment) {
			return new Edition(this.version, this.standing, moment, this.fingerprint, this.recorded);
		}

	}

	/** How far a document can be trusted to stay true. */
	enum Trust {

		/** A standing that may still change. */
		PROVISIONAL,

		/** Signed by referee and accountant. */
		OFFICIAL,

		/** As things stood when it was made. */
		AS_OF

	}

}
