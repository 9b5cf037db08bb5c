package rimebook.timetable.plan;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import rimebook.wording.Sentence;

/**
 * Finds teams that skate in no block, or in two, and blocks of what does not take place.
 */
final class Coverage {

	private Coverage() {
	}

	static List<Warning> of(List<Laid.LaidBlock> blocks, Programme programme) {
		List<Warning> warnings = new ArrayList<>();
		programme.segments().forEach((segment) -> add(segment, blocks, warnings));
		Map<UUID, Programme.Segment> segments = programme.byId();
		blocks.stream()
			.filter((laid) -> laid.block().segment() != null && !segments.containsKey(laid.block().segment()))
			.forEach((laid) -> warnings.add(new Warning(Warning.Kind.GONE, laid.block().id(), laid.begins(),
					Sentence.of("timetable.warning.gone", Clocks.dayAndTime(laid.begins(), programme.zone())))));
		return warnings;
	}

	private static void add(Programme.Segment segment, List<Laid.LaidBlock> blocks, List<Warning> warnings) {
		List<Block.Part> parts = blocks.stream()
			.filter((laid) -> laid.block().kind() == Block.Kind.SEGMENT && segment.id().equals(laid.block().segment()))
			.flatMap((laid) -> Stream.ofNullable(laid.block().part()))
			.toList();
		if (parts.isEmpty()) {
			warn(warnings, Sentence.of("timetable.warning.missing", segment.where()));
			return;
		}
		List<String> without = names(segment, parts, 0);
		if (!without.isEmpty()) {
			warn(warnings, Sentence.of("timetable.warning.teams-missing", segment.where(), without));
		}
		List<String> twice = names(segment, parts, 2);
		if (!twice.isEmpty()) {
			warn(warnings, Sentence.of("timetable.warning.teams-twice", segment.where(), twice));
		}
	}

	/** The teams in none of the blocks, or in so many at least. */
	private static List<String> names(Programme.Segment segment, List<Block.Part> parts, int least) {
		return IntStream.rangeClosed(1, segment.teams().size()).filter((place) -> {
			long times = parts.stream().filter((part) -> part.has(place)).count();
			return (least == 0) ? times == 0 : times >= least;
		}).mapToObj((place) -> segment.teams().get(place - 1).name()).toList();
	}

	private static void warn(List<Warning> warnings, Sentence why) {
		warnings.add(new Warning(Warning.Kind.COVERAGE, null, Instant.MAX, why));
	}

}
