package rimebook.points;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;

import org.springframework.context.ApplicationContext;

import rimebook.panels.SeatView;
import rimebook.performances.PerformanceView;
import rimebook.shared.Actor;

/** A judge in points judging who gives every element the same grade. */
public final class PointsJudge {

	private PointsJudge() {
	}

	/**
	 * Send the card of a seat: that grade for each element that counts, 7.00 for each
	 * component.
	 */
	public static void send(ApplicationContext context, PerformanceView performance, SeatView seat, CalledListView list,
			int grade) {
		Map<UUID, Integer> grades = new LinkedHashMap<>();
		list.counting().forEach((element) -> grades.put(element.id(), grade));
		Map<String, Integer> components = new LinkedHashMap<>();
		List.of("Composition", "Presentation", "Skating Skills").forEach((name) -> components.put(name, 700));
		context.getBean(PointsSubmission.class)
			.submit(new PointsSubmission.SubmitPointsCard(UUID.randomUUID(), performance.id(), 1,
					new PointsMarks(grades, components)), seat.id(), new Actor(seat.label(), "judge", "test"));
	}

}
