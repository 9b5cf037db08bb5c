package rimebook.testsupport;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

import rimebook.audit.RecordVerification;

/**
 * Where the database differs from the record since a test began. Tests share an
 * application, and some of them forge rows in it on purpose; what they left is nobody
 * else's.
 */
public final class StoredFindings {

	private final RecordVerification record;

	private final Set<String> before;

	private StoredFindings(RecordVerification record) {
		this.record = record;
		this.before = new HashSet<>(record.compareStored().faults());
	}

	/** Begin here. */
	public static StoredFindings since(RecordVerification record) {
		return new StoredFindings(record);
	}

	/** What differs now and did not before, one sentence each. */
	public List<String> found() {
		return this.record.compareStored().faults().stream().filter((fault) -> !this.before.contains(fault)).toList();
	}

}
