package rimebook.audit;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;

/**
 * Corrections from before they were kept as amendments. Their lines attest the columns of
 * then, while what counts is the amendment that was made of these when the database was
 * brought up to date: both have to say the same.
 */
final class CarriedCorrections {

	/** What stood there before, or after, as it was carried over. */
	private static final String SIDE = """
			case
			when line = '' then
			'{"marks":{"first":' || cast(%1$s_first as varchar(12)) || ',"second":' || cast(%1$s_second as varchar(12)) || '}}'
			when line = 'status' then '{"status":"' || %1$s_text || '"}'
			when line like 'element:%%' then
			'{"element":' || substring(line from 9) || ',"component":"","value":' || cast(%1$s_value as varchar(12)) || '}'
			when line like 'component:%%' then
			'{"element":0,"component":"' || replace(replace(substring(line from 11), '\\', '\\\\'), '"', '\\"')
			|| '","value":' || cast(%1$s_value as varchar(12)) || '}'
			when line like 'called:%%' then
			'{"number":' || replace(substring(line from 8), '+', '')
			|| ',"further":' || case when line like 'called:+%%' then 'true' else 'false' end
			|| case when %1$s_text = '' then ',"code":null,"worth":"COUNTS"}' else ',"code":"'
			|| replace(replace(case when position(' ' in %1$s_text) = 0 then %1$s_text
			else substring(%1$s_text from 1 for position(' ' in %1$s_text) - 1) end, '\\', '\\\\'), '"', '\\"')
			|| '","worth":"'
			|| case when position(' ' in %1$s_text) = 0 then 'COUNTS'
			else substring(%1$s_text from position(' ' in %1$s_text) + 1) end
			|| '"}' end
			else
			'{"number":' || replace(substring(line from 10), '+', '')
			|| ',"further":' || case when line like 'deducted:+%%' then 'true' else 'false' end
			|| case when %1$s_text = '' then ',"item":null,"count":0}' else ',"item":"'
			|| replace(replace(case when position(' ' in %1$s_text) = 0 then %1$s_text
			else substring(%1$s_text from 1 for position(' ' in %1$s_text) - 1) end, '\\', '\\\\'), '"', '\\"')
			|| '","count":' || substring(%1$s_text from position(' ' in %1$s_text) + 1) || '}' end
			end""";

	/** Those that say something else. */
	static final String ALTERED = """
			select id from correction where carried and amendment <>
			'{"kind":"' || case when line = '' then 'marks' when line = 'status' then 'status'
			when line like 'called:%' then 'element' when line like 'deducted:%' then 'deduction' else 'line' end
			|| '","before":'""" + " || " + SIDE.formatted("old") + " || ',\"after\":' || " + SIDE.formatted("new")
			+ " || '}'";

	private CarriedCorrections() {
	}

	/** Tell whether corrections are kept as amendments in this database. */
	static boolean areThere(Connection connection) throws SQLException {
		try (ResultSet columns = connection.getMetaData().getColumns(null, null, "%", "%")) {
			while (columns.next()) {
				if (columns.getString("TABLE_NAME").equalsIgnoreCase("correction")
						&& columns.getString("COLUMN_NAME").equalsIgnoreCase("amendment")) {
					return true;
				}
			}
		}
		return false;
	}

}
