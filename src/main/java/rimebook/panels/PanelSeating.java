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

	private final SeatViews views;

	PanelSeating(Seating seating, OfficialRegister register, SeatViews views) {
		this.seating = seating;
		this.register = register;
		this.views = views;
	}

	/**
	 * Give several officials empty seats of one event, all or none. What is refused is
	 * told of every seat together, so that nobody has to find out one by one; the
	 * refusals are those of {@link Panels#seat(SeatOfficial, Actor)}.
	 * @param orders for that event
	 * @throws ConflictException once nothing of the event may change
	 */
	@Transactional
	public SeatedPanel seat(EventId id, List<SeatOfficial> orders, Actor actor) {
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
			return new SeatedPanel(List.of(), refused);
		}
		return new SeatedPanel(this.views.of(seats), refused);
	}

	private Seat take(EventView event, SeatOfficial order, Actor actor) {
		return this.seating.take(event, order, this.register.find(order.official()), actor);
	}

}
