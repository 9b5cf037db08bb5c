package rimebook.rosters;

import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;
import java.util.random.RandomGenerator;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import org.hibernate.annotations.Formula;
import org.jspecify.annotations.Nullable;

import rimebook.entries.ClubView;
import rimebook.shared.ConflictException;
import rimebook.shared.FoldedName;
import rimebook.wording.Sentence;

/** A person who skates, known once in the whole house. */
@Entity
class Skater {

	@Id
	private UUID id;

	@Version
	private @Nullable Integer version;

	private UUID clubId;

	/** Their club as it is today, where it turned out to be another one. */
	@Formula("(select coalesce(o.id, c.id) from club c left join club o on o.id = c.merged_into where c.id = club_id)")
	private @Nullable UUID clubToday;

	private String givenName;

	private String familyName;

	private @Nullable LocalDate birthDate;

	private String membershipNumber;

	private boolean consent;

	private String consentGuardian = "";

	private @Nullable LocalDate consentOn;

	/** Empty once everything was deleted. */
	private String salt;

	private @Nullable Instant erasedAt;

	/** Who they turned out to be; what is written here stays beside it. */
	private @Nullable UUID mergedInto;

	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected Skater() {
	}

	// All of it is written down at once.
	@SuppressWarnings("NullAway.Init")
	Skater(UUID id, DraftSkater draft, RandomGenerator random) {
		this.id = id;
		write(draft.facts());
		this.salt = Commitment.salt(random);
	}

	/** Put that in place of what was seen. */
	void change(int seen, DraftSkater draft, RandomGenerator random) {
		require(seen);
		write(draft.facts());
		this.salt = Commitment.salt(random);
	}

	/** Note who agreed that the name is printed, or that nobody does any more. */
	void agree(int seen, SkaterView.Consent agreed, RandomGenerator random) {
		require(seen);
		this.consent = agreed.isGiven();
		this.consentGuardian = agreed.guardian();
		this.consentOn = agreed.on();
		this.salt = Commitment.salt(random);
	}

	/**
	 * Delete everything that is known; the row stays, since places on rosters name it.
	 */
	void erase(int seen, Instant now) {
		require(seen);
		erase(now);
	}

	/** As {@link #erase(int, Instant)}, with the person whom they turned out to be. */
	void erase(Instant now) {
		write(new SkaterView.Facts("", "", null, "", new ClubView.Id(this.clubId)));
		this.consent = false;
		this.consentGuardian = "";
		this.consentOn = null;
		this.salt = "";
		this.erasedAt = now;
	}

	/**
	 * Delete birth date, number and guardian; and all of it where nobody agreed that the
	 * name is kept.
	 */
	void forget(RandomGenerator random, Instant now) {
		if (!this.consent) {
			erase(now);
			return;
		}
		this.birthDate = null;
		this.membershipNumber = "";
		this.consentGuardian = "";
		this.salt = Commitment.salt(random);
	}

	/** Say that this is somebody who is written down a second time. */
	void mergeInto(int seen, SkaterView.Id other, RandomGenerator random) {
		require(seen);
		this.mergedInto = other.value();
		this.salt = Commitment.salt(random);
	}

	/** Say that this is somebody of their own after all. */
	void separate(int seen, RandomGenerator random) {
		ConflictException.requireSeen("skater", seen, this.version);
		this.mergedInto = null;
		this.salt = Commitment.salt(random);
	}

	/** Refuse unless that was seen, and they are known and somebody of their own. */
	void require(int seen) {
		ConflictException.requireSeen("skater", seen, this.version);
		if (this.erasedAt != null) {
			throw new ConflictException("skater-deleted", Sentence.of("rosters.skater-deleted"));
		}
		if (this.mergedInto != null) {
			throw new ConflictException("skater-merged", Sentence.of("rosters.skater-merged"));
		}
	}

	private void write(SkaterView.Facts facts) {
		this.givenName = facts.givenName();
		this.familyName = facts.familyName();
		this.birthDate = facts.birthDate();
		this.membershipNumber = facts.membershipNumber();
		this.clubId = facts.club().value();
		this.clubToday = null;
	}

	/**
	 * What the record may say: nothing of the person, but what anybody can check who has
	 * the row.
	 */
	String attested() {
		return (this.erasedAt != null) ? "deleted" : "commitment " + Commitment.of(this.salt, values());
	}

	private String[] values() {
		return new String[] { this.givenName, this.familyName, text(this.birthDate), this.membershipNumber,
				this.clubId.toString(), this.consent ? "yes" : "no", this.consentGuardian, text(this.consentOn) };
	}

	private static String text(@Nullable LocalDate date) {
		return (date != null) ? date.toString() : "";
	}

	/** Which of the facts are others than that, for the record; never what they are. */
	String differences(SkaterView.Facts before) {
		SkaterView.Facts now = view().facts();
		boolean name = now.givenName().equals(before.givenName()) && now.familyName().equals(before.familyName());
		return Stream
			.of(name ? "" : "name", text(before.birthDate()).equals(text(now.birthDate())) ? "" : "birth date",
					now.membershipNumber().equals(before.membershipNumber()) ? "" : "membership number",
					now.club().equals(before.club()) ? "" : "club")
			.filter((what) -> !what.isEmpty())
			.collect(Collectors.joining(", "));
	}

	/** Tell whether they have that name, however it was written. */
	boolean isCalled(String name) {
		return FoldedName.of(view().name()).isSameAs(FoldedName.of(name));
	}

	SkaterView view() {
		return new SkaterView(new SkaterView.Id(this.id),
				new SkaterView.Facts(this.givenName, this.familyName, this.birthDate, this.membershipNumber,
						new ClubView.Id((this.clubToday != null) ? this.clubToday : this.clubId)),
				new SkaterView.Consent(this.consent, this.consentGuardian, this.consentOn), this.erasedAt != null,
				(this.mergedInto != null) ? new SkaterView.Id(this.mergedInto) : null,
				(this.version != null) ? this.version : 0);
	}

}
