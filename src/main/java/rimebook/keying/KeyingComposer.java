package rimebook.keying;

import java.util.List;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.SegmentId;
import rimebook.panels.Panels;
import rimebook.paper.PaperKeying;
import rimebook.performances.PerformanceId;
import rimebook.shared.Actor;
import rimebook.shared.NotFoundException;
import rimebook.stand.Stand;
import rimebook.stand.StandView;

/** Gathers what the keying desk shows. */
@Component
class KeyingComposer {

	private final Stand stand;

	private final Panels panels;

	private final CalledSheets sheets;

	private final PaperKeying keying;

	KeyingComposer(Stand stand, Panels panels, CalledSheets sheets, PaperKeying keying) {
		this.stand = stand;
		this.panels = panels;
		this.sheets = sheets;
		this.keying = keying;
	}

	/**
	 * Look at a segment as that person may see it.
	 * @param wanted the identity of the performance whose papers are keyed; where it
	 * takes no cards, the one on the ice is shown, else the one opened again
	 */
	@Transactional(readOnly = true)
	public KeyingPage of(SegmentId segment, String wanted, Actor viewer) {
		StandView view = this.stand.ofSegment(segment);
		return page(view, about(view, wanted), viewer);
	}

	/**
	 * Look at a performance whose cards are closed, of which a card that does not count
	 * is added.
	 * @throws NotFoundException if its cards are not closed
	 */
	@Transactional(readOnly = true)
	public KeyingPage ofClosed(SegmentId segment, String closed, Actor viewer) {
		StandView.Now about = this.stand.closed(segment, closed);
		if (about == null) {
			throw NotFoundException.of("performance", closed);
		}
		return page(this.stand.ofSegment(segment), about, viewer);
	}

	private KeyingPage page(StandView view, StandView.@Nullable Now about, Actor viewer) {
		PerformanceId now = (about != null) ? about.row().performance().id() : null;
		return new KeyingPage(view.at(), new KeyingPage.Ice(about, other(view, about), view.next()),
				view.event().isJudgedByPoints() ? this.sheets.of(view.at(), now) : KeyingPage.CalledSheet.NONE,
				new KeyingPage.OnPaper(this.panels.withCard(view.event().id()),
						(now != null) ? this.keying.ofPerformance(now, viewer) : List.of(),
						(now != null) ? this.keying.lines(now) : List.of()));
	}

	/**
	 * The same for a segment that must be judged by points.
	 * @throws NotFoundException if it is not
	 */
	@Transactional(readOnly = true)
	public KeyingPage byPoints(SegmentId segment, String wanted, Actor viewer) {
		KeyingPage page = of(segment, wanted, viewer);
		if (page.sheet().rules() == null) {
			throw NotFoundException.of("elements", segment);
		}
		return page;
	}

	private static StandView.@Nullable Now about(StandView view, String wanted) {
		StandView.Now reopened = view.reopened();
		boolean again = reopened != null
				&& (view.now() == null || reopened.row().performance().id().toString().equals(wanted));
		return again ? reopened : view.now();
	}

	private static StandView.@Nullable Row other(StandView view, StandView.@Nullable Now about) {
		if (about != view.now() && about != view.reopened()) {
			return null;
		}
		StandView.Now other = (about == view.now()) ? view.reopened() : view.now();
		return (other != null) ? other.row() : null;
	}

}
