package rimebook.results;

import java.util.List;
import java.util.stream.Stream;

import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.Competitions;
import rimebook.competition.EventId;
import rimebook.competition.EventView;
import rimebook.competition.SegmentId;
import rimebook.panels.OfficialView;
import rimebook.panels.Panels;
import rimebook.panels.SeatKind;
import rimebook.shared.Actor;
import rimebook.shared.RuleViolationException;

/** Tells who signs, as the panel stands now. */
@Service
public class Signatories {

	private final Competitions competitions;

	private final Panels panels;

	Signatories(Competitions competitions, Panels panels) {
		this.competitions = competitions;
		this.panels = panels;
	}

	/**
	 * Who signs the result of a segment.
	 * @throws rimebook.shared.NotFoundException if there is no such segment
	 */
	@Transactional(readOnly = true)
	public SeatedSignatories of(SegmentId segment) {
		EventView event = this.competitions.eventOf(segment);
		return new SeatedSignatories(event.id(), event.name(), seated(event.id(), SeatKind.REFEREE),
				seated(event.id(), SeatKind.ACCOUNTANT));
	}

	private String seated(EventId event, SeatKind kind) {
		return this.panels.seated(event, kind).map(OfficialView::name).orElse("");
	}

	/**
	 * Who signs the results of an event: those who have the seats of referee and
	 * accountant in it, whoever else holds these roles in the house.
	 *
	 * @param name the event's name
	 * @param referee who sits as referee, empty for nobody
	 * @param accountant who sits as accountant, empty for nobody
	 */
	public record SeatedSignatories(EventId event, String name, String referee, String accountant) {

		/** Tell whether this is who has the seat: an account of the official's name. */
		public boolean maySign(Signatory signatory, Actor actor) {
			String seated = seated(signatory);
			return !seated.isEmpty() && actor.goesBy(seated);
		}

		/**
		 * Tell whether two people can sign: both seats are taken, and not by one person,
		 * as panels made before these seats excluded each other may have it.
		 */
		boolean areTwo() {
			return empty().isEmpty() && !this.referee.equals(this.accountant);
		}

		/** Who signs, or what the seats lack, in a sentence. */
		public String sentence() {
			List<String> empty = empty();
			if (empty.isEmpty() && !areTwo()) {
				return this.referee + " sits as referee and as accountant in " + this.name
						+ ", and two people sign. One of the seats is given to somebody else on the page of the panel.";
			}
			return empty.isEmpty()
					? this.referee + " signs as referee and " + this.accountant
							+ " as accountant: they have these seats in " + this.name + "."
					: "Nobody sits as " + String.join(" or as ", empty) + " in " + this.name
							+ ", and a result is signed by those who do. The seat is given on the page of the panel.";
		}

		/** The seats that nobody has, in words. */
		List<String> empty() {
			return Stream.of(Signatory.values())
				.filter((signatory) -> seated(signatory).isEmpty())
				.map(Signatory::words)
				.toList();
		}

		/**
		 * Refuse the signature of anybody else.
		 * @throws RuleViolationException {@code signature-not-seated}
		 */
		void require(Signatory signatory, Actor actor) {
			if (!maySign(signatory, actor)) {
				throw new RuleViolationException("signature-not-seated", refusal(signatory, actor));
			}
		}

		private String refusal(Signatory signatory, Actor actor) {
			return seated(signatory).isEmpty() ? sentence()
					: seated(signatory) + " signs as " + signatory.words() + " in " + this.name
							+ ", having that seat; you are " + actor.name()
							+ ". If somebody took over, the seat is given to them on the page of the panel first.";
		}

		private String seated(Signatory signatory) {
			return (signatory == Signatory.REFEREE) ? this.referee : this.accountant;
		}

	}

	/** Whose signatures make a result official; they are two different people. */
	public enum Signatory {

		/** The referee of the event. */
		REFEREE("referee"),

		/** The accountant who answers for the computation. */
		ACCOUNTANT("accountant");

		private final String words;

		Signatory(String words) {
			this.words = words;
		}

		String words() {
			return this.words;
		}

	}

}
