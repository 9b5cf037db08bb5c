package rimebook.music;

import java.time.Instant;

import rimebook.entries.TeamView;

/**
 * That there is a recording of how a team says its name.
 *
 * @param milliseconds how long it is
 * @param sha256 of its bytes, in hexadecimal digits; give it back with a change, so that
 * nobody takes away what another put there
 * @param by who handed it in
 */
public record SpokenName(TeamView.Id team, MusicKind kind, long milliseconds, long bytes, String sha256, String by,
		Instant at) {

	/** Its length in seconds with one decimal: "3.2". */
	public String seconds() {
		long tenths = (this.milliseconds + 50) / 100;
		return tenths / 10 + "." + tenths % 10;
	}

	/** As on the record. */
	String inWords() {
		return "recording of the name, " + seconds() + " s, SHA-256 " + this.sha256;
	}

}
