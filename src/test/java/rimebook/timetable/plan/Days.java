package rimebook.timetable.plan;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.IntStream;

import org.jspecify.annotations.Nullable;

/** Days and teams to plan with. */
final class Days {

	static final ZoneId ZONE = ZoneId.of("Europe/Helsinki");

	static final LocalDate DAY = LocalDate.of(2027, 2, 13);

	static final Plan.Place MAIN = new Plan.Place(DAY, 0);

	static final Plan.Place SIDE = new Plan.Place(DAY, 1);

	private Days() {
	}

	static UUID id(String name) {
		return UUID.nameUUIDFromBytes(name.getBytes(java.nio.charset.StandardCharsets.UTF_8));
	}

	/** A sheet from nine to eight in the evening. */
	static Sheet sheet(Plan.Place place, String... resurfacings) {
		return new Sheet(place, LocalTime.of(9, 0), LocalTime.of(20, 0),
				List.of(resurfacings).stream().map(LocalTime::parse).toList());
	}

	static Plan empty() {
		return new Plan(List.of("Main rink", "Side rink"), List.of(sheet(MAIN), sheet(SIDE)), List.of(),
				PlanRules.USUAL);
	}

	static Plan plan(Block... blocks) {
		return new Plan(List.of("Main rink", "Side rink"), List.of(sheet(MAIN), sheet(SIDE)), List.of(blocks),
				PlanRules.USUAL);
	}

	static Block block(String name, Block.Kind kind, int minutes) {
		return new Block(id(name), MAIN, kind, name, minutes * 60, Block.Timing.NEXT, null);
	}

	static Block anchored(Block block, String time) {
		return new Block(block.id(), block.place(), block.kind(), block.title(), block.seconds(),
				new Block.Timing(LocalTime.parse(time), block.timing().gap(), block.timing().aside()), block.part());
	}

	static Block skated(String segment) {
		return new Block(id("block of " + segment), MAIN, Block.Kind.SEGMENT, "", 0, Block.Timing.NEXT,
				Block.Part.all(id(segment)));
	}

	static Block part(Block block, int from, @Nullable Integer to) {
		return new Block(id(block.id() + " from " + from), block.place(), block.kind(), block.title(), block.seconds(),
				block.timing(), new Block.Part(block.part().segment(), from, to));
	}

	/** A segment of so many teams, each of a club of its own, three to a group. */
	static Programme.Segment segment(String name, String event, int seconds, int teams) {
		return new Programme.Segment(id(name), new Programme.Named(id(event), event), name, seconds, false, true,
				IntStream.rangeClosed(1, teams).mapToObj((number) -> team(event + " " + number, number)).toList());
	}

	static Programme.Team team(String name, int number) {
		return new Programme.Team(id(name), name, "Club of " + name, number, (number + 2) / 3);
	}

	static Programme programme(Programme.Segment... segments) {
		return new Programme(ZONE, List.of(segments), List.of());
	}

	static Programme with(Programme programme, String person, Set<UUID> events, Set<UUID> coached) {
		List<Programme.Person> people = new ArrayList<>(programme.people());
		people.add(new Programme.Person(person, events, coached));
		return new Programme(programme.zone(), programme.segments(), people);
	}

	/** The times of the day at which blocks begin, in order. */
	static List<String> begins(Laid laid) {
		return laid.blocks().stream().map((block) -> time(block.begins())).toList();
	}

	static String time(java.time.Instant instant) {
		return Clocks.time(instant, ZONE);
	}

	/** What is warned about, in English. */
	static List<String> why(Laid laid, Warning.Kind kind) {
		return laid.warnings()
			.stream()
			.filter((warning) -> warning.kind() == kind)
			.map((warning) -> warning.why().english())
			.toList();
	}

}
