package rimebook.live;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.UUID;

import org.jspecify.annotations.Nullable;

import rimebook.timetable.TimetableDay;
import rimebook.timetable.plan.Estimate;
import rimebook.timetable.plan.Programme;
import rimebook.timetable.plan.Programmed;

/** The published timetable as programs are given it, by the rules of {@link Feed}. */
final class TimetableFeed {

	private TimetableFeed() {
	}

	/**
	 * The timetable in force, with what is expected of today.
	 *
	 * @param asOf when it was last estimated
	 */
	record TimetableBody(int version, Instant publishedAt, String note, String zone, Instant asOf, List<DayBody> days) {

		static TimetableBody of(TimetableDay.Day now) {
			Programmed timetable = now.version().timetable();
			return new TimetableBody(now.version().number(), now.version().act().at(), now.version().act().note(),
					timetable.zone(), now.at(), timetable.days().stream().map((day) -> DayBody.of(day, now)).toList());
		}

	}

	/** A day with its ice surfaces. */
	record DayBody(LocalDate day, List<IceBody> ice) {

		static DayBody of(Programmed.Day day, TimetableDay.Day now) {
			return new DayBody(day.day(), day.ice().stream().map((ice) -> IceBody.of(ice, now)).toList());
		}

	}

	/** What happens on one surface, in order. */
	record IceBody(String surface, List<ItemBody> items) {

		static IceBody of(Programmed.Ice ice, TimetableDay.Day now) {
			return new IceBody(ice.surface(),
					ice.items().stream().map((item) -> ItemBody.of(TimetablePage.ItemRow.of(item, now))).toList());
		}

	}

	/** Something that happens; the title is empty where kind and segment say it. */
	record ItemBody(UUID id, String kind, String title, @Nullable String event, @Nullable String segment,
			Instant begins, Instant ends, @Nullable ExpectedBody expected, List<TeamTimeBody> teams) {

		static ItemBody of(TimetablePage.ItemRow row) {
			Programmed.Item item = row.item();
			Programmed.Of of = item.of();
			return new ItemBody(item.id(), item.kind().name(), item.title(), (of != null) ? of.event().name() : null,
					(of != null) ? of.name() : null, item.begins(), item.ends(),
					ExpectedBody.ofNullable(row.expected()), row.teams().stream().map(TeamTimeBody::of).toList());
		}

	}

	/** A team's time; the state is {@code null} where nobody skates for marks. */
	record TeamTimeBody(UUID entry, @Nullable Integer number, String team, Instant begins, @Nullable String state,
			@Nullable Instant called, @Nullable ExpectedBody expected) {

		static TeamTimeBody of(TimetablePage.TeamRow row) {
			Programme.Team team = Objects.requireNonNull(row.line().team());
			return new TeamTimeBody(team.entry(), (team.number() > 0) ? team.number() : null, team.name(),
					row.line().begins(), (row.state() != null) ? row.state().name() : null, row.called(),
					ExpectedBody.ofNullable(row.expected()));
		}

	}

	/** When something is expected, with the band in which it may come. */
	record ExpectedBody(Instant at, Instant soonest, Instant latest, int minutesLate) {

		static @Nullable ExpectedBody ofNullable(Estimate.@Nullable Expected expected) {
			return (expected == null) ? null
					: new ExpectedBody(expected.at(), expected.soonest(), expected.latest(), expected.minutesLate());
		}

	}

}
