package rimebook.music;

import java.io.IOException;
import java.io.InputStream;
import java.util.Collection;
import java.util.Set;

import org.springframework.core.io.Resource;

/**
 * Where the bytes of music lie, each file once, known by its SHA-256 and never changed.
 * Bytes are handed through and never held as a whole.
 */
interface MusicStore {

	/**
	 * Write down what the stream gives, to its end, without a name yet.
	 * @throws IOException if it cannot be read or written; then nothing is left behind
	 */
	Arrived write(InputStream from) throws IOException;

	/**
	 * Give what was written its name. Whoever does this for the same competition comes
	 * one after the other.
	 */
	void keep(Arrived arrived) throws IOException;

	/** Take back what was written and is not to be kept. */
	void drop(Arrived arrived) throws IOException;

	/** Those of the digests whose bytes are here. */
	Set<String> here(Collection<String> digests);

	/** The bytes, which are here; ends and begins anywhere without reading the rest. */
	Resource bytes(String digest, long length);

	/** Tell whether what is done here is done with the transaction or not at all. */
	boolean isOfTheDatabase();

	/** Delete the bytes, if they are here. */
	void delete(String digest);

	/**
	 * Take away what acts that were never finished left behind. To be done before anybody
	 * writes, since what is written has no row yet.
	 * @param known the digests of all files that there are rows of
	 * @return how many files were deleted
	 */
	int tidy(Set<String> known) throws IOException;

	/**
	 * What was written.
	 *
	 * @param part what it is called until it has its name
	 * @param sha256 in hexadecimal digits
	 */
	record Arrived(String part, String sha256, long bytes) {
	}

}
