package rimebook.testsupport;

import java.util.ArrayList;
import java.util.List;

import org.hibernate.resource.jdbc.spi.StatementInspector;
import org.jspecify.annotations.Nullable;

/**
 * Hears what Hibernate asks the database in this thread. What others ask meanwhile, such
 * as the pulse that looks for news, is not counted: a count must not need luck. Named in
 * the properties that all tests read.
 */
public final class AskedByThisThread implements StatementInspector {

	private static final long serialVersionUID = 1L;

	private static final ThreadLocal<@Nullable List<String>> HEARD = new ThreadLocal<>();

	@Override
	public String inspect(String sql) {
		List<String> heard = HEARD.get();
		if (heard != null) {
			heard.add(sql);
		}
		return sql;
	}

	/** What is asked while something is done, in its order. */
	public static List<String> during(Runnable act) {
		List<String> heard = new ArrayList<>();
		HEARD.set(heard);
		try {
			act.run();
			return heard;
		}
		finally {
			HEARD.remove();
		}
	}

}
