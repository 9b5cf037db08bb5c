package rimebook.letters;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.CompetitionId;
import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.entries.Entries;
import rimebook.entries.TeamView;
import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.AuditedChange;
import rimebook.wording.Languages;

/**
 * In which language each team is written to, at this competition and at later ones;
 * English where nobody said anything else.
 */
@Service
@Transactional(readOnly = true)
public class TeamLanguages {

	private final JdbcClient database;

	private final Competitions competitions;

	private final Entries entries;

	private final Acts acts;

	TeamLanguages(JdbcClient database, Competitions competitions, Entries entries, Acts acts) {
		this.database = database;
		this.competitions = competitions;
		this.entries = entries;
		this.acts = acts;
	}

	/** The language of each of these teams, with one question. */
	public Map<TeamView.Id, Locale> of(Collection<TeamView.Id> teams) {
		Map<TeamView.Id, Locale> languages = new HashMap<>();
		teams.forEach((team) -> languages.put(team, Locale.ENGLISH));
		if (!teams.isEmpty()) {
			this.database.sql("select team_id, language from letter_language where team_id in (:teams)")
				.param("teams", teams.stream().map(TeamView.Id::value).distinct().toList())
				.query((row, at) -> Map.entry(new TeamView.Id(row.getObject("team_id", UUID.class)),
						Locale.forLanguageTag(row.getString("language"))))
				.list()
				.forEach((known) -> languages.put(known.getKey(), known.getValue()));
		}
		return languages;
	}

	/**
	 * Set the languages of teams of a competition; others and unknown languages are
	 * passed over.
	 * @return how many teams have another language than before
	 */
	@Transactional
	public int set(CompetitionId id, Map<TeamView.Id, Locale> chosen, Actor actor) {
		this.competitions.holding(id);
		Set<TeamView.Id> teams = teams(id);
		Map<TeamView.Id, Locale> before = of(teams);
		List<Map.Entry<TeamView.Id, Locale>> changes = chosen.entrySet()
			.stream()
			.filter((one) -> teams.contains(one.getKey()) && Languages.SPOKEN.contains(one.getValue()))
			.filter((one) -> !one.getValue().equals(before.get(one.getKey())))
			.toList();
		changes.forEach((one) -> put(one.getKey(), one.getValue()));
		if (!changes.isEmpty()) {
			this.acts.publish(AuditedChange.of(actor, "letters", id, "letters.languages-set")
				.to((changes.size() == 1) ? "language of 1 team" : "languages of " + changes.size() + " teams"));
		}
		return changes.size();
	}

	private Set<TeamView.Id> teams(CompetitionId id) {
		List<EventView> events = this.competitions.events(id);
		return this.entries.ofEvents(events.stream().map(EventView::id).toList())
			.stream()
			.map((entry) -> entry.team().id())
			.collect(Collectors.toSet());
	}

	private void put(TeamView.Id team, Locale language) {
		int known = this.database.sql("update letter_language set language = ? where team_id = ?")
			.params(language.getLanguage(), team.value())
			.update();
		if (known == 0) {
			this.database.sql("insert into letter_language values (?, ?)")
				.params(team.value(), language.getLanguage())
				.update();
		}
	}

}
