package rimebook.timetable;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.CompetitionId;
import rimebook.entries.EntryId;
import rimebook.entries.EntryView;
import rimebook.letters.LetterFacts;
import rimebook.letters.LetterKind;
import rimebook.timetable.plan.Block;
import rimebook.timetable.plan.Programmed;
import rimebook.wording.Figures;

/**
 * Letters about the timetable tell a team its times as they are published: practice,
 * segments and the ceremony of its event. Nothing of a plan gets into a letter.
 */
@Component
@Transactional(readOnly = true)
class TimesInLetters implements LetterFacts {

	private final TimetableVersions versions;

	private final MessageSource messages;

	TimesInLetters(TimetableVersions versions, MessageSource messages) {
		this.versions = versions;
		this.messages = messages;
	}

	@Override
	public Map<EntryId, List<LetterFacts.Line>> of(LetterKind kind, CompetitionId competition,
			Collection<EntryView> teams) {
		Map<EntryId, List<LetterFacts.Line>> told = new HashMap<>();
		if (kind == LetterKind.TIMETABLE) {
			this.versions.latest(competition)
				.ifPresent((version) -> teams.forEach((team) -> told.put(team.id(), lines(version, team))));
		}
		return told;
	}

	private List<LetterFacts.Line> lines(TimetableVersion version, EntryView team) {
		ZoneId zone = ZoneId.of(version.timetable().zone());
		List<Time> times = new ArrayList<>();
		version.timetable().surfaces().forEach((ice) -> ice.items().forEach((item) -> {
			item.teams()
				.stream()
				.filter((line) -> line.isOf(team.id().value()))
				.forEach((line) -> times.add(new Time(item, line.begins(), ice.surface())));
			if (item.kind() == Block.Kind.CEREMONY && item.isOf(team.event().value())) {
				times.add(new Time(item, item.begins(), ice.surface()));
			}
		}));
		return times.stream()
			.sorted(Comparator.comparing(Time::at))
			.map((time) -> (LetterFacts.Line) (language) -> said(time, zone, language))
			.toList();
	}

	private String said(Time time, ZoneId zone, Locale language) {
		Figures figures = new Figures(language);
		return figures.weekday(time.at().atZone(zone).toLocalDate()) + ", " + figures.clock(time.at(), zone) + ", "
				+ time.surface() + " – " + name(time.item(), language);
	}

	/** As public pages call it. */
	private String name(Programmed.Item item, Locale language) {
		Programmed.Of of = item.of();
		if (!item.title().isEmpty()) {
			return item.title();
		}
		if (of != null && item.isSkated()) {
			return of.where();
		}
		String kind = this.messages.getMessage("live.timetable.kind." + item.kind(), null, language);
		return (of == null) ? kind
				: kind + ": " + ((item.kind() == Block.Kind.CEREMONY) ? of.event().name() : of.where());
	}

	private record Time(Programmed.Item item, Instant at, String surface) {
	}

}
