package rimebook.audit;

import java.io.Serializable;
import java.util.List;

/**
 * Whether what is stored is what the record tells of it.
 *
 * @param versions how many published versions were compared, body and line
 * @param signatures how many signatures
 * @param things how many performances and corrections whose lines attest what is stored
 * @param unattested how many performances and corrections have no line that attests
 * anything, having been written before lines did
 * @param faults what differs, a sentence each
 */
public record StoredFinding(long versions, long signatures, long things, long unattested,
		List<String> faults) implements Serializable {

	/** Many faults have one cause; these are enough to find it. */
	private static final int SHOWN = 20;

	public StoredFinding {
		faults = List.copyOf(faults);
	}

	/** Tell whether nothing differs. */
	public boolean agrees() {
		return this.faults.isEmpty();
	}

	/** The first faults, to be shown. */
	public List<String> shown() {
		return this.faults.subList(0, Math.min(SHOWN, this.faults.size()));
	}

	/** The finding in one sentence; what differs stands in {@link #shown()}. */
	public String sentence() {
		String old = (this.unattested == 0) ? "" : " " + this.unattested
				+ " performances or corrections are from before lines attested what is stored, and were not compared.";
		return (agrees()
				? "What is stored is what the lines tell: " + this.versions + " published versions, " + this.signatures
						+ " signatures, " + this.things + " performances and corrections were compared."
				: "What is stored is not what the lines tell, in " + this.faults.size()
						+ ((this.faults.size() == 1) ? " place." : " places."))
				+ old;
	}

}
