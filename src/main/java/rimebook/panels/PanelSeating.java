package rimebook.panels;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.transaction.interceptor.TransactionAspectSupport;

import rimebook.competition.EventId;
import rimebook.competition.EventView;
import rimebook.shared.Actor;
import rimebook.shared.ConflictException;
import rimebook.shared.RimebookException;
import rimebook.shared.RuleViolationException;

/** Seats a whole panel in one go, or tells of each seat why not. */
@Service
public class PanelSeating {

	private final Seating seating;

	private final OfficialRegister register;

	private final SeatReader views;

	PanelSeating(Seating seating, OfficialRegister register, SeatReader views) {
		this.seating = seating;
		this.register = register;
		this.views = views;
	}

	/**
	 * Give several officials empty seats of one event, all or none. What is refused is
	 * told of every seat together, so that nobody has to find out one by one; the
	 * refusals are those of {@link Panels#seat(Panels.SeatOfficial, Actor)}.
	 * @param orders for that event
	 * @throws ConflictException once nothing of the event may change
	 */
	@Transactional
	public Outcome seat(EventId id, List<Panels.SeatOfficial> orders, Actor actor) {
		EventView event = this.seating.hold(id);
		Map<SeatPlace, RimebookException> refused = new LinkedHashMap<>();
		List<Seat> seats = orders.stream().flatMap((order) -> {
			try {
				return List.of(take(event, order, actor)).stream();
			}
			catch (RuleViolationException | ConflictException ex) {
				refused.put(new SeatPlace(order.kind(), order.number()), ex);
				return List.<Seat>of().stream();
			}
		}).toList();
		if (!refused.isEmpty()) {
			TransactionAspectSupport.currentTransactionStatus().setRollbackOnly();
			return new Outcome(List.of(), refused);
		}
		return new Outcome(this.views.of(seats), refused);
	}

	private Seat take(EventView event, Panels.SeatOfficial order, Actor actor) {
		return this.seating.take(event, order, this.register.find(order.official()), actor);
	}

	/**
	 * What came of seating several officials at once: either all of them sit, or none.
	 *
	 * @param seated the seats that were given, empty where something was refused
	 * @param refused why, by the places that were refused
	 */
	public record Outcome(List<SeatView> seated, Map<SeatPlace, RimebookException> refused) {

		public Outcome {
			seated = List.copyOf(seated);
			refused = Map.copyOf(refused);
		}

	}

}
