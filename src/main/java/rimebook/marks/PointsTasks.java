package rimebook.marks;

import java.util.List;

import org.springframework.stereotype.Component;

import rimebook.panels.SeatId;
import rimebook.tabulation.points.ComponentRule;
import rimebook.tabulation.points.PointsRules;

/** Lays out what one seat has to give; another seat's marks are never read for it. */
@Component
class PointsTasks {

	private final PointsBook book;

	PointsTasks(PointsBook book) {
		this.book = book;
	}

	PointsTask of(Performance performance, SeatId seat) {
		PointsRules rules = this.book.ruleSet(performance.segment());
		CalledListView list = this.book.list(performance.id()).map(CalledList::view).orElse(null);
		List<PointsTask.Element> elements = (list == null) ? List.of()
				: list.elements().stream().map((element) -> element(element, rules)).toList();
		return new PointsTask((list != null) ? list.sequence() : 0, elements,
				this.book.rules(performance.segment()).components().stream().map(ComponentRule::name).toList(),
				rules.values().grades().most(),
				this.book.card(performance.id(), seat)
					.map((card) -> new PointsTask.OwnCard(card.sequence(), card.marks(),
							card.acknowledged().receivedAt()))
					.orElse(null));
	}

	private static PointsTask.Element element(CalledElement element, PointsRules rules) {
		return new PointsTask.Element(element.id(), element.number(), element.code(), rules.nameOf(element.code()),
				element.counts());
	}

}
