package rimebook.draw.web;

import java.util.List;

import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;

import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.competition.SegmentId;
import rimebook.competition.SegmentView;
import rimebook.draw.StartingOrderDraw;
import rimebook.draw.StartingOrderView;

/** Every segment that can be drawn, with what is drawn already. */
@Controller
class DrawListController {

	private final StartingOrderDraw draw;

	private final Competitions competitions;

	DrawListController(StartingOrderDraw draw, Competitions competitions) {
		this.draw = draw;
		this.competitions = competitions;
	}

	@GetMapping("/desk/draw")
	String list(Model model) {
		model.addAttribute("competitions", this.competitions.all().stream().map(this::competition).toList());
		return "draw/list";
	}

	private CompetitionDraws competition(CompetitionView competition) {
		List<SegmentDraw> segments = this.competitions.events(competition.id())
			.stream()
			.flatMap((event) -> event.segments().stream().map((segment) -> segment(event, segment)))
			.toList();
		return new CompetitionDraws(competition.name(), segments);
	}

	private SegmentDraw segment(EventView event, SegmentView segment) {
		int order = this.draw.ofSegment(segment.id()).map(StartingOrderView::number).orElse(0);
		return new SegmentDraw(segment.id(), event.name(), segment.name(), order, event.isCancelled(segment.id()));
	}

	/** The draws of one competition. */
	record CompetitionDraws(String name, List<SegmentDraw> segments) {
	}

	/** The draw of one segment; order 0 is not drawn yet. */
	record SegmentDraw(SegmentId id, String event, String name, int order, boolean cancelled) {
	}

}
