package rimebook.results;

import java.util.Locale;
import java.util.Optional;
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
import rimebook.wording.Sentence;

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
			return empty().findAny().isEmpty() && !this.referee.equals(this.accountant);
		}

		/** Who signs, or what the seats lack, in a sentence. */
		public Sentence sentence() {
			Optional<Sentence> empty = empty().reduce((one, other) -> Sentence.of("results.or-as", one, other));
			if (empty.isPresent()) {
				return Sentence.of("results.nobody-signs", empty.get(), this.name);
			}
			return areTwo() ? Sentence.of("results.signatories", this.referee, this.accountant, this.name)
					: Sentence.of("results.one-for-both", this.referee, this.name);
		}

		/** The seats that nobody has. */
		private Stream<Sentence> empty() {
			return Stream.of(Signatory.values())
				.filter((signatory) -> seated(signatory).isEmpty())
				.map(Signatory::spoken);
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

		private Sentence refusal(Signatory signatory, Actor actor) {
			return seated(signatory).isEmpty() ? sentence() : Sentence.of("results.another-signs", seated(signatory),
					signatory.spoken(), this.name, actor.name());
		}

		private String seated(Signatory signatory) {
			return (signatory == Signatory.REFEREE) ? this.referee : this.accountant;
		}

	}

	/** Whose signatures make a result official; they are two different people. */
	public enum Signatory {

		/** The referee of the event. */
		REFEREE,

		/** The accountant who answers for the computation. */
		ACCOUNTANT;

		Sentence spoken() {
			return Sentence.of("results.signatory." + code());
		}

		/** As it stands on the record, and in keys. */
		String code() {
			return name().toLowerCase(Locale.ROOT);
		}

	}

}
