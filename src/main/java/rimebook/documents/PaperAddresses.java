package rimebook.documents;

import java.util.UUID;

import org.apache.commons.logging.Log;
import org.apache.commons.logging.LogFactory;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;
import org.springframework.context.event.EventListener;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

import rimebook.competition.EventId;
import rimebook.pages.HouseAddresses;
import rimebook.results.ResultVersion;
import rimebook.shared.RuleViolationException;

/**
 * The address of this house that sheets name. It is kept with each version when that is
 * published: a sheet of it that is made again, next week, in another network or from an
 * archive, is the same.
 */
@Component
@EnableConfigurationProperties(PaperAddresses.Settings.class)
class PaperAddresses {

	private static final Log log = LogFactory.getLog(PaperAddresses.class);

	private static final int LONGEST = 300;

	private final JdbcClient database;

	private final HouseAddresses house;

	private final Settings settings;

	PaperAddresses(JdbcClient database, HouseAddresses house, Settings settings) {
		this.database = database;
		this.house = house;
		this.settings = settings;
	}

	/**
	 * Where this house is found now; empty where what is set for it is no address.
	 */
	String now() {
		try {
			String address = this.settings.address().isBlank() ? this.house.chosen("").base() : this.settings.address();
			return (address.length() <= LONGEST) ? address : "";
		}
		catch (RuleViolationException ex) {
			return "";
		}
	}

	/** Where it was found when that version was published; empty where nobody knows. */
	String of(UUID scope, int version) {
		return !this.settings.asPublished() ? now()
				: this.database.sql("select address from paper_address where scope_id = ? and number = ?")
					.params(scope, version)
					.query(String.class)
					.optional()
					.orElse("");
	}

	/** The same of the newest version of an event; empty before there is one. */
	String newest(EventId event) {
		return !this.settings.asPublished() ? now() : this.database
			.sql("select address from paper_address where scope_id = ? order by number desc fetch first 1 row only")
			.param(event.value())
			.query(String.class)
			.optional()
			.orElse("");
	}

	/** What is kept already stays, so that whoever tells it twice changes nothing. */
	@EventListener
	void on(ResultVersion.VersionPublished published) {
		this.database.sql("""
				insert into paper_address
				select cast(:scope as uuid), cast(:number as int), cast(:address as varchar(300))
				where not exists (select 1 from paper_address where scope_id = :scope and number = :number)""")
			.param("scope", published.scopeId())
			.param("number", published.number())
			.param("address", now())
			.update();
	}

	/**
	 * Versions from before addresses were kept get the one of today, once. Where another
	 * node does it at the same time, that is as good.
	 */
	@EventListener(ApplicationReadyEvent.class)
	void keepThoseLacking() {
		try {
			this.database.sql("""
					insert into paper_address
					select v.scope_id, v.number, cast(? as varchar(300)) from result_version v
					where not exists (
					 select 1 from paper_address a where a.scope_id = v.scope_id and a.number = v.number)""")
				.param(now())
				.update();
		}
		catch (DataAccessException ex) {
			log.warn("Addresses of earlier versions were not kept; sheets of these name none yet", ex);
		}
	}

	/**
	 * What a rink may set for its documents.
	 *
	 * @param address where the public reaches this house, such as
	 * {@code https://results.example}; empty for the address that is on the seat slips
	 * @param asPublished whether a version keeps the address at which it was published; a
	 * rehearsal is a copy whose papers may not lead to the house it was copied from
	 */
	@ConfigurationProperties("rimebook.documents")
	record Settings(@DefaultValue("") String address, @DefaultValue("true") boolean asPublished) {
	}

}
