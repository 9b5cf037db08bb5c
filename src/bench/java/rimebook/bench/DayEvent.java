package rimebook.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.springframework.context.ApplicationContext;

import rimebook.competition.CompetitionFixtures;
import rimebook.competition.JudgingMethod;
import rimebook.panels.Panels;
import rimebook.panels.SeatView;
import rimebook.testsupport.SmallCompetition;

/** An event: where it is followed, its segments, its tablets, and what these sent. */
final class DayEvent {

	final String name;

	/** Where the competition is followed, and where the event is told as data. */
	final String follow;

	final String data;

	/** The identities of its segments. */
	final List<String> ids = new ArrayList<>();

	private final List<String> slugs = new ArrayList<>();

	/** The codes of its seats, and what its tablets have for them. */
	final List<String> codes;

	final List<String> tokens = new ArrayList<>();

	final SentCards sent;

	final boolean byPoints;

	/** Issue the codes of an event that was made. */
	DayEvent(ApplicationContext context, SmallCompetition made, Random random) {
		context.getBean(Panels.class).issueCodes(made.event().id(), SmallCompetition.REFEREE);
		this.name = made.event().name();
		this.follow = "/follow/" + made.competition().slug();
		this.data = "/api/public/competitions/" + made.competition().slug() + "/events/" + made.event().slug();
		made.event().segments().forEach((segment) -> {
			this.ids.add(segment.id().toString());
			this.slugs.add(segment.slug());
		});
		this.codes = made.seats().stream().map(SeatView::code).toList();
		this.byPoints = made.event().isJudgedByPoints();
		this.sent = this.byPoints ? new SentPoints(CompetitionFixtures.pointsRules(), random)
				: new SentPairs(made.event().judging().method().equals(JudgingMethod.ONE_BY_ONE), random);
	}

	/** The page of the standing of a segment. */
	String page(int segment) {
		return this.data.replaceFirst("/api/public/competitions(/[^/]+)/events", "/follow$1") + "/" + this.slugs.get(segment);
	}

	/** The same as data. */
	String data(int segment) {
		return this.data + "/segments/" + this.slugs.get(segment);
	}

	String title(int segment) {
		return this.name + ", " + this.slugs.get(segment);
	}

}
