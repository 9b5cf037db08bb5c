package rimebook.accounts;

import java.util.UUID;

import org.springframework.beans.factory.InitializingBean;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Replaces codes that an earlier version kept in the clear by their digests. */
@Component
class CodesInTheClear implements InitializingBean {

	private final JdbcClient database;

	private final CodeDigests digests;

	CodesInTheClear(JdbcClient database, CodeDigests digests) {
		this.database = database;
		this.digests = digests;
	}

	/** At the start, before the doors open; done twice it does nothing. */
	@Override
	public void afterPropertiesSet() {
		this.database.sql("select seat_id, code from seat_code where code is not null")
			.query((row, at) -> new Kept(row.getObject(1, UUID.class), row.getString(2)))
			.list()
			.forEach(this::replace);
	}

	private void replace(Kept kept) {
		this.database.sql("update seat_code set code_digest = ?, code = null where seat_id = ? and code = ?")
			.params(this.digests.of(kept.code()), kept.seat(), kept.code())
			.update();
	}

	private record Kept(UUID seat, String code) {
	}

}
