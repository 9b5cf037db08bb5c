package rimebook.rosters;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Collectors;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.Competitions;
import rimebook.competition.EventId;
import rimebook.competition.StillOpen;
import rimebook.entries.Entries;
import rimebook.entries.EntryId;
import rimebook.rosters.eligibility.Rule;
import rimebook.shared.Acts;
import rimebook.shared.Actor;
import rimebook.shared.AuditedChange;
import rimebook.shared.ConflictException;
import rimebook.shared.NotFoundException;
import rimebook.shared.Required;
import rimebook.wording.Sentence;

/**
 * Rules that are not held against a team or somebody on its roster, each for a reason.
 */
@Service
@Transactional(readOnly = true)
public class Waivers {

	private final WaiverRepository waivers;

	private final Rosters rosters;

	private final Competitions competitions;

	private final Entries entries;

	private final StillOpen stillOpen;

	private final Acts acts;

	Waivers(WaiverRepository waivers, Rosters rosters, Competitions competitions, Entries entries, StillOpen stillOpen,
			Acts acts) {
		this.waivers = waivers;
		this.rosters = rosters;
		this.competitions = competitions;
		this.entries = entries;
		this.stillOpen = stillOpen;
		this.acts = acts;
	}

	/**
	 * Waive a rule.
	 * @throws ConflictException {@code waived-already}; what {@link StillOpen} refuses
	 * @throws rimebook.shared.RuleViolationException {@code reason-personal} if the
	 * reason tells something of whom it is about
	 * @throws NotFoundException if there is no such entry, or no such place on its roster
	 */
	@Transactional
	public WaiverView waive(Waive order, Actor actor) {
		hold(order.entry());
		RosterView roster = this.rosters.of(order.entry());
		roster.places().forEach((place) -> Skaters.checkTellsNothing(order.reason(), place.skater()));
		String about = about(roster, order.place());
		boolean known = of(order.entry()).stream()
			.anyMatch((waiver) -> waiver.holds() && waiver.rule() == order.rule()
					&& Objects.equals(waiver.place(), order.place()));
		if (known) {
			throw new ConflictException("waived-already", Sentence.of("rosters.waived-already"));
		}
		Waiver waiver = this.waivers.saveAndFlush(new Waiver(this.acts.nextId(), order, actor.name(), this.acts.now()));
		this.acts.publish(AuditedChange.of(actor, "waiver", waiver.id(), "waiver.given")
			.to(order.rule().spoken().english() + ", " + about)
			.because(order.reason()));
		return waiver.view();
	}

	/**
	 * Take a waiver back: the rule is held against them again.
	 * @throws ConflictException {@code stale-version}; {@code waiver-taken-back}; what
	 * {@link StillOpen} refuses
	 */
	@Transactional
	public WaiverView takeBack(UUID id, int version, @Nullable String reason, Actor actor) {
		String why = Required.text("reason", reason, 500);
		Waiver waiver = this.waivers.findById(id).orElseThrow(() -> NotFoundException.of("waiver", id));
		hold(waiver.view().entry());
		RosterView roster = this.rosters.of(waiver.view().entry());
		roster.places().forEach((place) -> Skaters.checkTellsNothing(why, place.skater()));
		String what = waiver.view().rule().spoken().english() + ", " + about(roster, waiver.view().place());
		waiver.takeBack(version, why, actor.name(), this.acts.now());
		this.waivers.flush();
		this.acts
			.publish(AuditedChange.of(actor, "waiver", id, "waiver.taken-back").from(what, "taken back").because(why));
		return waiver.view();
	}

	/** Every waiver of an entry, those taken back among them, the oldest first. */
	public List<WaiverView> of(EntryId entry) {
		return of(List.of(entry)).getOrDefault(entry, List.of());
	}

	/** Every waiver of these entries, with one question. */
	public Map<EntryId, List<WaiverView>> of(Collection<EntryId> entries) {
		return this.waivers.findByEntryInOrderByGivenAt(entries.stream().map(EntryId::value).toList())
			.stream()
			.map(Waiver::view)
			.collect(Collectors.groupingBy(WaiverView::entry));
	}

	/**
	 * The waiver of that identity.
	 * @throws NotFoundException if there is none
	 */
	public WaiverView waiver(UUID id) {
		return this.waivers.findById(id).map(Waiver::view).orElseThrow(() -> NotFoundException.of("waiver", id));
	}

	private void hold(EntryId entry) {
		EventId event = this.entries.entry(entry).event();
		this.competitions.holding(event);
		this.stillOpen.require(event);
	}

	private static String about(RosterView roster, RosterView.@Nullable PlaceId place) {
		return (place == null) ? "the whole team"
				: "place " + roster.places()
					.stream()
					.filter((one) -> one.id().equals(place))
					.findFirst()
					.orElseThrow(() -> NotFoundException.of("place", place))
					.number();
	}

	/**
	 * The order to waive a rule.
	 *
	 * @param place whose place on the roster it is about, {@code null} for the whole team
	 * @param reason up to 500 characters, kept on the record, so it names nobody
	 */
	public record Waive(EntryId entry, Rule rule, RosterView.@Nullable PlaceId place, String reason) {

		public Waive {
			reason = Required.text("reason", reason, 500);
		}

	}

}
