package rimebook.rosters;

import java.security.SecureRandom;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;

import jakarta.persistence.EntityManager;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Service;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.transaction.support.TransactionTemplate;

import rimebook.competition.CompetitionId;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.competition.KeptUntilTheDay;
import rimebook.entries.Entries;
import rimebook.entries.EntryView;
import rimebook.shared.Acts;
import rimebook.shared.Actor;
import rimebook.shared.AuditedChange;
import rimebook.shared.ConflictException;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/**
 * Deletes what is known of the people of a competition once its day has come: contacts,
 * birth dates and membership numbers of everybody, and all that is known of those who did
 * not agree that their name is kept and shown. Who is on a roster of a competition whose
 * day has not come is left as they are. What other modules keep until that day
 * ({@link KeptUntilTheDay}) goes, too.
 */
@Service
@Transactional(readOnly = true)
public class Retention {

	/**
	 * So many contacts or people at once hold the record for some tenths of a second.
	 */
	private static final int AT_ONCE = 100;

	private final RetentionDateRepository dates;

	private final TeamContactRepository contacts;

	private final RosterPlaceRepository places;

	private final SkaterRepository skaters;

	private final Competitions competitions;

	private final Entries entries;

	private final EntityManager database;

	private final Acts acts;

	private final TransactionTemplate transaction;

	private final ObjectProvider<KeptUntilTheDay> further;

	private final SecureRandom random = new SecureRandom();

	Retention(RetentionDateRepository dates, TeamContactRepository contacts, RosterPlaceRepository places,
			SkaterRepository skaters, Competitions competitions, Entries entries, EntityManager database, Acts acts,
			PlatformTransactionManager transactions, ObjectProvider<KeptUntilTheDay> further) {
		this.transaction = new TransactionTemplate(transactions);
		this.further = further;
		this.dates = dates;
		this.contacts = contacts;
		this.places = places;
		this.skaters = skaters;
		this.competitions = competitions;
		this.entries = entries;
		this.database = database;
		this.acts = acts;
	}

	/**
	 * Set the day, in place of the one that was set.
	 * @param day after the last day of the competition
	 * @throws ConflictException {@code stale-version}; {@code retention-over} once all
	 * was deleted
	 * @throws RuleViolationException naming the field that does not fit
	 */
	@Transactional
	public View set(CompetitionId id, @Nullable LocalDate day, int version, Actor actor) {
		CompetitionView competition = this.competitions.holding(id);
		if (day == null) {
			throw RuleViolationException.ofField("field-missing", "deleteOn", Sentence.of("shared.field.missing"));
		}
		if (!day.isAfter(competition.facts().lastDay())) {
			throw RuleViolationException.ofField("retention-too-early", "deleteOn",
					Sentence.of("rosters.retention-too-early"));
		}
		Optional<RetentionDate> known = this.dates.findById(id.value());
		String before = known.map((date) -> inWords(date.view().deleteOn())).orElse("");
		RetentionDate date = known.orElseGet(() -> new RetentionDate(id));
		date.set(version, day, actor.name());
		View kept = this.dates.saveAndFlush(date).view();
		if (!inWords(day).equals(before)) {
			this.acts.publish(AuditedChange.of(actor, "retention", id, "retention.set").from(before, inWords(day)));
		}
		return kept;
	}

	private static String inWords(LocalDate day) {
		return "what is known of people is deleted on " + day;
	}

	/** The day, and what was deleted; empty where no day was set. */
	public Optional<View> of(CompetitionId id) {
		return this.dates.findById(id.value()).map(RetentionDate::view);
	}

	/** The competitions whose day has come, and of which nothing was deleted yet. */
	public List<CompetitionId> due() {
		return this.dates.findByDeletedAtIsNullAndDeleteOnLessThanEqual(today())
			.stream()
			.map(RetentionDate::competition)
			.toList();
	}

	/**
	 * Delete what is to be deleted of a competition whose day has come; nothing happens
	 * where it has not, or where it was done already. It is done in portions, so that
	 * nobody who acts meanwhile waits for the record. Should something come between, what
	 * was deleted is counted and told, and the next time goes on.
	 */
	@Transactional(propagation = Propagation.NOT_SUPPORTED)
	public void delete(CompetitionId id) {
		boolean more = true;
		while (more) {
			more = Boolean.TRUE.equals(this.transaction.execute((status) -> deletePortion(id)));
		}
	}

