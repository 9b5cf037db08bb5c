package rimebook.web;

import javax.sql.DataSource;

import org.springframework.boot.jdbc.DatabaseDriver;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.jdbc.support.JdbcUtils;
import org.springframework.jdbc.support.MetaDataAccessException;
import org.springframework.session.config.SessionRepositoryCustomizer;
import org.springframework.session.jdbc.JdbcIndexedSessionRepository;

/**
 * Sessions in the database. Two requests of one session may put the same attribute there
 * at the same moment, which as a plain insert fails for the second after its work is
 * done; and a session may be ended meanwhile, which is no fault of the request either.
 */
@Configuration(proxyBeanMethods = false)
class SessionConfiguration {

	private static final String ON_H2 = """
			MERGE INTO %TABLE_NAME%_ATTRIBUTES (SESSION_PRIMARY_ID, ATTRIBUTE_NAME, ATTRIBUTE_BYTES)
			KEY (SESSION_PRIMARY_ID, ATTRIBUTE_NAME)
			SELECT N.P, N.A, N.B FROM (VALUES (CAST(? AS CHAR(36)), CAST(? AS VARCHAR(200)),
			CAST(? AS LONGVARBINARY))) N (P, A, B)
			WHERE EXISTS (SELECT 1 FROM %TABLE_NAME% S WHERE S.PRIMARY_ID = N.P)
			""";

	private static final String ON_POSTGRES = """
			INSERT INTO %TABLE_NAME%_ATTRIBUTES (SESSION_PRIMARY_ID, ATTRIBUTE_NAME, ATTRIBUTE_BYTES)
			SELECT N.P, N.A, N.B FROM (VALUES (CAST(? AS CHAR(36)), CAST(? AS VARCHAR(200)),
			CAST(? AS BYTEA))) N (P, A, B)
			WHERE EXISTS (SELECT 1 FROM %TABLE_NAME% S WHERE S.PRIMARY_ID = N.P)
			ON CONFLICT (SESSION_PRIMARY_ID, ATTRIBUTE_NAME) DO UPDATE SET ATTRIBUTE_BYTES = EXCLUDED.ATTRIBUTE_BYTES
			""";

	@Bean
	SessionRepositoryCustomizer<JdbcIndexedSessionRepository> attributesAreReplaced(DataSource database)
			throws MetaDataAccessException {
		String product = JdbcUtils
			.commonDatabaseName(JdbcUtils.extractDatabaseMetaData(database, (facts) -> facts.getDatabaseProductName()));
		boolean postgres = DatabaseDriver.fromProductName(product) == DatabaseDriver.POSTGRESQL;
		return (sessions) -> sessions.setCreateSessionAttributeQuery(postgres ? ON_POSTGRES : ON_H2);
	}

}
