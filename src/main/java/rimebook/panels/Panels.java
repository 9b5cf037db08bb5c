package rimebook.panels;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.Competitions;
import rimebook.competition.EventId;
import rimebook.competition.EventView;
import rimebook.shared.Actor;
import rimebook.shared.Required;
import rimebook.wording.Sentence;

/**
 * The register of officials and the panel of every event.
 * <p>
 * A panel is complete when the referee and all judges of the event have their seats.
 * Changing anything is refused with {@code panel-final} once the competition is final.
 */
@Service
@Transactional(readOnly = true)
public class Panels {

	private final OfficialRegister register;

	private final Competitions competitions;

	private final Seating seating;

	private final SeatReader views;

	private final JudgeCodes codes;

	private final ConflictCheck conflicts;

	Panels(OfficialRegister register, Competitions competitions, Seating seating, SeatReader views, JudgeCodes codes,
			ConflictCheck conflicts) {
		this.register = register;
		this.competitions = competitions;
		this.seating = seating;
		this.views = views;
		this.codes = codes;
		this.conflicts = conflicts;
	}

	/**
	 * Write an official into the register.
	 * @throws rimebook.shared.ConflictException {@code official-known} if the name is
	 * there already
	 */
	@Transactional
	public OfficialView register(DraftOfficial facts, Actor actor) {
		return this.register.add(facts, actor).view();
	}

	/**
	 * Change what the register says; seats already taken are kept.
	 * @throws rimebook.shared.ConflictException if the version is stale, or
	 * {@code official-known}
	 */
	@Transactional
	public OfficialView change(OfficialView.Id id, int version, DraftOfficial facts, Actor actor) {
		return this.register.change(id, version, facts, actor).view();
	}

	/** Everybody in the register, by name. */
	public List<OfficialView> officials() {
		return this.register.all().stream().map(Official::view).toList();
	}

	/**
	 * The official of that identity.
	 * @throws rimebook.shared.NotFoundException if there is none
	 */
	public OfficialView official(OfficialView.Id id) {
		return this.register.find(id).view();
	}

	/**
	 * Write down what binds an official to a team; seats already taken are kept and show
	 * it.
	 * @throws rimebook.shared.ConflictException {@code interest-known} if it is there
	 * already
	 */
	@Transactional
	public InterestView declare(DeclareInterest declared, Actor actor) {
		return this.register.declare(declared, actor).view();
	}

	/**
	 * Take back what was declared; it stays on the record.
	 * @throws rimebook.shared.NotFoundException if the official has no such interest
	 */
	@Transactional
	public void removeInterest(OfficialView.Id official, InterestView.Id id, Actor actor) {
		this.register.removeInterest(official, id, actor);
	}

	/** What binds an official to teams, by team. */
	public List<InterestView> interests(OfficialView.Id official) {
		return this.register.interests(official).stream().map(Interest::view).toList();
	}

	/** The places that an event's panel has, filled or not, in order. */
	public List<SeatPlace> places(EventId event) {
		return SeatPlace.of(this.competitions.event(event));
	}

	/** The events of all competitions in whose panels somebody sits. */
	public Set<EventId> taken() {
		return this.views.taken();
	}

	/** The panel of an event. */
	public PanelView ofEvent(EventId event) {
		return this.views.panel(this.competitions.event(event));
	}

	/** Who has the first seat of that kind in an event; empty for nobody. */
	public Optional<OfficialView> seated(EventId event, SeatKind kind) {
		return this.views.used(this.competitions.event(event))
			.stream()
			.filter((seat) -> seat.isAt(new SeatPlace(kind, 1)))
			.flatMap((seat) -> Stream.ofNullable(seat.official()))
			.map(Official::view)
			.findFirst();
	}

	/** The places that must be filled and are not; empty when complete. */
	public List<SeatPlace> missing(EventId id) {
		EventView event = this.competitions.event(id);
		return this.views.empty(event, this.views.used(event));
	}

	/** The judges' seats of an event that exist, by number, taken or not. */
	public List<SeatView> judges(EventId event) {
		return this.views.of(this.views.used(this.competitions.event(event))
			.stream()
			.filter((seat) -> seat.place().kind() == SeatKind.JUDGE)
			.toList());
	}

	/**
	 * The seats of an event whose cards are taken: the judges by number, then the
	 * substitute once somebody sits there.
	 */
	public List<SeatView> withCard(EventId event) {
		return withCard(this.competitions.event(event));
	}

	/** The same for whoever has read the event already. */
	public List<SeatView> withCard(EventView event) {
		return this.views.of(this.views.used(event)
			.stream()
			.filter((seat) -> seat.place().kind() == SeatKind.JUDGE
					|| (seat.place().kind().hasCard() && seat.isTaken()))
			.toList());
	}

	/**
	 * Every judge's seat and every other that somebody has, in the order of the panel.
	 */
	public List<SeatView> seated(EventView event) {
		return this.views.of(this.views.used(event)
			.stream()
			.filter((seat) -> seat.place().kind() == SeatKind.JUDGE || seat.isTaken())
			.toList());
	}

