package rimebook.documents;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Stream;

import org.springframework.stereotype.Component;

import rimebook.competition.EventView;
import rimebook.shared.NotFoundException;
import rimebook.timetable.TimetableVersion;
import rimebook.timetable.TimetableVersions;
import rimebook.timetable.plan.Programme;
import rimebook.timetable.plan.Programmed;

/** The published timetable of the days on which an event is held. */
@Component
class TimetableSheet implements DocumentSource {

	private final Subjects subjects;

	private final TimetableVersions versions;

	private final AsOfNow now;

	TimetableSheet(Subjects subjects, TimetableVersions versions, AsOfNow now) {
		this.subjects = subjects;
		this.versions = versions;
		this.now = now;
	}

	@Override
	public DocumentKind kind() {
		return DocumentKind.TIMETABLE;
	}

	@Override
	public List<DocumentRef> offered(EventView event) {
		return this.versions.latest(event.competition())
			.filter((version) -> version.timetable().items().stream().anyMatch((item) -> item.isOf(event.id().value())))
			.map((version) -> List.of(DocumentRef.of(kind(), event.id(), 0)))
			.orElseGet(List::of);
	}

	@Override
	public DocumentContent read(DocumentRef ref) {
		DocumentContent.Subject at = this.subjects.of(ref.event());
		TimetableVersion version = this.versions.latest(at.event().competition())
			.orElseThrow(() -> NotFoundException.of("timetable", ref.subject()));
		return this.now.of(at, Days.of(version, ref.subject()), Stream.of(at.event().competition().value()));
	}

	/**
	 * What is laid out.
	 *
	 * @param number of the published timetable
	 * @param at when it was published
	 */
	record Days(int number, Instant at, List<Day> days) {

		static Days of(TimetableVersion version, UUID event) {
			return new Days(version.number(), version.act().at(),
					version.timetable()
						.days()
						.stream()
						.filter((day) -> day.ice()
							.stream()
							.anyMatch((ice) -> ice.items().stream().anyMatch((item) -> item.isOf(event))))
						.map((day) -> new Day(day.day(),
								day.ice()
									.stream()
									.map((ice) -> new Ice(ice.surface(),
											ice.items().stream().map((item) -> Item.of(item, event)).toList()))
									.toList()))
						.toList());
		}

	}

	record Day(LocalDate day, List<Ice> ice) {
	}

	record Ice(String surface, List<Item> items) {
	}

	/**
	 * Something that happens.
	 *
	 * @param kind what, as the messages call it
	 * @param title empty where kind and segment say it
	 * @param where the segment or event it is for, empty for none
	 * @param own whether it is the event's
	 * @param teams those of the event alone
	 */
	record Item(String kind, String title, String where, Instant begins, boolean own, List<Team> teams) {

		static Item of(Programmed.Item item, UUID event) {
			boolean own = item.isOf(event);
			return new Item(item.kind().name(), item.title(), (item.of() != null) ? item.of().where() : "",
					item.begins(), own, own ? item.teams().stream().map(Team::of).toList() : List.of());
		}

	}

	/**
	 * @param number 0 before the draw
	 */
	record Team(Instant at, int number, String name, String club) {

		static Team of(Programmed.Line line) {
			Programme.Team team = Objects.requireNonNull(line.team());
			return new Team(line.begins(), team.number(), team.name(), team.club());
		}

	}

}
