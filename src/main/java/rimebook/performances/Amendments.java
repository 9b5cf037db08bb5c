package rimebook.performances;

import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.springframework.stereotype.Component;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

import rimebook.shared.ConflictException;
import rimebook.wording.Sentence;

/** Finds for each amendment where it belongs, and keeps amendments as JSON. */
@Component
public class Amendments {

	private static final JsonMapper JSON = JsonMapper.builder().build();

	private final List<Amending<?>> rooms;

	Amendments(List<Amending<?>> rooms) {
		this.rooms = rooms;
	}

	/** As {@link Amending#hold}. */
	public void hold(PerformanceId performance, Amendment amendment) {
		roomOf(amendment).hold(performance);
	}

	/** As {@link Amending#check}. */
	public <A extends Amendment> A check(Amendment.SupposedChange<A> change) {
		return roomOf(change.amendment()).check(change);
	}

	/** As {@link Amending#refusal}. */
	public <A extends Amendment> Optional<Sentence> refusal(Amendment.SupposedChange<A> change, A expected) {
		return roomOf(change.amendment()).refusal(change, expected);
	}

	/**
	 * As {@link Amending#apply}.
	 * @throws ConflictException if something else stands there now
	 */
	public <A extends Amendment> void apply(Amendment.SupposedChange<A> change, A expected,
			Amending.Approval approval) {
		roomOf(change.amendment()).apply(change, expected, approval);
	}

	/** Write what a correction was proposed on and what shall be. */
	public String write(Pair pair) {
		return JSON.writeValueAsString(
				new Kept(kindOf(pair.after()), JSON.valueToTree(pair.before()), JSON.valueToTree(pair.after())));
	}

	/** Read what {@link #write} wrote. */
	public Pair read(String kept) {
		Kept read = JSON.readValue(kept, Kept.class);
		Class<? extends Amendment> type = this.rooms.stream()
			.flatMap((room) -> Optional.<Class<? extends Amendment>>ofNullable(room.kinds().get(read.kind())).stream())
			.findFirst()
			.orElseThrow(() -> new IllegalStateException("No such amendment: " + read.kind()));
		return new Pair(JSON.treeToValue(read.before(), type), JSON.treeToValue(read.after(), type));
	}

	private String kindOf(Amendment amendment) {
		return roomOf(amendment).kinds()
			.entrySet()
			.stream()
			.filter((kind) -> kind.getValue() == amendment.getClass())
			.map(Map.Entry::getKey)
			.findFirst()
			.orElseThrow();
	}

	/** A room takes every amendment whose class it names, so the cast holds. */
	@SuppressWarnings("unchecked")
	private <A extends Amendment> Amending<A> roomOf(A amendment) {
		return (Amending<A>) this.rooms.stream()
			.filter((room) -> room.kinds().containsValue(amendment.getClass()))
			.findFirst()
			.orElseThrow(() -> new IllegalStateException("Nobody amends " + amendment.getClass()));
	}

	/**
	 * What a correction was proposed on and what shall be in the same place.
	 */
	public record Pair(Amendment before, Amendment after) {
	}

	private record Kept(String kind, JsonNode before, JsonNode after) {
	}

}
