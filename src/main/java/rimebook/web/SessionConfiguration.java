package rimebook.web;

import java.util.Set;

import javax.sql.DataSource;

import org.apache.commons.logging.Log;
import org.apache.commons.logging.LogFactory;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.jdbc.DatabaseDriver;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.convert.ConversionService;
import org.springframework.core.convert.TypeDescriptor;
import org.springframework.core.convert.converter.GenericConverter;
import org.springframework.core.convert.support.GenericConversionService;
import org.springframework.core.serializer.support.DeserializingConverter;
import org.springframework.core.serializer.support.SerializationFailedException;
import org.springframework.core.serializer.support.SerializingConverter;
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

	private static final Log log = LogFactory.getLog(SessionConfiguration.class);

	/**
	 * What another version of the service put into a session may not be read by this one:
	 * it is then as if it were not there, and whoever was signed in signs in again.
	 */
	@Bean("springSessionConversionService")
	ConversionService whatCannotBeReadIsNotThere() {
		GenericConversionService service = new GenericConversionService();
		service.addConverter(Object.class, byte[].class, new SerializingConverter());
		service.addConverter(new Reading());
		return service;
	}

	@Bean
	SessionRepositoryCustomizer<JdbcIndexedSessionRepository> attributesAreReplaced(DataSource database)
			throws MetaDataAccessException {
		String product = JdbcUtils
			.commonDatabaseName(JdbcUtils.extractDatabaseMetaData(database, (facts) -> facts.getDatabaseProductName()));
		boolean postgres = DatabaseDriver.fromProductName(product) == DatabaseDriver.POSTGRESQL;
		return (sessions) -> sessions.setCreateSessionAttributeQuery(postgres ? ON_POSTGRES : ON_H2);
	}

	/** Reads an attribute, or nothing where it was written by another version. */
	private static final class Reading implements GenericConverter {

		private final DeserializingConverter reading = new DeserializingConverter(getClass().getClassLoader());

		@Override
		public Set<ConvertiblePair> getConvertibleTypes() {
			return Set.of(new ConvertiblePair(byte[].class, Object.class));
		}

		@Override
		public @Nullable Object convert(@Nullable Object bytes, TypeDescriptor from, TypeDescriptor to) {
			try {
				return (bytes != null) ? this.reading.convert((byte[]) bytes) : null;
			}
			catch (SerializationFailedException ex) {
				log.warn("An attribute of a session of another version is left out: " + ex.getMessage());
				return null;
			}
		}

	}

}
