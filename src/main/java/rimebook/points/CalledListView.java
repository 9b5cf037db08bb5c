package rimebook.points;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/**
 * The list of called elements that counts now.
 *
 * @param sequence its version, from 1
 * @param elements in the order skated
 * @param calledBy who sent it
 * @param receivedAt when, UTC
 */
public record CalledListView(int sequence, List<CalledElement> elements, String calledBy, Instant receivedAt) {

	public CalledListView {
		elements = List.copyOf(elements);
	}

	/** The elements that judges have to grade. */
	public List<CalledElement> counting() {
		return this.elements.stream().filter(CalledElement::counts).toList();
	}

	/** Find an element by its identity. */
	public Optional<CalledElement> element(UUID id) {
		return this.elements.stream().filter((element) -> element.id().equals(id)).findFirst();
	}

}
