package rimebook.standby;

import java.nio.file.Path;
import java.util.List;

/** A start from a copy that cannot be done, and what to do instead. */
final class CopyRefusedException extends RuntimeException {

	private static final long serialVersionUID = 1L;

	private final String action;

	private CopyRefusedException(String sentence, String action) {
		super(sentence);
		this.action = action;
	}

	static CopyRefusedException none(Path folder, List<String> broken) {
		String sentence = "There is no whole copy in " + folder + ".";
		return new CopyRefusedException(
				broken.isEmpty() ? sentence : sentence + " Not whole:\n  " + String.join("\n  ", broken),
				"Name the folder that --rimebook.copy.folder named on the machine before.");
	}

	static CopyRefusedException noFolder(Path folder) {
		return new CopyRefusedException("There is no folder " + folder + ".",
				"Is the stick in, is the share connected, is the name right? Nothing was changed; start again with the "
						+ "folder's name on this machine.");
	}

	static CopyRefusedException inTheWay(Path database) {
		return new CopyRefusedException("There is a database already: " + database + ". Nothing was changed.",
				"Leave out --from-copy to go on with it. To put it aside (it is renamed, not deleted) and start from "
						+ "the copy, add --from-copy-in-place-of=" + database.getFileName() + ".");
	}

	static CopyRefusedException inUse(Path database) {
		return new CopyRefusedException("A running Rimebook uses the database that is there already: " + database + ".",
				"Stop it first if you are sure that it is the one to be replaced.");
	}

	static CopyRefusedException noFile() {
		return new CopyRefusedException("A start from a copy needs an H2 file as database, and another one is set.",
				"Leave the setting spring.datasource.url out, or restore the database with its own tools.");
	}

	static CopyRefusedException noMoment(String text) {
		return new CopyRefusedException("--restored-until is not a moment: " + text + ".",
				"Give the moment at which the dump was begun, in UTC, as in 2027-02-13T14:02:00Z.");
	}

	static CopyRefusedException failed(Path folder, Exception why) {
		return new CopyRefusedException("The copy in " + folder + " cannot be laid in place: " + why.getMessage(),
				"Is the disk full? Nothing was changed; start again with the same command.");
	}

	String action() {
		return this.action;
	}

}
