package rimebook.archive;

import org.flywaydb.core.api.logging.Log;
import org.flywaydb.core.api.logging.LogCreator;

/**
 * Keeps what the migrations say off the console of a command, where results stand alone.
 * Public because it is made by name.
 */
public final class FlywayQuiet implements LogCreator {

	@Override
	public Log createLogger(Class<?> about) {
		return new Log() {

			@Override
			public void debug(String words) {
				// Nobody is told
			}

			@Override
			public void info(String words) {
				// Nobody is told
			}

			@Override
			public void warn(String words) {
				// Nobody is told
			}

			@Override
			public void error(String words) {
				// It comes as an exception, too
			}

			@Override
			public void error(String words, Exception why) {
				// It comes as an exception, too
			}

			@Override
			public void notice(String words) {
				// Nobody is told
			}

		};
	}

}
