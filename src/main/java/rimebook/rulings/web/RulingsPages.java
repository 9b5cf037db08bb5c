package rimebook.rulings.web;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;

import rimebook.competition.CompetitionId;
import rimebook.competition.CompetitionState;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.entries.Entries;
import rimebook.entries.EntryView;
import rimebook.pages.Choice;
import rimebook.rulings.QuestionReleases;
import rimebook.rulings.QuestionView;
import rimebook.rulings.RulingView;
import rimebook.rulings.Rulings;

/** Gathers what the pages about rulings show. */
@Component
class RulingsPages {

	private final Rulings rulings;

	private final Competitions competitions;

	private final Entries entries;

	private final QuestionReleases releases;

	RulingsPages(Rulings rulings, Competitions competitions, Entries entries, QuestionReleases releases) {
		this.releases = releases;
		this.rulings = rulings;
		this.competitions = competitions;
		this.entries = entries;
	}

	/** The list of one competition; the one that runs, where none is asked for. */
	void list(@Nullable CompetitionId asked, RulingsSearch search, Model model) {
		List<CompetitionView> all = this.competitions.all();
		CompetitionView shown = all.stream()
			.filter((competition) -> competition.id().equals(asked))
			.findFirst()
			.or(() -> all.stream().filter((competition) -> competition.state() == CompetitionState.RUNNING).findFirst())
			.or(() -> all.stream().findFirst())
			.orElse(null);
		List<QuestionView> questions = (shown != null) ? this.rulings.ofCompetition(shown.id()) : List.of();
		model.addAttribute("competition", shown);
		model.addAttribute("competitions",
				all.stream().map((competition) -> Choice.of(competition.id(), competition.name())).toList());
		model.addAttribute("search", search);
		model.addAttribute("asked", questions.size());
		model.addAttribute("questions", questions.stream().filter(search::finds).toList());
		model.addAttribute("zone", (shown != null) ? shown.zone() : ZoneId.of("UTC"));
	}

	/** The form in which a team of that competition asks. */
	void ask(CompetitionId id, Model model) {
		CompetitionView competition = this.competitions.competition(id);
		List<EventView> events = this.competitions.events(id);
		model.addAttribute("competition", competition);
		model.addAttribute("teams", events.stream().flatMap(this::teams).toList());
		List<Choice> segments = new ArrayList<>();
		events.forEach((event) -> event.segments()
			.forEach((segment) -> segments.add(Choice.of(segment.id(), event.name() + ", " + segment.name()))));
		model.addAttribute("segments", segments);
		model.addAttribute("topics", List.of(QuestionView.RulingTopic.values()));
	}

	private Stream<Choice> teams(EventView event) {
		return this.entries.ofEvent(event.id())
			.stream()
			.filter(EntryView::isEntered)
			.map((entry) -> Choice.of(entry.id(), entry.team().name() + ", " + event.name()));
	}

	/** One question with its rulings. */
	void question(QuestionView question, Model model) {
		CompetitionView competition = this.competitions.competition(question.about().competition());
		model.addAttribute("competition", competition);
		model.addAttribute("zone", competition.zone());
		model.addAttribute("question", question);
		model.addAttribute("released", this.releases.isReleased(question.id()));
		model.addAttribute("verdicts", List.of(RulingView.Verdict.values()));
	}

}
