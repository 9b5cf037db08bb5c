package rimebook.points;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;

/**
 * The version of a seat's card in points judging that the service has, as its tablet
 * reads it.
 *
 * @param sequence its version, from 1
 * @param grades by the identity of the element
 * @param components marks with two decimals by the name of the component
 * @param receivedAt when it was received, UTC
 */
public record ReceivedPointsCard(int sequence, Map<UUID, Integer> grades, Map<String, BigDecimal> components,
		Instant receivedAt) {

	/** Write a card with decimals. */
	public static ReceivedPointsCard of(PointsTask.OwnCard card) {
		Map<String, BigDecimal> components = new LinkedHashMap<>();
		card.marks().components().forEach((name, mark) -> components.put(name, BigDecimal.valueOf(mark, 2)));
		return new ReceivedPointsCard(card.sequence(), card.marks().grades(), components, card.receivedAt());
	}

}
