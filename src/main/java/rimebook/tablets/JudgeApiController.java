package rimebook.tablets;

import java.math.BigDecimal;
import java.util.UUID;

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
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

import rimebook.panels.Panels;
import rimebook.panels.SeatId;
import rimebook.performances.CardBook;
import rimebook.performances.PerformanceId;
import rimebook.performances.ReturnedCard;
import rimebook.placement.MarkSubmission;
import rimebook.placement.MarkWords;
import rimebook.remarks.RemarkReceipts;
import rimebook.shared.Actor;
import rimebook.tabulation.CardMarks;

/**
 * What tablets speak. {@code PUT} with an identity made by the device can be repeated
 * until it is answered: the same card again gets the same answer.
 */
@RestController
class JudgeApiController {

	private final JudgeTables tables;

	private final MarkSubmission submission;

	private final RemarkReceipts remarks;

	private final Panels panels;

	private final TabletAnchors anchors;

	JudgeApiController(JudgeTables tables, MarkSubmission submission, RemarkReceipts remarks, Panels panels,
			TabletAnchors anchors) {
		this.tables = tables;
		this.submission = submission;
		this.remarks = remarks;
		this.panels = panels;
		this.anchors = anchors;
	}

	/**
	 * What the seat may see; also the tablet's sign of life.
	 * @param waiting how many cards wait on the tablet; left out by a program that keeps
	 * none
	 * @param fault whether the tablet's page could not show everything
	 * @param record the newest line of the record of which the tablet keeps an anchor
	 */
	@GetMapping("/api/judge/table")
	ResponseEntity<TableResponse> table(@OwnSeat UUID seat, @RequestParam(defaultValue = "0") int waiting,
			@RequestParam(defaultValue = "false") boolean fault, @RequestParam(defaultValue = "0") long record) {
		this.panels.noteTablet(new SeatId(seat), waiting, fault);
		JudgeTable table = this.tables.tableOf(new SeatId(seat));
		this.anchors.note(table.heading(), record);
		return ResponseEntity.ok()
			.cacheControl(CacheControl.noStore())
			.body(TableResponse.of(table, this.anchors.head()));
	}

	@PutMapping(path = "/api/cards/{id}", consumes = MediaType.APPLICATION_JSON_VALUE)
	CardBook.Acknowledgement put(@PathVariable UUID id, @Valid @RequestBody CardRequest card, @OwnSeat UUID seat,
			Actor actor) {
		ReturnedCard returned = ReturnedRequest.read(card.returned());
		return (returned != null) ? this.submission.takeBack(card.as(id), returned, new SeatId(seat), actor)
				: this.submission.submit(card.as(id), new SeatId(seat), actor);
	}

	/** The judge has seen a remark of the referee; can be repeated until answered. */
	@PutMapping("/api/judge/remarks/{id}/seen")
	RemarkReceipts.Receipt seen(@PathVariable UUID id, @OwnSeat UUID seat, Actor actor) {
		return this.remarks.see(id, new SeatId(seat), actor);
	}

	/**
	 * A card as it is sent. Wrappers, so that a missing field is named and not taken for
	 * a zero.
	 *
	 * @param returned only for a card that comes back
	 */
	record CardRequest(
			@NotNull(message = "is missing; give the identity of the performance on the ice") UUID performance,
			@NotNull(message = "is missing; give 1 for the first card, one more for each change") @Digits(integer = 4,
					fraction = 0, message = "must be a whole number from 1 to 1000") BigDecimal sequence,
			@NotNull(message = "is missing; give a mark from 0.0 to 6.0 in steps of 0.1") BigDecimal first,
			@NotNull(message = "is missing; give a mark from 0.0 to 6.0 in steps of 0.1") BigDecimal second,
			@Valid @Nullable ReturnedRequest returned) {

		MarkSubmission.SubmitCard as(UUID id) {
			CardMarks marks = new CardMarks(MarkWords.read("first", this.first), MarkWords.read("second", this.second));
			return new MarkSubmission.SubmitCard(id, new PerformanceId(this.performance), this.sequence.intValueExact(),
					marks);
		}

	}

}