	/** Returns whether there may be more to delete. */
	@Transactional
	boolean deletePortion(CompetitionId id) {
		this.competitions.holding(id);
		RetentionDate date = this.dates.findById(id.value()).orElse(null);
		if (date == null || date.isDone() || date.view().deleteOn().isAfter(today())) {
			return false;
		}
		Deleted before = date.view().deleted();
		String waited = before.isNothing() ? inWords(date.view().deleteOn()) : "so far " + before.inWords();
		List<UUID> entries = entriesOf(List.of(id));
		Deleted now = deleteContacts(entries);
		if (before.isNothing()) {
			this.further.orderedStream().forEach((kept) -> kept.delete(id, Actor.system()));
		}
		if (now.isNothing()) {
			now = forgetPeople(id, entries);
		}
		Deleted all = before.and(now);
		boolean more = !now.isNothing();
		date.deleted(all, more ? null : this.acts.now());
		this.acts.publish(AuditedChange
			.of(Actor.system(), "retention", id, more ? "retention.deleted-in-part" : "retention.deleted")
			.from(waited, (more ? "so far " : "") + all.inWords()));
		// See RosterImport: lines of the record find nothing to write any more.
		this.database.flush();
		this.database.clear();
		return more;
	}

	private Deleted deleteContacts(List<UUID> entries) {
		List<TeamContact> contacts = this.contacts.findByEntryInOrderByKindAscNameAsc(entries)
			.stream()
			.limit(AT_ONCE)
			.toList();
		contacts.forEach((contact) -> this.acts
			.publish(AuditedChange.of(Actor.system(), "roster", contact.entry(), "roster.contact-removed")
				.from(contact.attested(), "")));
		this.contacts.deleteAll(contacts);
		return new Deleted(contacts.size(), 0, 0);
	}

	/** With whoever turned out to be one of them. */
	private Deleted forgetPeople(CompetitionId id, List<UUID> entries) {
		if (entries.isEmpty()) {
			return Deleted.NOTHING;
		}
		List<UUID> people = this.places.toForget(entries, overWith(id)).stream().sorted().limit(AT_ONCE).toList();
		this.skaters.findByMergedIntoIn(people).stream().filter((one) -> !isErased(one)).forEach(this::forget);
		int erased = 0;
		for (Skater skater : this.skaters.findAllById(people)) {
			erased += forget(skater) ? 1 : 0;
		}
		return new Deleted(0, people.size() - erased, erased);
	}

	/** Returns whether nothing is known of them any more. */
	private boolean forget(Skater skater) {
		String before = skater.attested();
		boolean erased = !skater.view().consent().isGiven();
		skater.forget(this.random, this.acts.now());
		this.acts.publish(AuditedChange
			.of(Actor.system(), "skater", skater.view().id(), erased ? "skater.deleted" : "skater.changed")
			.from(before, (erased ? "" : "birth date and number deleted; ") + skater.attested()));
		return erased;
	}

	private static boolean isErased(Skater skater) {
		return skater.view().isErased();
	}

	/** The entries of that competition and of all whose day has come. */
	private Set<UUID> overWith(CompetitionId id) {
		List<CompetitionId> over = new ArrayList<>(
				this.dates.findByDeletedAtIsNotNull().stream().map(RetentionDate::competition).toList());
		over.add(id);
		return new HashSet<>(entriesOf(over));
	}

	private List<UUID> entriesOf(List<CompetitionId> competitions) {
		Stream<EventView> events = competitions.stream().flatMap((one) -> this.competitions.events(one).stream());
		return this.entries.ofEvents(events.map(EventView::id).toList())
			.stream()
			.map(EntryView::id)
			.map((entry) -> entry.value())
			.toList();
	}

	private LocalDate today() {
		return LocalDate.ofInstant(this.acts.now(), ZoneOffset.UTC);
	}

	/**
	 * The day of a competition.
	 *
	 * @param deletedAt when it was done, {@code null} while it waits
	 * @param deleted what was deleted, also when not all of it is done yet
	 * @param version give it back with a change, so that nobody overwrites another's
	 */
	public record View(LocalDate deleteOn, @Nullable Instant deletedAt, Deleted deleted, int version) {

		/** The version of what was never set. */
		public static final int NONE = -1;

	}

	/**
	 * What was deleted.
	 *
	 * @param contacts of how many people it was known that they can be called
	 * @param forgotten how many people's birth date and number
	 * @param erased of how many people everything
	 */
	public record Deleted(int contacts, int forgotten, int erased) {

		static final Deleted NOTHING = new Deleted(0, 0, 0);

		/** Tell whether nothing was. */
		public boolean isNothing() {
			return this.contacts == 0 && this.forgotten == 0 && this.erased == 0;
		}

		Deleted and(Deleted more) {
			return new Deleted(this.contacts + more.contacts, this.forgotten + more.forgotten,
					this.erased + more.erased);
		}

		String inWords() {
			return "deleted: %d contacts, birth date and number of %d people, everything of %d people"
				.formatted(this.contacts, this.forgotten, this.erased);
		}

	}

}
