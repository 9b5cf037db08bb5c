package rimebook.fees;

import java.time.Instant;
import java.util.Currency;
import java.util.UUID;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Table;
import org.hibernate.annotations.Formula;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;

import rimebook.competition.CompetitionId;
import rimebook.entries.ClubView;
import rimebook.entries.EntryId;
import rimebook.fees.reckoning.Balance;
import rimebook.fees.reckoning.BookingKind;
import rimebook.fees.reckoning.Money;
import rimebook.shared.AppendedRow;

/** A row of the ledger: written once; what takes it back is a further row. */
@Entity
@Immutable
@Table(name = "fee_ledger")
class LedgerRow extends AppendedRow {

	@Column(name = "competition_id")
	private UUID competition;

	@Column(name = "club_id")
	private UUID club;

	/** {@code null} for the club as a whole. */
	/** The club as it is today, where it turned out to be another one. */
	@Formula("(select coalesce(o.id, c.id) from club c left join club o on o.id = c.merged_into where c.id = club_id)")
	private @Nullable UUID clubToday;

	@Column(name = "entry_id")
	private @Nullable UUID entry;

	private int number;

	@Enumerated(EnumType.STRING)
	private BookingKind kind;

	private long amount;

	private String currency;

	private String why;

	private @Nullable UUID reverses;

	private String writtenBy;

	private Instant writtenAt;

	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected LedgerRow() {
	}

	LedgerRow(UUID id, int number, Draft draft, String writtenBy, Instant now) {
		super(id);
		this.competition = draft.whose().competition().value();
		this.club = draft.whose().club().value();
		this.entry = (draft.whose().entry() != null) ? draft.whose().entry().value() : null;
		this.number = number;
		this.kind = draft.kind();
		this.amount = draft.amount().minor();
		this.currency = draft.amount().currency().getCurrencyCode();
		this.why = draft.why();
		this.reverses = draft.reverses();
		this.writtenBy = writtenBy;
		this.writtenAt = now;
	}

	Instant writtenAt() {
		return this.writtenAt;
	}

	int number() {
		return this.number;
	}

	/** Whose account it is in, today. */
	ClubView.Id club() {
		return new ClubView.Id((this.clubToday != null) ? this.clubToday : this.club);
	}

	@Nullable UUID reverses() {
		return this.reverses;
	}

	boolean is(BookingKind kind, EntryId entry) {
		return this.kind == kind && entry.value().equals(this.entry);
	}

	Money amount() {
		return new Money(this.amount, Currency.getInstance(this.currency));
	}

	Balance.Booking booking() {
		return new Balance.Booking(this.kind, this.entry, amount());
	}

	Whose whose() {
		return new Whose(new CompetitionId(this.competition), new ClubView.Id(this.club),
				(this.entry != null) ? new EntryId(this.entry) : null);
	}

	/**
	 * @param reversed whether a further row takes it back
	 */
	LedgerRowView view(boolean reversed) {
		return new LedgerRowView(new LedgerRowView.Id(getId()), whose().competition(), club(), whose().entry(),
				this.number, this.kind, amount(), this.why,
				(this.reverses != null) ? new LedgerRowView.Id(this.reverses) : null, reversed,
				new LedgerRowView.Written(this.writtenBy, this.writtenAt));
	}

	/**
	 * Whose row it is.
	 *
	 * @param entry the team it is about, {@code null} for the club as a whole
	 */
	record Whose(CompetitionId competition, ClubView.Id club, @Nullable EntryId entry) {
	}

	/** What is to be written. */
	record Draft(Whose whose, BookingKind kind, Money amount, String why, @Nullable UUID reverses) {
	}

}