	/**
	 * The seat of that identity.
	 * @throws rimebook.shared.NotFoundException if there is none
	 */
	public SeatView seat(SeatId id) {
		return this.views.of(this.seating.find(id));
	}

	/**
	 * Note what the seat's tablet says of itself.
	 * @param cards how many cards it has not been able to hand over
	 * @param faulty whether its page could not show everything
	 * @throws rimebook.shared.RuleViolationException on the field {@code waiting} unless
	 * it is 0 to 9999
	 */
	@Transactional
	public void noteTablet(SeatId id, int cards, boolean faulty) {
		this.views.noteTablet(id, cards, faulty);
	}

	/** Who sits in judgement on a team they are bound to, as things are now. */
	public List<SeatConflict> conflicts(EventId id) {
		return this.conflicts.conflicts(id, this.views.used(this.competitions.event(id)));
	}

	/**
	 * Leave somebody on their seat although a bond became known since they took it, or
	 * since the last reason was given. Taken back by vacating the seat.
	 * @param reason why the rulebook in force allows it, up to 500 characters
	 * @throws rimebook.shared.ConflictException if the version is stale, or
	 * {@code seat-not-bound}
	 */
	@Transactional
	public SeatView setAside(SeatId id, int version, String reason, Actor actor) {
		String why = Required.text("reason", reason, 500);
		EventView event = this.seating.hold(id);
		Seat seat = this.seating.find(id);
		this.seating.allow(event, seat, version, why, actor);
		return this.views.of(seat);
	}

	/**
	 * Give an official an empty seat.
	 * @throws rimebook.shared.RuleViolationException {@code official-bound} when the
	 * official is bound to a team of the event and no reason for an override is given;
	 * {@code official-seated} when another seat of theirs excludes this one;
	 * {@code seat-unknown} when the event has no such seat
	 * @throws rimebook.shared.ConflictException {@code seat-taken}, or
	 * {@code panel-in-use} while the judges cannot change
	 */
	@Transactional
	public SeatView seat(SeatOfficial seating, Actor actor) {
		EventView event = this.seating.hold(seating.event());
		return this.views.of(this.seating.take(event, seating, this.register.find(seating.official()), actor));
	}

	/**
	 * Free a seat. A code issued for it is replaced, so that the slip in the hand of the
	 * person who leaves opens nothing any more.
	 * @throws rimebook.shared.ConflictException if the version is stale,
	 * {@code seat-empty}, or {@code panel-in-use} while the judges cannot change
	 */
	@Transactional
	public SeatView vacate(SeatId id, int version, Actor actor) {
		EventView event = this.seating.hold(id);
		Seat seat = this.seating.find(id);
		this.seating.vacate(event, seat, version, actor);
		this.codes.replace(seat, event, actor);
		return this.views.of(seat);
	}

	/**
	 * Issue a judge's or the substitute's seat a new code; the earlier one and the tablet
	 * that joined with it are void. Possible at any time, since a tablet may break during
	 * a segment.
	 * @throws rimebook.shared.RuleViolationException {@code seat-without-card} for any
	 * other kind of seat
	 */
	@Transactional
	public SeatView issueCode(SeatId id, Actor actor) {
		EventView event = this.seating.hold(id);
		Seat seat = this.seating.find(id);
		this.codes.issue(seat, event, actor);
		return this.views.of(seat);
	}

	/**
	 * Issue a code for every judge's seat of the event that has none, and for the
	 * substitute's once somebody sits there.
	 */
	@Transactional
	public PanelView issueCodes(EventId id, Actor actor) {
		EventView event = this.seating.hold(id);
		this.codes.issueMissing(this.seating.withCard(event), event, actor);
		return this.views.panel(event);
	}

	/**
	 * Give an official a seat that is empty.
	 *
	 * @param number which one of its kind, from 1
	 * @param overrideReason why a bond to a team may be set aside here, up to 500
	 * characters; dropped where nothing speaks against the seating
	 * @throws rimebook.shared.RuleViolationException naming the field that does not fit
	 */
	public record SeatOfficial(EventId event, SeatKind kind, int number, OfficialView.Id official,
			String overrideReason) {

		public SeatOfficial {
			overrideReason = Required.optional("overrideReason", overrideReason, 500);
		}

	}

	/**
	 * Has a say before a judge takes or leaves a seat. Every bean of this type is asked,
	 * inside the transaction of the change.
	 */
	@FunctionalInterface
	public interface Guard {

		/**
		 * Say why the judges of the event must stay as they are now, or nothing if they
		 * may change.
		 * @return a whole sentence
		 */
		Optional<Sentence> refusal(EventId event);

	}

	/**
	 * Write down what binds an official to a team.
	 *
	 * @param team the team's name as it is entered, up to 120 characters
	 * @param lastDay the bond's last day, {@code null} while it lasts
	 * @throws rimebook.shared.RuleViolationException naming the field that does not fit
	 */
	public record DeclareInterest(OfficialView.Id official, InterestView.Kind kind, String team,
			@Nullable LocalDate lastDay) {

		public DeclareInterest {
			team = Required.text("team", team, 120);
		}

	}

}
