package rimebook.tablets;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import jakarta.validation.Valid;
import jakarta.validation.constraints.Digits;
import jakarta.validation.constraints.NotNull;
import org.jspecify.annotations.Nullable;
import org.springframework.http.CacheControl;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RestController;

import rimebook.panels.SeatId;
import rimebook.performances.CardBook;
import rimebook.performances.PerformanceId;
import rimebook.performances.ReturnedCard;
import rimebook.points.PointsMarks;
import rimebook.points.PointsSubmission;
import rimebook.points.PointsTasks;
import rimebook.shared.Actor;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/**
 * What tablets speak in points judging. {@code PUT} with an identity made by the device
 * can be repeated until it is answered: the same card again gets the same answer.
 */
@RestController
class PointsApiController {

	private final PointsSubmission submission;

	private final JudgeTables tables;

	PointsApiController(PointsSubmission submission, JudgeTables tables) {
		this.submission = submission;
		this.tables = tables;
	}

	/**
	 * The seat's own cards of the segment, to look up earlier teams. Apart from the
	 * table, which is asked for several times a second and stays small.
	 */
	@GetMapping("/api/judge/cards")
	ResponseEntity<List<OwnCardResponse>> cards(@OwnSeat UUID seat) {
		return ResponseEntity.ok()
			.cacheControl(CacheControl.noStore())
			.body(this.tables.pointsCardsOf(new SeatId(seat)).stream().map(OwnCardResponse::of).toList());
	}

	@PutMapping(path = "/api/points-cards/{id}", consumes = MediaType.APPLICATION_JSON_VALUE)
	CardBook.Acknowledgement put(@PathVariable UUID id, @Valid @RequestBody CardRequest card, @OwnSeat UUID seat,
			Actor actor) {
		ReturnedCard returned = ReturnedRequest.read(card.returned());
		return (returned != null) ? this.submission.takeBack(card.as(id), returned, new SeatId(seat), actor)
				: this.submission.submit(card.as(id), new SeatId(seat), actor);
	}

	/** An own card; the marks of components have two decimals. */
	record OwnCardResponse(@JsonUnwrapped Skated skated, boolean closed,
			List<PointsTasks.OwnPointsCard.Graded> elements, Map<String, BigDecimal> components, int sequence,
			Instant receivedAt) {

		static OwnCardResponse of(PointsTasks.OwnPointsCard own) {
			PointsSubmission.ReceivedPointsCard card = PointsSubmission.ReceivedPointsCard.of(own.card());
			return new OwnCardResponse(new Skated(own.performance().value(), own.startNumber(), own.team()),
					own.closed(), own.elements(), card.components(), card.sequence(), card.receivedAt());
		}

		/** Whose performance it was. */
		record Skated(UUID performance, int startNumber, String team) {
		}

	}

	/**
	 * A card as it is sent: grades by the identity of the element, marks by the name of
	 * the component. Decimals, so that nothing is cut off unseen.
	 */
	record CardRequest(
			@NotNull(message = "is missing; give the identity of the performance on the ice") UUID performance,
			@NotNull(message = "is missing; give 1 for the first card, one more for each change") @Digits(integer = 4,
					fraction = 0, message = "must be a whole number from 1 to 1000") BigDecimal sequence,
			@NotNull(
					message = "is missing; give a grade for each called element") Map<UUID, @Nullable BigDecimal> grades,
			@NotNull(
					message = "is missing; give a mark for each component") Map<String, @Nullable BigDecimal> components,
			@Nullable @Digits(integer = 4, fraction = 0,
					message = "must be the number of a list of called elements") BigDecimal listSequence,
			@Valid @Nullable ReturnedRequest returned) {

		PointsSubmission.SubmitPointsCard as(UUID id) {
			Map<UUID, Integer> grades = new LinkedHashMap<>();
			this.grades.forEach((element, grade) -> grades.put(element,
					whole("grades[" + element + "]", grade, 0, "tablets.not-a-grade")));
			Map<String, Integer> components = new LinkedHashMap<>();
			this.components.forEach((name, mark) -> components.put(name,
					whole("components[" + name + "]", mark, 2, "tablets.not-a-mark")));
			return new PointsSubmission.SubmitPointsCard(id, new PerformanceId(this.performance),
					this.sequence.intValueExact(), new PointsMarks(grades, components),
					(this.listSequence != null) ? this.listSequence.intValueExact() : null);
		}

		/** Read a decimal in units of its last place. */
		private static int whole(String field, @Nullable BigDecimal number, int places, String refusal) {
			if (number == null || number.precision() - number.scale() > 4
					|| number.stripTrailingZeros().scale() > places) {
				throw RuleViolationException.ofField("mark-not-valid", field, Sentence.of(refusal));
			}
			return number.movePointRight(places).intValueExact();
		}

	}

}
