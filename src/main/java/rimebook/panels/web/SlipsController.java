package rimebook.panels.web;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;

import org.springframework.http.CacheControl;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BeanPropertyBindingResult;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.EventId;
import rimebook.competition.EventView;
import rimebook.pages.HouseAddress;
import rimebook.pages.HouseAddresses;
import rimebook.pages.PdfPage;
import rimebook.pages.Submission;
import rimebook.panels.Panels;
import rimebook.panels.SeatKind;
import rimebook.panels.SeatView;

/** The slips that judges find at their seats, to be printed and cut. */
@Controller
class SlipsController {

	private final Panels panels;

	private final Competitions competitions;

	private final HouseAddresses addresses;

	private final PdfPage paper;

	SlipsController(Panels panels, Competitions competitions, HouseAddresses addresses, PdfPage paper) {
		this.panels = panels;
		this.competitions = competitions;
		this.addresses = addresses;
		this.paper = paper;
	}

	@GetMapping("/desk/panel/{event}/slips")
	String slips(@PathVariable("event") EventId id, @RequestParam(defaultValue = "") String address, Model model) {
		EventView event = this.competitions.event(id);
		List<SeatView> seats = this.panels.withCard(id);
		SlipForm form = new SlipForm(address.isBlank() ? this.addresses.chosen("").base() : address);
		BindingResult errors = new BeanPropertyBindingResult(form, "form");
		model.addAttribute("event", event);
		model.addAttribute("competition", this.competitions.competition(event.competition()));
		model.addAttribute("form", form);
		model.addAttribute(BindingResult.MODEL_KEY_PREFIX + "form", errors);
		model.addAttribute("withoutCode", withoutCode(event, seats));
		model.addAttribute("hidden", hidden(seats));
		model.addAttribute("addresses", this.addresses.choices());
		Submission.refused(errors, () -> fill(model, this.addresses.chosen(form.address()), seats));
		return "panels/slips";
	}

	/** The same slips as a document of A4 sheets with lines to cut along. */
	@GetMapping("/desk/panel/{event}/slips.pdf")
	ResponseEntity<byte[]> document(@PathVariable("event") EventId id, @RequestParam(defaultValue = "") String address,
			Locale language) {
		EventView event = this.competitions.event(id);
		CompetitionView competition = this.competitions.competition(event.competition());
		HouseAddress join = this.addresses.chosen(address);
		byte[] pdf = this.paper.of("panels/slips-pdf", language, Map.of("event", event, "competition", competition,
				"address", join, "rows", inPairs(slips(this.panels.withCard(id), join))));
		return ResponseEntity.ok()
			.contentType(MediaType.APPLICATION_PDF)
			.cacheControl(CacheControl.noStore())
			.header(HttpHeaders.CONTENT_DISPOSITION,
					ContentDisposition.inline().filename("slips-" + event.slug() + ".pdf").build().toString())
			.body(pdf);
	}

	private static List<List<Slip>> inPairs(List<Slip> slips) {
		return IntStream.range(0, (slips.size() + 1) / 2)
			.mapToObj((i) -> slips.subList(2 * i, Math.min(2 * i + 2, slips.size())))
			.toList();
	}

	private static List<Slip> slips(List<SeatView> seats, HouseAddress address) {
		return seats.stream().filter((seat) -> seat.code() != null).map((seat) -> Slip.of(seat, address)).toList();
	}

	private void fill(Model model, HouseAddress address, List<SeatView> seats) {
		model.addAttribute("address", address);
		model.addAttribute("slips", slips(seats, address));
		model.addAttribute("local", address.isLocal());
	}

	/** The seats whose codes are shown no longer, by label. */
	private static List<String> hidden(List<SeatView> seats) {
		return seats.stream().filter((seat) -> seat.hasCode() && seat.code() == null).map(SeatView::label).toList();
	}

	/** How many seats that need a code have none yet, be they there or not. */
	private static long withoutCode(EventView event, List<SeatView> seats) {
		long needed = event.judging().judges() + seats.stream().filter((seat) -> seat.kind() != SeatKind.JUDGE).count();
		return needed - seats.stream().filter(SeatView::hasCode).count();
	}

}
