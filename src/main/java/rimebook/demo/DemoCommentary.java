package rimebook.demo;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.apache.commons.csv.CSVRecord;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

import rimebook.accounts.CommentaryLinks;
import rimebook.accounts.LinkStanding;
import rimebook.accounts.OpenHouse;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.entries.Entries;
import rimebook.entries.EntryView;
import rimebook.entries.ForTheAnnouncer;

/**
 * An invented commentator's link, offered at the sign-in page, and what the teams let be
 * told of them.
 */
@Component
@Profile("demo")
class DemoCommentary implements OpenHouse {

	private static final String PERSON = "Aino Lumi";

	private final CommentaryLinks links;

	private final Competitions competitions;

	private final Entries entries;

	private final ForTheAnnouncer facts;

	DemoCommentary(CommentaryLinks links, Competitions competitions, Entries entries, ForTheAnnouncer facts) {
		this.links = links;
		this.competitions = competitions;
		this.entries = entries;
		this.facts = facts;
	}

	/** Write down what may be told of the teams of an event, in all of its segments. */
	void tell(EventView event) {
		List<CSVRecord> rows = DemoFiles.rows("announcer.csv");
		this.entries.ofEvent(event.id())
			.forEach((entry) -> rows.stream()
				.filter((row) -> row.get("event").equals(event.name()) && row.get("team").equals(entry.team().name()))
				.forEach((row) -> tell(event, entry, row)));
	}

	private void tell(EventView event, EntryView entry, CSVRecord row) {
		event.segments()
			.forEach((segment) -> this.facts.write(new ForTheAnnouncer.WriteDown(entry.id(), segment.id(),
					Integer.valueOf(row.get("skaters")), row.get(segment.kind().name().toLowerCase(Locale.ROOT)),
					this.facts.of(entry.id(), segment.id()).version()), DemoCrew.SECRETARY));
	}

	/** Let somebody in; anew where the link of an earlier start is shown no longer. */
	void arrive(CompetitionView competition) {
		Instant end = competition.facts().lastDay().plusDays(2).atStartOfDay(competition.zone()).toInstant();
		Optional<CommentaryLinks.LinkView> known = known(competition);
		if (known.isEmpty()) {
			this.links.issue(new CommentaryLinks.IssueLink(competition.id().value(), PERSON, true, end),
					DemoCrew.REFEREE);
		}
		else if (known.get().state().token() == null) {
			this.links.renew(competition.id().value(), known.get().pass().id(), end, DemoCrew.REFEREE);
		}
	}

	private Optional<CommentaryLinks.LinkView> known(CompetitionView competition) {
		return this.links.of(competition.id().value())
			.stream()
			.filter((link) -> link.pass().person().equals(PERSON))
			.findFirst();
	}

	@Override
	public List<Offer> offers() {
		return this.competitions.all()
			.stream()
			.flatMap((competition) -> known(competition).stream())
			.filter((link) -> link.state().standing() == LinkStanding.GOOD)
			.flatMap((link) -> Optional.ofNullable(link.state().token()).stream())
			.map((token) -> new Offer("Commentator", "", "", "/commentary#" + token))
			.toList();
	}

}
