package rimebook.standby;

import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.UUID;

import org.jspecify.annotations.Nullable;

import rimebook.pages.RinkClock;
import rimebook.shared.SubjectNames;

/**
 * An act that was lost with an earlier life of the service, and what became of it since.
 *
 * @param life the life that began without it
 * @param line what the second place knew of it
 * @param name what it was about, as it is called now; {@code null} where nobody knows
 * @param isAgain whether the same was done, or the card came back, since
 * @param doneBy who said that it is settled, empty for nobody
 */
record LostAct(UUID life, LostLine line, SubjectNames.@Nullable Named name, boolean isAgain, String doneBy) {

	/** When it was done, by the clock of its rink, UTC where it was at none. */
	public String time() {
		ZoneId zone = (this.name != null) ? this.name.zone() : null;
		return new RinkClock((zone != null) ? zone : ZoneOffset.UTC).time(this.line.at());
	}

	/** What it was about; nothing where nobody knows. */
	public String about() {
		return (this.name != null) ? this.name.words() : "";
	}

	/** What was done in words: {@code card.received} becomes "card received". */
	public String words() {
		return this.line.action().replace('.', ' ').replace('-', ' ');
	}

	/** Tell whether it is a card of a judge, which comes back by itself. */
	public boolean isCard() {
		return this.line.action().equals("card.received") || this.line.action().equals("card.returned");
	}

	/** Tell whether somebody still has to see to it. */
	public boolean isOpen() {
		return !this.isAgain && this.doneBy.isEmpty();
	}

}
