package rimebook.demo;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

import rimebook.accounts.OpenHouse;
import rimebook.competition.CompetitionId;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.managers.TeamsLinks;
import rimebook.shared.RuleViolationException;

/**
 * The link of an invented team that has something missing, offered at the sign-in page.
 */
@Component
@Profile("demo")
class DemoManager implements OpenHouse {

	private final TeamsLinks links;

	private final Competitions competitions;

	DemoManager(TeamsLinks links, Competitions competitions) {
		this.links = links;
		this.competitions = competitions;
	}

	/**
	 * Give the first team its link; anew where that of an earlier start is shown no
	 * longer.
	 */
	void arrive(CompetitionView competition) {
		first(competition.id()).filter((row) -> token(row).isEmpty()).ifPresent((row) -> {
			try {
				this.links.give(competition.id(), row.entry().id(), DemoCrew.SECRETARY);
			}
			catch (RuleViolationException ex) {
				// A demonstration that was kept beyond its days offers no link.
			}
		});
	}

	/** The last event begins last, so that there is still something to do. */
	private Optional<TeamsLinks.TeamRow> first(CompetitionId competition) {
		List<TeamsLinks.TeamRow> rows = this.links.of(competition)
			.stream()
			.filter((row) -> row.entry().isEntered())
			.toList();
		return rows.stream()
			.filter((row) -> row.event().id().equals(rows.get(rows.size() - 1).event().id()))
			.findFirst();
	}

	private static Optional<String> token(TeamsLinks.TeamRow row) {
		return Stream.ofNullable(row.link())
			.filter((link) -> row.isGood())
			.flatMap((link) -> Stream.ofNullable(link.state().token()))
			.findFirst();
	}

	@Override
	public List<Offer> offers() {
		return this.competitions.all()
			.stream()
			.flatMap((competition) -> first(competition.id()).stream())
			.flatMap((row) -> token(row).stream()
				.map((token) -> new Offer("Manager, " + row.entry().team().name(), "", "", "/manager#" + token)))
			.toList();
	}

}
