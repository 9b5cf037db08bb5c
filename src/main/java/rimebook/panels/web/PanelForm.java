package rimebook.panels.web;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

import org.jspecify.annotations.Nullable;

import rimebook.competition.EventId;
import rimebook.panels.OfficialView;
import rimebook.panels.Panels;
import rimebook.panels.SeatKind;
import rimebook.panels.SeatPlace;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/**
 * Who shall sit where, as chosen in the rows of a panel.
 *
 * @param official the identities of officials, by place as {@link #value(SeatPlace)}
 * writes it; empty where nobody was chosen
 * @param reason why a bond to a team may be set aside, by place
 */
record PanelForm(@Nullable Map<String, String> official, @Nullable Map<String, String> reason) {

	@Override
	public Map<String, String> official() {
		return (this.official != null) ? this.official : Map.of();
	}

	@Override
	public Map<String, String> reason() {
		return (this.reason != null) ? this.reason : Map.of();
	}

	static PanelForm empty() {
		return new PanelForm(Map.of(), Map.of());
	}

	/** A place in a form: "judge-3". */
	static String value(SeatPlace place) {
		return place.kind().name().toLowerCase(Locale.ROOT) + "-" + place.number();
	}

	/** The field of a place, as faults name it. */
	static String field(String place) {
		return "official[" + place + "]";
	}

	/** The official chosen for a place, empty for nobody. */
	String chosen(String place) {
		return official().getOrDefault(place, "");
	}

	/** In how many rows somebody was chosen. */
	int number() {
		return (int) official().values().stream().filter((chosen) -> !chosen.isBlank()).count();
	}

	/** The reason given at a place. */
	String reasonFor(String place) {
		return reason().getOrDefault(place, "");
	}

	/** The rows in which somebody was chosen. */
	List<Panels.SeatOfficial> orders(EventId event) {
		return new TreeMap<>(official()).entrySet()
			.stream()
			.filter((row) -> !row.getValue().isBlank())
			.map((row) -> order(event, row.getKey(), row.getValue()))
			.toList();
	}

	private Panels.SeatOfficial order(EventId event, String place, String official) {
		SeatPlace wanted = place(place);
		return new Panels.SeatOfficial(event, wanted.kind(), wanted.number(), chosen(place, official),
				reasonFor(place));
	}

	private static SeatPlace place(String value) {
		int dash = value.lastIndexOf('-');
		try {
			SeatKind kind = SeatKind.valueOf(value.substring(0, Math.max(dash, 0)).toUpperCase(Locale.ROOT));
			return new SeatPlace(kind, Integer.parseInt(value.substring(dash + 1)));
		}
		catch (IllegalArgumentException ex) {
			throw new RuleViolationException("seat-unknown", Sentence.of("panels.seat-unknown", value));
		}
	}

	private static OfficialView.Id chosen(String place, String official) {
		try {
			return OfficialView.Id.of(official);
		}
		catch (IllegalArgumentException ex) {
			throw new RuleViolationException("field-malformed", field(place), Sentence.of("panels.official-malformed"));
		}
	}

}
